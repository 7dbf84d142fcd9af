import { afterAll, beforeAll, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { until, untilControlled } from "../drivers/driver.ts";
import { type OnPhone, onPhone, standsStill, stepOf } from "./on-phone.ts";

/**
 * A day with a spade and without signal: three holes, two of them open at once. Worms per m² are worked out
 * by hand from the exact square foot, 0.09290304 m² (NIST Special Publication 811, appendix B.8, from memory).
 */
let phone: OnPhone;
let visit: RecordId<"visit">;

const page = () => phone.chromium.page;
const press = (name: string | RegExp) => page().getByRole("button", { name, exact: true }).tap();
const worm = async (times: number) => {
  for (let at = 0; at < times; at++) await page().tap('[data-answer="worm"]');
};
const layer = (name: string) => page().tap(`[data-layer="${name}"]`);
/** The running figure, once the last touch is on record. */
const figure = (text: string) =>
  until(
    `the figure reads ${text}`,
    async () => (await page().locator(".big").first().textContent()) === text,
  );
const type = async (digits: string) => {
  for (const digit of digits) await page().locator(".pad-keys").getByText(digit, { exact: true }).tap();
  await press("Done");
};
/** Between two kinds longer than wet glass takes. */
const place = async (...kinds: readonly string[]) => {
  for (const kind of kinds) {
    await page().waitForTimeout(260);
    await page().tap(`[data-answer="${kind}"]`);
  }
};
/** Counting keys are 96 px or more each way, on a large phone and on a small one: own rule for gloves, no source. */
const keysAreLarge = async (count: number) => {
  for (const [width, height] of [
    [360, 640],
    [390, 844],
  ] as const) {
    await page().setViewportSize({ width, height });
    await expect.poll(() => page().locator(".answer").count()).toBe(count);
    const wrong = async () => {
      const keys = await page().locator(".answer").all();
      const boxes = await Promise.all(keys.map((key) => key.boundingBox()));
      return boxes.filter(
        (box) => !(box && box.width >= 96 && box.height >= 96 && box.y + box.height <= height),
      );
    };
    await expect.poll(wrong).toEqual([]);
  }
};
const topOf = async (selector: string) => (await page().locator(selector).first().boundingBox())?.y;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  visit = add("visit", { field, day: dayOf(Date.now()), harvestYear: null });
  phone = await onPhone(rows());
  const { context } = phone.chromium;
  await context.grantPermissions(["geolocation"], { origin: new URL(page().url()).origin });
  await untilControlled(phone.chromium);
  await context.setOffline(true);
});
afterAll(() => phone.close());

it("sets out the first hole: method, strip, a guess, a position", async () => {
  await phone.goTo(`#/visit/${visit}/new-hole`);
  await phone.reads("Buried cables, pipes and drains");
  await press("I have read this");
  // The browser stamps it with the moment it is set; the app takes none that is older than ten seconds.
  await phone.chromium.context.setGeolocation({ latitude: 52.1, longitude: -1.3, accuracy: 4 });
  await phone.reads(/Position within about 4 m/);
  await page().getByText("USDA soil quality test kit").tap();
  await phone.reads(/This method uses mustard water/);
  await phone.write("Guess first", "12");
  await page().getByText("between rows").tap();
  await press("Start hole 1");
  await phone.reads("Sort the mulch first");
});

it("counts the mulch first, then the soil, while two people sort", async () => {
  await keysAreLarge(1);
  await standsStill(phone.chromium, "hole");
  const before = await topOf(".tools");
  // What it says first: two people make ten seconds of work in five.
  const firstTime = phone.chromium.run(
    () =>
      new Promise<string>((resolve) => {
        const watch = new MutationObserver(() => {
          const text = document.querySelector(".clock-words")?.textContent ?? "";
          if (!text.includes("2 people sort")) return;
          watch.disconnect();
          resolve(text);
        });
        watch.observe(document.body, { subtree: true, childList: true, characterData: true });
      }),
  );
  await page().tap('[data-people="2"]');
  expect(await firstTime).toMatch(/2 people sort · 0:0\d/);
  await worm(3);
  await phone.reads("Taken: worm from the mulch");
  await layer("soil");
  await worm(9);
  await figure("12");
  await phone.reads(/2 people sort/);
  // Not a key has moved since the hole was opened, nor does one when the task changes.
  expect(await topOf(".tools")).toBe(before);
  await press("Place the worms");
  await page().locator('[data-answer="young"]').waitFor();
  expect(await topOf(".tools")).toBe(before);
  await press("Find more");
  await page().locator('[data-answer="worm"]').waitFor();
});

it("undoes as far back as wanted, says what, and brings it back", async () => {
  await press("Undo");
  await phone.reads("Undone: worm from the soil");
  await press("Undo");
  await figure("10");
  await press("Redo");
  await press("Redo");
  await phone.reads("Redone: worm from the soil");
  await figure("12");
});

it("comes back after a reload to the same layer, the same count and the same people", async () => {
  await phone.chromium.reload();
  await phone.reads("Sort the soil of the hole");
  await figure("12");
  await phone.reads(/2 people sort/);
  await worm(1);
  await figure("13");
});

it("shows the key for the next hole where it stays", async () => {
  await page().addInitScript(() => {
    const places = new Set<number>();
    Object.assign(globalThis, { places });
    const look = (): void => {
      const key = document.querySelector<HTMLElement>(".next-hole");
      if (key?.checkVisibility({ visibilityProperty: true }) === true)
        places.add(Math.round(key.getBoundingClientRect().left));
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await phone.chromium.reload();
  await page().locator(".open-holes a[aria-current]").waitFor();
  const places = () => page().evaluate(() => [...(Reflect.get(globalThis, "places") as Set<number>)]);
  await expect.poll(async () => (await places()).length).toBeGreaterThan(0);
  await phone.reads("2 people sort");
  expect(await places()).toHaveLength(1);
});

it("waits for mustard water at one hole while the next one is dug", async () => {
  await layer("mustard-water");
  await press("Poured now");
  await phone.reads(/Poured just now/);
  await phone.reads(/Look for worms until \d\d:\d\d/);
  await press("How much?");
  await type("2");
  await phone.reads(/Poured just now \(\d\d:\d\d\), 2 L/);
  await page()
    .getByRole("link", { name: /Next hole/ })
    .tap();
  await phone.reads("Guessed on this strip: 12 worms per hole.");
  await press("Start hole 2, as hole 1");
  await phone.reads("Sort the mulch first");
  await phone.reads("13 · mustard 0 min");
});

it("takes a total alone for a full result", async () => {
  await layer("soil");
  await press("Count at once");
  await phone.reads("How many worms from the soil?");
  await type("17");
  await phone.reads("Taken: 17 worms from the soil, counted at once");
  await press("Close the hole");
  await phone.reads("Hole 2 is closed.");
});

it("goes back to the open hole in one touch, and places what is in the pot", async () => {
  await page().locator(".open-holes a").filter({ hasText: "hole 1" }).tap();
  await phone.reads("Which worms come up?");
  await worm(1);
  await figure("14");
  await press("Place the worms");
  await keysAreLarge(4);
  await place("young", "young", "surface", "topsoil", "topsoil", "deep");
  await phone.reads("14 found, 6 placed, 8 left");
  await press("Type the numbers");
  await page().tap('[data-count="young"]');
  await type("8");
  await phone.reads("corrected");
  await press("Done");
  await phone.reads("14 found, 12 placed, 2 left");
});

it("corrects a count, visibly, and Back leaves the panel before it leaves the hole", async () => {
  await press("Correct");
  await page().locator('[data-count="soil"]').waitFor();
  const atList = await stepOf(phone.chromium);
  await page().tap('[data-count="soil"]');
  await phone.reads("It stands in the place of the 10 counted so far; they stay on record.");
  await type("9");
  await page().locator('[data-count="soil"]').waitFor();
  await until("the step of the number is gone", async () => (await stepOf(phone.chromium)) === atList);
  await page().goBack();
  await phone.reads("13 found, 12 placed, 1 left");
  await press("Close the hole");
  await phone.reads("Hole 1 is closed.");
});

it("shows the sheet: per hole first, then per m², and what was corrected struck through", async () => {
  await phone.touch("See this hole");
  await figure("13");
  // 13 / 0.09290304 = 139.93
  await phone.reads(/140 worms per m²/);
  await phone.reads("from a hole of 30.5 × 30.5 cm");
  await phone.reads("Guessed before: 12 worms per hole.");
  await expect
    .poll(() => page().locator("del").allTextContents())
    .toEqual(expect.arrayContaining(["10 × worm from the soil", "2 × young worm"]));
  await press("Show the formula and its source");
  await phone.reads("Worms of a hole (hand sorting)");
});

it("asks a hole with few worms whether the soil was cold or dry, and keeps the count", async () => {
  await phone.goTo(`#/visit/${visit}/new-hole`);
  await press("Start hole 3, as hole 2");
  await phone.reads("Sort the mulch first");
  await page().keyboard.press("w");
  await phone.reads("Taken: worm from the mulch");
  await press("Close the hole");
  await phone.reads("Few worms: was the soil cold or dry?");
  await press("Soil: temperature and wetness");
  await press("dry");
  await press("Type the temperature");
  await type("5");
  await phone.reads("Temperature: 5 °C");
  await press("Done");
  await phone.touch("See this hole");
  await figure("1");
  await phone.reads("Holes with few or no worms and cold soil: 1. The count may be too low.");
  await phone.reads("Holes with few or no worms and dry soil: 1. The count may be too low.");
});
