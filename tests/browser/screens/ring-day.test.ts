/** A whole day at rings: set out, read now and late, refilled, leaked, corrected, undone, stopped; all offline. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import type { Rows } from "../../bench/seed.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { until, untilControlled } from "../drivers/driver.ts";
import { type OnPhone, onPhone, passMinutes } from "./on-phone.ts";

let phone: OnPhone;
let board = "";

/** Nine in the morning of today: what follows takes an hour and a half, and no midnight may lie in it. */
const beginsMs = new Date().setHours(9, 0, 0, 0);

const farm = (): Rows => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Low Ridge", add("farm", { name: "Hollow Lane" })));
  const visit = add("visit", { field, day: dayOf(beginsMs), harvestYear: null });
  board = `#/visit/${visit}/rings`;
  add("strip", { field, name: "straw left", done: ["straw-left"], wholeField: false, rep: null });
  add("strip", { field, name: "straw off", done: ["straw-carried-off"], wholeField: false, rep: null });
  for (const name of ["A", "B", "C"])
    add("kit", { type: "ring", name, insideM: [0.3, 0.302], heightsM: [0.25], outsideM: null });
  add("kit", { type: "bottle", name: "litre", volumeM3: 0.001 });
  return rows();
};

beforeAll(async () => {
  phone = await onPhone(farm());
  const { chromium } = phone;
  await untilControlled(chromium);
  await chromium.page.clock.install({ time: beginsMs });
  await chromium.reload();
  // Every part that the day needs is on the device once the service worker is in charge.
  await until("all parts are kept for later", () =>
    chromium.run(async () => {
      const kept = await Promise.all(
        (await caches.keys()).map(async (name) => (await caches.open(name)).keys()),
      );
      return kept.flat().length > 20;
    }),
  );
  await chromium.context.setOffline(true);
  await phone.goTo(board);
  await phone.reads("No ring is set out yet.");
});
afterAll(() => phone.close());

const later = (minutes: number) => passMinutes(phone.chromium.page, minutes);
/** The running figure, once the last number is on record. */
const figureSays = (text: string) =>
  expect.poll(() => phone.chromium.page.locator(".figure .big").textContent()).toContain(text);

/** A key by its whole name. */
const key = (name: string | RegExp) => phone.chromium.page.getByRole("button", { name, exact: true }).first();

const type = async (digits: string): Promise<void> => {
  for (const digit of digits)
    await phone.chromium.page
      .locator(".pad-keys button")
      .filter({ hasText: digit === "." ? "." : new RegExp(`^${digit}$`) })
      .first()
      .tap();
};

const answer = async (digits: string): Promise<void> => {
  await type(digits);
  await key("Done").tap();
};

const row = (letter: string) => phone.chromium.page.locator(`[data-ring="${letter}"]`).first();
const openRing = async (letter: string): Promise<void> => {
  await phone.goTo(board);
  await row(letter).locator("a").tap();
  await phone.chromium.page.locator(".count.ring .tools, .count.ring .pad").first().waitFor();
};

it("sets out a ring and says first what to mind", async () => {
  await phone.touch("Set out a ring");
  await phone.reads("Buried cables, pipes and drains");
  await phone.reads("A locked phone cannot ring.");
  await phone.touch("I have read this");
  await phone.touch("straw left");
  await phone.touch("between rows");
  await phone.touch("mulch kept");
  await phone.write("Your guess, in mm", "40");
  await phone.write("Place 1, in cm", "15");
  await phone.write("Place 2, in cm", "15,6");
  await phone.reads("The ring stands 97 mm in the ground.");
  await phone.touch("Set it out");
  await phone.reads("Water in? Then start the clock.");
  await phone.reads("guessed 40 mm");
});

it("reads now, and some minutes ago, which is marked", async () => {
  await key("Start").tap();
  await phone.reads("how deep was the water at");
  await answer("100");
  await phone.reads(/Next reading .* in 2/u);
  await later(5);
  await key("Read now").tap();
  await answer("86");
  // 100 mm less 86 mm.
  await phone.reads("soaked in after 5 min");
  await figureSays("14");
  await later(6);
  await phone.touch("Read some minutes ago");
  await answer("76");
  await phone.reads("soaked in after 10 min");
  await phone.touch("All readings");
  await phone.reads("entered later");
  await key("Done").tap();
});

it("says how late a reading is, by the clock", async () => {
  await later(7);
  await phone.reads(/min late: it was due at|it was due at/u);
});

it("keeps an open look through a reload", async () => {
  await key("Read now").tap();
  await phone.reads("how deep was the water at");
  const question = await phone.chromium.page.locator("h2").first().textContent();
  await later(1);
  await phone.chromium.reload();
  await expect.poll(() => phone.chromium.page.locator("h2").first().textContent()).toBe(question);
  await answer("60");
  await phone.reads("Taken: 60 mm deep");
});

it("refills: level before, water, level after, and goes on where it was", async () => {
  await later(10);
  await key("Refill").tap();
  await answer("44");
  await phone.reads("how much water was poured in?");
  await answer("1000");
  await phone.reads("water in? Read the level right away.");
  await phone.chromium.page.clock.fastForward(20_000);
  await key("Read now").tap();
  await answer("99");
  await phone.reads("Taken: 99 mm deep");
  // 100 less 44: what was poured in does not count as soaked in.
  await figureSays("56");
});

it("notices water that rose, and corrects it visibly", async () => {
  await later(10);
  await key("Read now").tap();
  await answer("112");
  await phone.reads("The water rose without a refill: did you read down from the rim?");
  await key("Leave it as it was read").tap();
  await phone.touch("All readings");
  await phone.touch("112 mm deep");
  await answer("84");
  await phone.reads("corrected");
  await expect.poll(() => phone.chromium.page.locator("s").textContent()).toBe("112 mm deep");
  await key("Done").tap();
  await figureSays("71");
});

it("asks about an impossible number and keeps it only after yes", async () => {
  await later(2);
  await key("Read now").tap();
  await type("700");
  await key("Done").tap();
  await phone.reads("700 mm: is that what you read?");
  await key("Yes, I read that").tap();
  await key("Leave it as it was read").tap();
  await phone.touch("All readings");
  await phone.reads("unusual, confirmed");
  await key("Done").tap();
});

it("undoes and redoes as far back as wanted, in words", async () => {
  await key("Undo").tap();
  await phone.reads("Undone: 700 mm deep");
  await key("Redo").tap();
  await phone.reads("Redone: 700 mm deep");
  await key("Undo").tap();
  await phone.reads("Undone: 700 mm deep");
  await key("Undo").tap();
  await phone.reads("Undone: read now");
});

it("takes a measured pour with the moment of the start, as before in one touch", async () => {
  await phone.goTo(board);
  await phone.touch("Set out a ring");
  await phone.touch("As before");
  await phone.touch("straw off");
  await phone.touch("one measured pour");
  await phone.chromium.page.getByRole("radio", { name: /^litre/u }).check({ force: true });
  await phone.touch("Set it out");
  await key("Start").tap();
  await phone.reads("Ring B runs. How much water was poured in?");
  await key("Bottle: 1000 mL").tap();
  await phone.reads("The first pour only wets the ground");
  await later(6);
  await key("Water gone now").tap();
  // 1 L on 0.3 m by 0.302 m inside: 1000 / (π · 30 · 30.2 / 4) cm = 14.05 mm.
  await phone.reads("soaked in after 6 min");
  await figureSays("14");
});

it("writes the numbers of several open looks in order, from the board", async () => {
  await phone.goTo(board);
  await later(9);
  await phone.chromium.page.getByRole("button", { name: "Read now: Ring A" }).tap();
  await phone.reads("Write down 1 number");
  await phone.chromium.page.clock.fastForward(3000);
  await phone.chromium.page.getByRole("button", { name: "Read now: Ring B" }).tap();
  await phone.touch("Write down 2 numbers");
  await phone.reads("Ring A: how deep was the water at");
  await answer("70.5");
  await phone.reads("Ring B: how deep was the water at");
  await key("All gone").tap();
  await row("A").getByText("mm in").waitFor();
});

it("says what is left of the water, and which rings it reaches for", async () => {
  await phone.touch("Water at hand?");
  await phone.write("How much water stands ready now, in litres?", "2,5");
  await key("Keep it").tap();
  await phone.reads("Water left: 2.5 L");
  await phone.reads(/Ring A: needs .* L/u);
});

it("takes out what did not happen, visibly, however long ago", async () => {
  await openRing("A");
  await phone.touch("Something happened");
  await phone.touch("Bumped");
  await phone.touch("All readings");
  await phone.touch("Bumped");
  await phone.touch("Take it out");
  await phone.reads("Missed a reading: taken out");
  await phone.chromium.page.locator("s", { hasText: "Bumped" }).waitFor();
  await key("Done").tap();
});

it("keeps the guess beside the headline", async () => {
  const headline = () => phone.chromium.page.locator(".ring-headline").textContent();
  await expect.poll(headline).toMatch(/30 min\s*\d+ mm/u);
  await expect.poll(headline).toContain("guessed 40 mm");
});

it("shows the curve and the depths that were reached on the row of the board too", async () => {
  await phone.goTo(board);
  const ringA = row("A").first();
  await expect.poll(() => ringA.locator(".board-headline").textContent()).toMatch(/^30 min: \d+ mm/u);
  const bend = await ringA.locator(".board-curve path").getAttribute("d");
  // A point for each reading of the level, from the start on.
  expect((bend ?? "").split("L").length).toBeGreaterThanOrEqual(3);
});

it("restarts after a leak one pace away; the old ring is kept and tied", async () => {
  await openRing("A");
  await phone.touch("Something happened");
  await phone.touch("Leaked outside");
  await phone.reads("Ring A leaked. What now?");
  await phone.touch("Start again one pace away");
  await phone.reads("Set out again, one pace away");
  await phone.touch("Set it out");
  await phone.reads("Water in? Then start the clock.");
  await phone.goTo(board);
  await phone.reads("stopped: it leaked");
  await phone.reads("starts again after a leak");
  await expect.poll(() => phone.chromium.page.locator('[data-ring="A"]').count()).toBe(2);
});

it("shows big figures without keys, and one touch leaves", async () => {
  await phone.touch("Big figures");
  await phone.chromium.page.locator(".big-row").first().waitFor();
  const heightPx = () =>
    phone.chromium.run(() =>
      Number.parseFloat(getComputedStyle(document.querySelector(".big-mm") ?? document.body).fontSize),
    );
  await expect.poll(heightPx).toBeGreaterThanOrEqual(56);
  await phone.chromium.page.locator(".big-page").tap();
  await phone.reads(/^Rings (?:today|on)/);
});

it("stops a ring from the board", async () => {
  await phone.touch("Stop a ring");
  await phone.chromium.page.getByRole("button", { name: "Stop: Ring B" }).tap();
  await phone.reads("stopped: finished");
});

it("puts everything on the sheet: readings, corrections, what does not count, and how it was worked out", async () => {
  await phone.chromium.page.locator('[data-ring="A"] a').last().tap();
  await phone.touch("The sheet of this ring");
  const text = async () => (await phone.chromium.page.locator("main").textContent()) ?? "";
  for (const words of [
    "112 mm deep",
    "entered later",
    "after a refill",
    "Leaked outside",
    "guessed before",
    "mulch kept",
    "How this was worked out",
    "Sources",
  ])
    await expect.poll(text).toContain(words);
  await phone.reads("Soaked in");
  expect(await text()).not.toMatch(/science\/|record\//u);
  // In the middle of the screen: at its edge the keys that stay under the thumb would lie over it.
  await phone.chromium.run(() => document.querySelector("summary")?.scrollIntoView({ block: "center" }));
  await phone.chromium.page.getByText("Show as table").tap();
  await phone.reads("soaked in, mm");
});
