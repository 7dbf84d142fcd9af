/** The colours that a screen really shows: each text, edge and mark with what lies behind it. */
import type { ChromiumDriver } from "../drivers/chromium.ts";

/** What is told apart: words to read, edges of keys and rules, marks of drawings, the outline of the focus. */
export type ColourOf = "text" | "edge" | "mark" | "focus";

/** Colours that stand against each other somewhere on the screen, as `#rrggbb`. */
export interface Shown {
  readonly of: ColourOf;
  /** Of a mark its line and its inside; it is seen when one of them can be told from the ground. */
  readonly fronts: readonly string[];
  /** Of an edge what lies outside and inside of it; it is seen when it can be told from one of them. */
  readonly grounds: readonly string[];
  /** An example. */
  readonly what: string;
}

/** Everything that is visible, each combination of colours once. */
export const coloursOn = (chromium: ChromiumDriver): Promise<Shown[]> =>
  chromium.run(() => {
    const found = new Map<string, Shown>();
    const see = (of: ColourOf, fronts: (string | null)[], grounds: (string | null)[], what: string): void => {
      const told = {
        of,
        fronts: fronts.filter((one) => one !== null),
        grounds: grounds.filter((one) => one !== null),
        what,
      };
      const name = JSON.stringify([of, told.fronts, told.grounds]);
      if (!found.has(name)) found.set(name, told);
    };
    /** `#rrggbb`; null for nothing at all. What is mixed or half transparent stays as it is and is no token. */
    const hex = (css: string): string | null => {
      const parts = /^rgba?\(([^)]*)\)$/
        .exec(css)?.[1]
        ?.split(/[\s,/]+/)
        .map(Number);
      if (parts === undefined) return css === "none" || css === "transparent" ? null : css;
      const [r = 0, g = 0, b = 0, a = 1] = parts;
      if (a === 0) return null;
      return a < 1 ? css : `#${[r, g, b].map((one) => one.toString(16).padStart(2, "0")).join("")}`;
    };
    const isSeen = (one: Element): boolean => {
      if (!one.checkVisibility({ visibilityProperty: true }) || one.closest(".out-of-sight") !== null)
        return false;
      const { width, height } = one.getBoundingClientRect();
      return width > 0 || height > 0;
    };
    const nameOf = (one: Element): string =>
      `${one.tagName.toLowerCase()}.${one.getAttribute("class") ?? ""} "${(one.textContent ?? "").trim().slice(0, 40)}"`;
    const groundOf = (one: Element | null): string => {
      for (let at = one; at !== null; at = at.parentElement) {
        const colour = hex(getComputedStyle(at).backgroundColor);
        if (colour !== null) return colour;
      }
      return "nothing";
    };

    // Drawings: what was painted before lies below.
    interface Painted {
      readonly shape: SVGGeometryElement;
      readonly fill: string | null;
      readonly stroke: string | null;
      readonly strokePx: number;
    }
    const rootOf = (one: SVGElement): SVGElement => {
      let root = one;
      while (root.ownerSVGElement !== null) root = root.ownerSVGElement;
      return root;
    };
    const paintedIn = (root: SVGElement): Painted[] =>
      [...root.querySelectorAll<SVGGeometryElement>("path, line, circle, rect, ellipse, polygon, polyline")]
        .filter(isSeen)
        .map((shape) => {
          const style = getComputedStyle(shape);
          const strokePx = Number.parseFloat(style.strokeWidth);
          return {
            shape,
            fill: style.fillOpacity === "0" || shape.tagName === "line" ? null : hex(style.fill),
            stroke: strokePx === 0 || style.strokeOpacity === "0" ? null : hex(style.stroke),
            strokePx,
          };
        });
    /** The paint under a point. Of the same colour it is no ground: both together are one mark. */
    const below = (
      before: readonly Painted[],
      x: number,
      y: number,
      own: { readonly strokePx: number; readonly colours: readonly (string | null)[] },
    ): string | null => {
      for (const { shape, fill, stroke, strokePx } of [...before].reverse()) {
        const to = shape.getScreenCTM()?.inverse();
        if (to === undefined) continue;
        const at = new DOMPoint(x, y).matrixTransform(to);
        // A thinner line that runs under a mark is no ground either: the mark shows beside it.
        const on =
          stroke !== null && strokePx >= own.strokePx && shape.isPointInStroke(at)
            ? stroke
            : fill !== null && shape.isPointInFill(at)
              ? fill
              : null;
        if (on !== null && !own.colours.includes(on)) return on;
      }
      return null;
    };
    for (const root of document.querySelectorAll<SVGSVGElement>("svg")) {
      if (root.ownerSVGElement !== null || !isSeen(root)) continue;
      const behind = groundOf(root);
      const painted = paintedIn(root);
      for (const [index, { shape, fill, stroke, strokePx }] of painted.entries()) {
        const toScreen = shape.getScreenCTM();
        if (toScreen === null || (fill === null && stroke === null)) continue;
        const long = shape.getTotalLength();
        for (const part of [0.1, 0.35, 0.6, 0.85]) {
          const { x, y } = shape.getPointAtLength(long * part).matrixTransform(toScreen);
          const ground =
            below(painted.slice(0, index), x, y, { strokePx, colours: [stroke, fill] }) ?? behind;
          see("mark", [stroke, fill], [ground], `${rootOf(shape).getAttribute("class")} ${nameOf(shape)}`);
        }
      }
      for (const text of root.querySelectorAll<SVGTextElement>("text")) {
        if (!isSeen(text)) continue;
        const { x, y, width, height } = text.getBoundingClientRect();
        const before = painted.filter(
          ({ shape }) => (shape.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0,
        );
        see(
          "text",
          [hex(getComputedStyle(text).fill)],
          [below(before, x + width / 2, y + height / 2, { strokePx: 99, colours: [] }) ?? behind],
          nameOf(text),
        );
      }
    }

    for (const one of document.querySelectorAll<HTMLElement>("body, body *")) {
      if (one instanceof SVGElement || !isSeen(one)) continue;
      const style = getComputedStyle(one);
      const inside = groundOf(one);
      const outside = groundOf(one.parentElement);
      if (Number(style.opacity) !== 1) see("text", [`opacity ${style.opacity}`], [inside], nameOf(one));
      const says = [...one.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? "").trim() !== "",
      );
      if (says) see("text", [hex(style.color)], [inside], nameOf(one));
      if (one.matches("input:not([type=radio], [type=checkbox], [type=file]), textarea")) {
        if (!(one instanceof HTMLInputElement || one instanceof HTMLTextAreaElement)) continue;
        const empty = one.value === "" && one.placeholder !== "";
        const colour = empty ? getComputedStyle(one, "::placeholder").color : style.color;
        if (one.value !== "" || empty) see("text", [hex(colour)], [inside], `${nameOf(one)} ${one.value}`);
      }
      for (const side of ["top", "right", "bottom", "left"]) {
        const wide = Number.parseFloat(style.getPropertyValue(`border-${side}-width`));
        const colour = hex(style.getPropertyValue(`border-${side}-color`));
        if (wide > 0 && colour !== null) see("edge", [colour], [outside, inside], nameOf(one));
      }
      for (const which of ["::before", "::after"]) {
        const made = getComputedStyle(one, which);
        if (made.content === "none" || made.content === "normal") continue;
        const own = hex(made.backgroundColor);
        if (made.content !== '""') see("text", [hex(made.color)], [own ?? inside], nameOf(one) + which);
        const line = Number.parseFloat(made.borderTopWidth) > 0 ? hex(made.borderTopColor) : null;
        if (own !== null || line !== null) see("mark", [line, own], [inside], nameOf(one) + which);
      }
    }
    return [...found.values()];
  });

/** What the outline looks like when a keyboard stands on each target; without `fronts` where there is none. */
export const focusOn = async (chromium: ChromiumDriver): Promise<Shown[]> => {
  // A page that was only touched shows no focus at all.
  await chromium.page.keyboard.press("Shift");
  return chromium.run(() => {
    const hex = (css: string): string =>
      `#${(css.match(/\d+/g) ?? [])
        .slice(0, 3)
        .map((one) => Number(one).toString(16).padStart(2, "0"))
        .join("")}`;
    const groundOf = (one: Element | null): string => {
      for (let at = one; at !== null; at = at.parentElement) {
        const { backgroundColor } = getComputedStyle(at);
        if (!backgroundColor.endsWith(", 0)") && backgroundColor !== "transparent")
          return hex(backgroundColor);
      }
      return "nothing";
    };
    const found = new Map<string, Shown>();
    const before = document.activeElement;
    const [x, y] = [scrollX, scrollY];
    for (const one of document.querySelectorAll<HTMLElement>(
      "a[href], button, input, textarea, select, summary, [tabindex='0']",
    )) {
      if (one.tabIndex < 0) continue;
      if (!one.checkVisibility({ visibilityProperty: true })) continue;
      one.focus({ preventScroll: true });
      // What is switched off, or lies behind something that is open, takes no focus.
      if (document.activeElement !== one) continue;
      let at: Element | null = one;
      let told: Shown = { of: "focus", fronts: [], grounds: [], what: one.outerHTML.slice(0, 120) };
      for (let up = 0; up < 3 && at !== null && told.fronts.length === 0; up++, at = at.parentElement) {
        const { outlineStyle, outlineWidth, outlineColor, outlineOffset } = getComputedStyle(at);
        if (outlineStyle === "none" || Number.parseFloat(outlineWidth) < 2) continue;
        if (at.matches(".out-of-sight")) continue;
        const within = Number.parseFloat(outlineOffset) < 0;
        told = {
          ...told,
          fronts: [hex(outlineColor)],
          grounds: [groundOf(within ? at : at.parentElement)],
        };
      }
      const name = told.fronts.length === 0 ? told.what : JSON.stringify([told.fronts, told.grounds]);
      if (!found.has(name)) found.set(name, told);
    }
    if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    scrollTo(x, y);
    return [...found.values()];
  });
};
