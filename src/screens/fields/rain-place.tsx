/** Days since rain on screens of a test; its code is loaded when it is shown. */
import { lazyPart } from "../parts/lazy-part.tsx";

export const RainPlace = lazyPart(async () => (await import("./rain-before.tsx")).RainBefore);
