/**
 * Every screen, as it opens and in every state of it: each is reached once and looked at in both themes.
 *
 * The screens are opened by a fresh start of the app: after a walk through others, their style sheets would hide
 * what is missing in a screen's own.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { standsStill } from "../screens/on-phone.ts";
import { AROUND } from "./around.ts";
import { LEFT_OPEN } from "./left-open.ts";
import { type Eyes, eyesOn } from "./looks.ts";
import { movesOf } from "./moves.ts";
import { NEVER_MET } from "./never-met.ts";
import { wholeFarm } from "./sample-whole.ts";
import { type OnFarm, onFarm } from "./screens.ts";
import { STATES } from "./states.ts";
import { covered, leave, presses, standsOn, take } from "./steps.ts";

const root = resolve(import.meta.dirname, "../../..");

let farm: OnFarm;
let eyes: Eyes;
/** States that were looked at. */
let looked = 0;
beforeAll(async () => {
  farm = await onFarm("daylight");
  eyes = eyesOn(farm);
});
afterAll(async () => {
  const { open, pairs } = eyes.met;
  const block = [...open]
    .sort(([, a], [, b]) => b.size - a.size)
    .map(([name, on]) => `${String(on.size).padStart(4)}  ${name}`)
    .join("\n");
  console.log(`Left open by the checker of accessibility, in so many states:\n${block}`);
  const folder = resolve(root, ".cache");
  mkdirSync(folder, { recursive: true });
  writeFileSync(resolve(folder, "accessibility-open.txt"), `${block}\n`);
  const table = [...pairs].map(([name, where]) => `${name}  ${where}\n`).sort();
  writeFileSync(resolve(folder, "accessibility-colours.txt"), table.join(""));
  await farm.close();
});

/** Unfolds what is folded; false when nothing was. */
const unfold = (): Promise<boolean> =>
  farm.chromium.run(() => {
    const folded = [...document.querySelectorAll<HTMLDetailsElement>("details:not([open])")];
    for (const one of folded) one.open = true;
    return folded.length > 0;
  });

const lookWell = async (state: string): Promise<void> => {
  await standsStill(farm.chromium, state);
  await eyes.look(state);
  looked += 1;
  if (!(await unfold())) return;
  await standsStill(farm.chromium, state);
  await eyes.look(`${state}, unfolded`);
};

it.each(Object.keys(wholeFarm().addresses))("%s", async (screen) => {
  await farm.begin();
  await farm.startAt(screen);
  expect.soft(await movesOf(farm.chromium), "nothing to touch moves").toEqual([]);
  await lookWell(screen);
});

it.each(STATES.map(([name, ...rest]) => [name, rest] as const))("%s", async (name, [screen, ...way]) => {
  await farm.begin();
  await farm.show(screen);
  for (const step of way) await take(farm, step);
  await standsStill(farm.chromium, name);
  if (presses(way)) {
    expect.soft(await standsOn(farm, screen), "a keyboard stands in it").toBe(true);
    expect.soft(await covered(farm), "and sees it").toBe(null);
  }
  await lookWell(name);
  if (!(await leave(farm))) return;
  await standsStill(farm.chromium, name);
  expect.soft(await standsOn(farm, screen), "a keyboard stands where it came from").toBe(true);
});

it.each(AROUND.map(([name, ...way]) => [name, way] as const))("%s", async (name, way) => {
  for (const step of way) await take(farm, step);
  await lookWell(name);
});

const WIDE = ["visit", "line-sheet", "field", "worked-out", "help-topic", "settings", "line", "rings"];

it.each(WIDE)("%s, with its list beside it", async (screen) => {
  await farm.begin();
  await farm.chromium.page.setViewportSize({ width: 1280, height: 800 });
  await farm.show(screen);
  await standsStill(farm.chromium, screen);
  await eyes.lookWide(screen);
  await farm.chromium.page.setViewportSize({ width: 390, height: 844 });
});

it("has met everything that has a look of its own", () => {
  const screens = resolve(root, "src");
  const styled = readdirSync(screens, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".css"))
    .flatMap((name) => {
      const rules = readFileSync(resolve(screens, name), "utf8").replace(/\/\*[\s\S]*?\*\//g, "");
      return [...rules.matchAll(/[^{}]*(?=\{)/g)].flatMap(([selector]) =>
        [...selector.matchAll(/\.(-?[a-z][\w-]*)/gi)].map(([, one = ""]) => one),
      );
    });
  const all = Object.keys(wholeFarm().addresses).length + STATES.length + AROUND.length;
  // A part of the states was asked for.
  if (looked < all) return;
  const missed = [...new Set(styled)].filter((one) => !eyes.met.classes.has(one) && !(one in NEVER_MET));
  expect(missed).toEqual([]);
  // Whether one of them is met goes by how fast the machine is: each must be there to be met.
  expect(Object.keys(NEVER_MET).filter((one) => !styled.includes(one))).toEqual([]);
  expect(Object.keys(LEFT_OPEN).filter((one) => !eyes.met.open.has(one))).toEqual([]);
});
