/** What moves on a screen after it was drawn, without a touch: a finger on its way would hit something else. */
import type { ChromiumDriver } from "../drivers/chromium.ts";

interface Shift extends PerformanceEntry {
  readonly hadRecentInput: boolean;
  readonly sources: readonly {
    readonly node: Node | null;
    readonly previousRect: DOMRectReadOnly;
    readonly currentRect: DOMRectReadOnly;
  }[];
}

declare global {
  /** What has moved since the page was loaded, and where. */
  var moves: string[] | undefined;
}

/**
 * From the next load on every page remembers what moved (Layout Instability, a draft of the Web Incubator Community
 * Group). Words with nothing to touch in them may move, and so may the foot: it sticks to the window, and the
 * browser tells a move of it where the page alone has grown.
 */
export const watchMoves = async (chromium: ChromiumDriver): Promise<void> => {
  await chromium.context.addInitScript(() => {
    globalThis.moves = [];
    const touched = "a, button, label, input, select, summary";
    new PerformanceObserver((list) => {
      for (const { sources } of list.getEntries() as Shift[])
        for (const { node, previousRect: from, currentRect: to } of sources) {
          if (!(node instanceof Element) || node.closest(".foot") !== null) continue;
          if (!node.matches(touched) && node.querySelector(touched) === null) continue;
          const by = Math.max(Math.abs(to.top - from.top), Math.abs(to.left - from.left));
          const text = node.textContent.replaceAll(/\s+/g, " ").slice(0, 60);
          if (by > 2)
            globalThis.moves?.push(
              `${node.tagName} "${text}" from ${from.left},${from.top} to ${to.left},${to.top}`,
            );
        }
    }).observe({ type: "layout-shift", buffered: true });
    // What holds back the page while a part is read leaves the foot alone.
    new MutationObserver(() => {
      const foot = document.querySelector(".foot");
      if (foot !== null && getComputedStyle(foot).visibility === "hidden")
        globalThis.moves?.push("the foot is hidden");
    }).observe(document, { subtree: true, childList: true });
  });
};

/** What moved since the page was loaded. */
export const movesOf = (chromium: ChromiumDriver): Promise<readonly string[]> =>
  chromium.run(() => globalThis.moves ?? []);
