import type { ChromiumTab } from "../../browser/drivers/chromium.ts";

/** A thumb that touches one answer key at a steady pace. */
export interface Thumb {
  /** How many touches were sent so far. */
  sent(): number;
  /** Resolves once all touches were sent, or after `lift`. Whether they did anything is not its business. */
  readonly done: Promise<void>;
  lift(): void;
}

/** How to touch. */
export interface Pace {
  /** Which key, by its `data-answer`. */
  readonly cover: "residue" | "bare" | "green" | "stone" | "worm" | "look";
  /** From one touch to the next, milliseconds. */
  readonly everyMs: number;
  readonly touches: number;
}

/**
 * Touches an answer key blind: through the browser's own input, without looking at the page and without
 * waiting for it, since every look would change what is measured. Look once it is done.
 */
export async function startThumb({ page }: ChromiumTab, { cover, everyMs, touches }: Pace): Promise<Thumb> {
  const box = await page.locator(`[data-answer=${cover}]`).boundingBox();
  if (box === null) {
    throw new Error(`There is no key to touch for ${cover}.`);
  }
  const at = { x: Math.round(box.x + box.width / 2), y: Math.round(box.y + box.height / 2) };
  const session = await page.context().newCDPSession(page);
  const send = (type: "touchStart" | "touchEnd") =>
    session
      .send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchStart" ? [at] : [] })
      // The browser may be killed under the thumb.
      .catch(() => undefined);
  let sent = 0;
  let lifted = false;
  const touchAll = async () => {
    const begunAtMs = performance.now();
    while (!lifted && sent < touches) {
      void send("touchStart");
      void send("touchEnd");
      sent++;
      const restMs = begunAtMs + sent * everyMs - performance.now();
      await new Promise((resolve) => setTimeout(resolve, Math.max(0, restMs)));
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
