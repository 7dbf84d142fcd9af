import type { ComponentType } from "preact";
import { lazyPart } from "../screens/parts/lazy-part.tsx";

/**
 * A screen whose code is loaded when it is first shown. When that is gone the frame stays empty and the bar
 * above offers to load the window again.
 */
export const lazyScreen = <P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> =>
  lazyPart(load, <div class="frame" aria-busy="true" />);
