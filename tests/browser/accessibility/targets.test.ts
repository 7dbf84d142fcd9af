import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sampleFarm } from "./sample.ts";
import { type OnFarm, onFarm, overflowing, seriousFaults, targets } from "./screens.ts";

const screens = Object.keys(sampleFarm().addresses);

/**
 * Smallest target in CSS pixels. Own rule, above W3C WCAG 2.2 SC 2.5.5 Target Size (Enhanced), 44 px: gloves
 * and cold hands.
 */
const leastPx = 48;

describe.each(["daylight", "dusk"] as const)("in %s", (theme) => {
  let farm: OnFarm;
  beforeAll(async () => {
    farm = await onFarm(theme);
  });
  afterAll(() => farm.close());

  it.each(screens)("%s has no serious fault of accessibility", async (screen) => {
    await farm.show(screen);
    expect(await farm.chromium.run(() => document.documentElement.dataset["theme"] ?? "")).toBe(theme);
    expect(await seriousFaults(farm.chromium)).toEqual([]);
  });
});

describe.each([
  [390, 844],
  [360, 640],
])("on a screen of %i by %i", (width, height) => {
  let farm: OnFarm;
  beforeAll(async () => {
    farm = await onFarm("daylight");
    await farm.chromium.page.setViewportSize({ width, height });
  });
  afterAll(() => farm.close());

  it.each(screens)("%s has targets that a glove can hit, and nothing beyond the edge", async (screen) => {
    await farm.show(screen);
    const found = await targets(farm.chromium);
    expect(found.length).toBeGreaterThan(0);
    expect(found.filter((one) => one.widthPx < leastPx || one.heightPx < leastPx)).toEqual([]);
    expect(await overflowing(farm.chromium)).toEqual([]);
  });
});
