import { mkdirSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { LEFT_OPEN, openAs } from "./left-open.ts";
import { sampleFarm } from "./sample.ts";
import { audit, type OnFarm, onFarm, overflowing, targets } from "./screens.ts";

const screens = Object.keys(sampleFarm().addresses);

/**
 * Smallest target in CSS pixels. Own rule, above W3C WCAG 2.2 SC 2.5.5 Target Size (Enhanced), 44 px: gloves
 * and cold hands.
 */
const leastPx = 48;

describe.each(["daylight", "dusk"] as const)("in %s", (theme) => {
  let farm: OnFarm;
  /** How often the checker could not judge, rule by rule, and on which screens. */
  const open = new Map<string, { count: number; on: Set<string> }>();
  beforeAll(async () => {
    farm = await onFarm(theme);
  });
  afterAll(async () => {
    const block = [...open]
      .sort(([, a], [, b]) => b.count - a.count)
      .map(([name, { count, on }]) => `${String(count).padStart(4)}  ${name} (${on.size} screens)`)
      .join("\n");
    console.log(`Left open by the checker of accessibility in ${theme}:\n${block}`);
    const folder = resolve(import.meta.dirname, "../../../.cache");
    mkdirSync(folder, { recursive: true });
    writeFileSync(resolve(folder, `accessibility-open-${theme}.txt`), `${block}\n`);
    await farm.close();
  });

  it.each(screens)("%s has no serious fault of accessibility", async (screen) => {
    await farm.show(screen);
    expect(await farm.chromium.run(() => document.documentElement.dataset["theme"] ?? "")).toBe(theme);
    const { faults, open: left } = await audit(farm.chromium);
    expect(faults).toEqual([]);
    for (const finding of left) {
      const sum = open.get(openAs(finding)) ?? { count: 0, on: new Set() };
      open.set(openAs(finding), { count: sum.count + 1, on: sum.on.add(screen) });
    }
    expect(left.filter((finding) => !(openAs(finding) in LEFT_OPEN))).toEqual([]);
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
