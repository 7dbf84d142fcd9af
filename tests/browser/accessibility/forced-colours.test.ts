/** A person who forces colours of their own on every page: drawings take them too, and what is chosen shows. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { contrast } from "../../unit/screens/look-tokens.ts";
import { coloursOn } from "./colours.ts";
import { type OnFarm, onFarm } from "./screens.ts";

let farm: OnFarm;
beforeAll(async () => {
  farm = await onFarm("daylight");
});
afterAll(() => farm.close());

/** Grounds of what can be chosen: of what is, and of what is not. */
const chosen = (): Promise<{ readonly on: string[]; readonly off: string[] }> =>
  farm.chromium.run(() => {
    const of = (selector: string): string[] => [
      ...new Set(
        [...document.querySelectorAll(selector)]
          .filter((one) => one.checkVisibility() && one.closest(".out-of-sight") === null)
          .map((one) => getComputedStyle(one).backgroundColor),
      ),
    ];
    return {
      on: of(".tick input:checked, label:not(.tick):has(input:checked)"),
      off: of(".tick input:not(:checked), label:not(.tick):has(input:not(:checked))"),
    };
  });

describe.each(["light", "dark"] as const)("%s ones", (colorScheme) => {
  it.each([
    "line",
    "ring-new",
    "ring-sheet",
    "settings",
    "findings",
    "map, something of everything",
    "help-topic",
    "kit",
  ])("%s", async (screen) => {
    await farm.chromium.page.emulateMedia({ forcedColors: "active", colorScheme });
    await farm.show(screen);
    const faint = (await coloursOn(farm.chromium)).filter(
      ({ of, fronts, grounds }) =>
        // W3C, WCAG 2.2: SC 1.4.3 Contrast (Minimum), 4.5:1, for colours that are not ours; SC 1.4.11, 3:1.
        Math.max(0, ...fronts.flatMap((front) => grounds.map((ground) => contrast(front, ground)))) <
        (of === "text" ? 4.5 : 3),
    );
    expect(faint).toEqual([]);
    const { on, off } = await chosen();
    expect(on.filter((ground) => off.includes(ground))).toEqual([]);
  });
});
