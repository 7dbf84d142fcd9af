import type { Page } from "playwright-core";
import { slowdown } from "./figures.ts";

/**
 * Slows the processor of a page; its workers keep their speed. A document that comes in another process
 * than the one before may begin at full speed, so the browser is told again with each; the first
 * milliseconds of a document, before its scripts are there, can then be quicker than they should be.
 *
 * @param times how many times slower; told again for a page, the last one counts
 */
export const slowed = async (page: Page, times = slowdown): Promise<void> => {
  const before = slowedTo.get(page);
  if (before !== undefined) {
    before.times = times;
    return before.slow();
  }
  const session = await page.context().newCDPSession(page);
  const now: Slowed = {
    times,
    slow: async () => {
      await session.send("Emulation.setCPUThrottlingRate", { rate: now.times });
    },
  };
  slowedTo.set(page, now);
  // The page may be gone before the browser could be told.
  page.on("framenavigated", () => void now.slow().catch(() => undefined));
  await now.slow();
};

interface Slowed {
  times: number;
  readonly slow: () => Promise<void>;
}

const slowedTo = new WeakMap<Page, Slowed>();
