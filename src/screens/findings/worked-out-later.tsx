/** "How this was worked out" for a screen that must open fast: its code and the records of methods come after it. */
import { lazyPart } from "../parts/lazy-part.tsx";

export const WorkedOutLater = lazyPart(
  async () => (await import("./method-list.tsx")).WorkedOutKey,
  <span />,
);
