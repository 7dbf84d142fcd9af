import { afterEach, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { standsStill } from "../screens/on-phone.ts";
import { type OnFarm, onFarm } from "./screens.ts";

/** Smallest counting key in CSS pixels, in both directions: own rule for gloves, no source. */
const leastKeyPx = 96;

let farm: OnFarm | undefined;
afterEach(async () => {
  await farm?.close();
  farm = undefined;
});

const begin = async (screen: string, width: number, height: number): Promise<OnFarm> => {
  farm = await onFarm("daylight");
  await farm.chromium.page.setViewportSize({ width, height });
  await farm.show(screen);
  return farm;
};

/** Place and size of keys, by what they answer or say. */
const boxes = ({ chromium }: OnFarm, selector: string): Promise<Record<string, number[]>> =>
  chromium.run(
    (which) =>
      Object.fromEntries(
        [...document.querySelectorAll(which)].map((key) => {
          const { x, y, width, height } = key.getBoundingClientRect();
          return [key.textContent ?? "", [x, y, width, height]];
        }),
      ),
    selector,
  );

const marksShown = ({ chromium }: OnFarm): Promise<string> =>
  chromium.run(() => document.querySelector(".figure b")?.textContent ?? "");

it.each([
  ["line", 4, 390, 844],
  ["line", 4, 360, 640],
  ["line, five keys", 5, 390, 844],
  ["line, five keys", 5, 360, 640],
])("%s has its %i counting keys large and in sight at %i by %i", async (screen, count, width, height) => {
  const keys = Object.values(await boxes(await begin(screen, width, height), "[data-answer]"));
  expect(keys).toHaveLength(count);
  for (const [x = 0, y = 0, wide = 0, tall = 0] of keys) {
    expect(wide).toBeGreaterThanOrEqual(leastKeyPx);
    expect(tall).toBeGreaterThanOrEqual(leastKeyPx);
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x + wide).toBeLessThanOrEqual(width);
    expect(y + tall).toBeLessThanOrEqual(height);
    // The lower 60 % of the screen is where the thumb is.
    expect(y).toBeGreaterThanOrEqual(height * 0.4 - 1);
  }
});

it.each([
  [390, 844],
  [360, 640],
])("no key moves while 30 marks are counted at %i by %i, nor the tools when the line ends", async (w, h) => {
  const on = await begin("line", w, h);
  const keys = "[data-answer], .halves label, .tools button";
  const before = await boxes(on, keys);
  const tools = await boxes(on, ".tools button");
  // Four marks stand on the line; further ones follow, each answer in its turn, past the wet-glass pause.
  const answers = ["residue", "residue", "residue", "bare", "green", "stone"];
  const moved: string[] = [];
  for (let touch = 0; touch < 30; touch++) {
    const answer = answers[touch % answers.length] ?? "residue";
    await on.chromium.page.tap(`[data-answer=${answer}]`);
    await until(`mark ${touch + 5} is shown`, async () =>
      (await marksShown(on)).startsWith(`${touch + 5} of`),
    );
    const now = await boxes(on, keys);
    if (JSON.stringify(now) !== JSON.stringify(before)) moved.push(`touch ${touch + 1}`);
    await on.chromium.page.waitForTimeout(260);
  }
  expect(moved).toEqual([]);
  await on.chromium.page.tap(".tools button:last-child");
  await until("the line has ended", async () => Object.keys(await boxes(on, "[data-answer]")).length === 0);
  await standsStill(on.chromium, "line, ended");
  expect(await boxes(on, ".tools button")).toEqual(tools);
});
