/** What was drawn on canvases, which keep colours and no shapes: told by the strokes themselves. */
import type { ChromiumDriver } from "../drivers/chromium.ts";

/** One stroke, fill or word. */
export interface Drawn {
  /** An area is a whole rectangle, such as a ground; a fill has an outline. */
  readonly how: "text" | "stroke" | "fill" | "area";
  readonly colour: string;
  /** Lengths of dashes and gaps; empty for a whole line. */
  readonly dash: readonly number[];
  readonly text: string;
}

/** From the next load on, every canvas remembers what was drawn on it since it was wiped last. */
export const watchCanvases = async (chromium: ChromiumDriver): Promise<void> => {
  await chromium.context.addInitScript(() => {
    const drawn = new WeakMap<HTMLCanvasElement, object[]>();
    const hand = CanvasRenderingContext2D.prototype;
    const { clearRect, fill, fillRect, fillText, stroke, strokeRect } = hand;
    const note = (pen: CanvasRenderingContext2D, how: string, colour: unknown, text = ""): void => {
      const all = drawn.get(pen.canvas) ?? [];
      all.push({ how, colour: String(colour), dash: pen.getLineDash(), text });
      drawn.set(pen.canvas, all);
    };
    hand.clearRect = function (x, y, width, height) {
      if (width >= this.canvas.width && height >= this.canvas.height) drawn.set(this.canvas, []);
      clearRect.call(this, x, y, width, height);
    };
    hand.fillText = function (text, ...place) {
      note(this, "text", this.fillStyle, text);
      fillText.call(this, text, ...place);
    };
    hand.stroke = function (...path: unknown[]) {
      note(this, "stroke", this.strokeStyle);
      Reflect.apply(stroke, this, path);
    };
    hand.strokeRect = function (...box) {
      note(this, "stroke", this.strokeStyle);
      strokeRect.apply(this, box);
    };
    hand.fill = function (...path: unknown[]) {
      note(this, "fill", this.fillStyle);
      Reflect.apply(fill, this, path);
    };
    hand.fillRect = function (...box) {
      note(this, "area", this.fillStyle);
      fillRect.apply(this, box);
    };
    Reflect.set(globalThis, "drawnOn", (canvas: HTMLCanvasElement) => drawn.get(canvas) ?? []);
  });
};

/** What was drawn on each canvas that stands on the page, and the colour that it lies on. */
export const canvasesOn = (
  chromium: ChromiumDriver,
): Promise<{ readonly ground: string; readonly drawn: readonly Drawn[] }[]> =>
  chromium.run(() => {
    const told = Reflect.get(globalThis, "drawnOn") as (canvas: HTMLCanvasElement) => Drawn[];
    const groundOf = (one: Element | null): string => {
      for (let at = one; at !== null; at = at.parentElement) {
        const { backgroundColor } = getComputedStyle(at);
        const [r = 0, g = 0, b = 0, a = 1] = (backgroundColor.match(/[\d.]+/g) ?? []).map(Number);
        if (a === 1) return `#${[r, g, b].map((one) => one.toString(16).padStart(2, "0")).join("")}`;
      }
      return "nothing";
    };
    return [...document.querySelectorAll("canvas")]
      .filter((canvas) => canvas.checkVisibility())
      .map((canvas) => ({ ground: groundOf(canvas), drawn: told(canvas) }));
  });
