import type { ChromiumTab } from "../../browser/drivers/chromium.ts";
import type { Thumb } from "./thumb.ts";

/**
 * Touches keys that come and go: the first of these that is there, again and again, until it is lifted. It
 * looks at the page before each touch, so nothing is measured while it touches.
 *
 * @param keys how to find them, the most wanted first
 * @param everyMs rest behind each touch, milliseconds
 */
export function startHand({ page }: ChromiumTab, keys: readonly string[], everyMs: number): Thumb {
  let sent = 0;
  let lifted = false;
  const touchFirst = async () => {
    for (const key of keys) {
      const there = page.locator(key).first();
      if (await there.isVisible()) {
        sent++;
        await there.tap({ timeout: 1000 });
        return;
      }
    }
  };
  const touchAll = async () => {
    while (!lifted) {
      // The key may go, and the browser be killed, under the hand.
      await touchFirst().catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, everyMs));
    }
  };
  return {
    sent: () => sent,
    done: touchAll(),
    lift: () => {
      lifted = true;
    },
  };
}
