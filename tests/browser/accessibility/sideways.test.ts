/** A phone on its side, and letters twice as large: what stays on the screen leaves room to read. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sampleFarm } from "./sample.ts";
import { type OnFarm, onFarm, overflowing } from "./screens.ts";

/** Largest part of the height that may lie over the page while it is scrolled. Own rule, no source. */
const MOST_COVERED = 0.5;

/** Screens with a leaf to scroll; a running test fits its own keys. */
const screens = Object.keys(sampleFarm().addresses);

/** Which part of the height is covered by what is stuck to the edges of the screen. */
const covered = (farm: OnFarm): Promise<number> =>
  farm.chromium.run(() => {
    const stuck = [...document.querySelectorAll(".foot, .foot .actions, .bars, .next-reading")].filter(
      (one) => ["sticky", "fixed"].includes(getComputedStyle(one).position) && one.checkVisibility(),
    );
    const heights = stuck.map((one) => one.getBoundingClientRect().height);
    return heights.reduce((sum, one) => sum + one, 0) / innerHeight;
  });

describe.each([
  ["on its side", 844, 390],
  ["with letters twice as large", 195, 422],
])("a phone %s", (_, width, height) => {
  let farm: OnFarm;
  beforeAll(async () => {
    farm = await onFarm("daylight");
    await farm.chromium.page.setViewportSize({ width, height });
  });
  afterAll(() => farm.close());

  it.each(screens)("%s leaves room to read", async (screen) => {
    await farm.show(screen);
    expect(await covered(farm)).toBeLessThanOrEqual(MOST_COVERED);
    if (width > 320) expect(await overflowing(farm.chromium)).toEqual([]);
  });
});
