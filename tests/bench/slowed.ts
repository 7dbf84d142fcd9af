import type { Page } from "playwright-core";
import { slowdown } from "./figures.ts";

/**
 * Slows the processor of a page; its workers keep their speed. A document that comes in another process
 * than the one before may begin at full speed, so the browser is told again with each; the first
 * milliseconds of a document, before its scripts are there, can then be quicker than they should be.
 */
export const slowed = async (page: Page): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  const slow = () => session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  // The page may be gone before the browser could be told.
  page.on("framenavigated", () => void slow().catch(() => undefined));
  await slow();
};
