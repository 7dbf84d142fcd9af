/** Strips of one day side by side: like with like first, then what was seen, then what it proves. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../../src/screens/parts/route.ts";
import { daySample } from "./day-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
const unlike = daySample({ mulch: "removed" });
const address = href({ at: "side-by-side", visit: unlike.visit, strip: unlike.left });
const page = () => phone.chromium.page;
const section = (name: string) =>
  page()
    .locator("main > section")
    .filter({ has: page().getByRole("heading", { level: 2, name, exact: true }) });

beforeAll(async () => {
  phone = await onPhone(unlike.rows);
  await phone.goTo(address);
});
afterAll(() => phone.close());

it("says what is unlike before any number, and shows none", async () => {
  await phone.reads("Soaked in. Not like with like: the mulch inside the rings was not treated alike.");
  await phone.reads("straw left: mulch kept. carried off: mulch removed.");
  await phone.reads("Ground cover: alike in the place against the row (between rows)");
  expect(await page().locator(".drawn, table.figures").count()).toBe(0);
  expect((await page().locator("main").textContent()) ?? "").not.toContain("times as");
});

it("compares anyway when the person says so, and the words stay", async () => {
  await phone.touch("Compare anyway");
  await phone.reads("Straw left: 45 points more ground cover than carried off.");
  await phone.reads("These two places differ clearly on this day.");
  // (70 · 88 · 61)^(1/3) over (27 · 35 · 22)^(1/3) = 72.2 over 27.5 = 2.6 by hand.
  await phone.reads("Straw left: about 2.6 times as much water soaked in as on carried off.");
  await phone.reads("Not like with like: the mulch inside the rings was not treated alike.");
  await phone.reads("nothing can tell what the ground did from what was done to it");
});

it("never names what was done as the cause", async () => {
  const text = (await page().locator("main").textContent()) ?? "";
  expect(text).not.toMatch(/because of|due to|thanks to|caused/);
});

it("shows the drawing as a table, rings at all three times, old grass beside them", async () => {
  await section("Soaked in").getByText("Show as table").tap();
  const now = () => section("Soaked in").locator("tbody tr").allInnerTexts();
  await expect.poll(now).toHaveLength(7);
  const rows = await now();
  expect(rows[0]).not.toContain("guessed");
  expect(rows[1]).toMatch(/straw left, after 60 min\s+72 mm\s+\d+ to \d+, 3 rings\s+guessed before: 25 mm/);
  expect(rows[2]).toMatch(/straw left, after 180 min\s+130 mm\s+too few to give a range, 2 rings/);
  expect(rows[6]).toMatch(/old-grass spot, Orchard corner, after 60 min\s+95 mm/);
});

it("tells the strips apart by marker and dash, not by colour alone", async () => {
  const [first, second] = [0, 1].map((at) => section("Ground cover").locator(".bar-drawing").nth(at));
  expect(await first?.locator(".bar-value").getAttribute("d")).not.toBe(
    await second?.locator(".bar-value").getAttribute("d"),
  );
  expect(await first?.locator(".bar-range").getAttribute("stroke-dasharray")).not.toBe(
    await second?.locator(".bar-range").getAttribute("stroke-dasharray"),
  );
});

it("opens how a comparison was worked out", async () => {
  await section("Worms")
    .getByRole("button", { name: /How this was worked out/ })
    .tap();
  await section("Worms").getByText("Sources").waitFor();
  await expect.poll(() => section("Worms").locator(".formula").count()).toBeGreaterThan(1);
});

it("asks again after the page was loaded again", async () => {
  await phone.chromium.reload();
  await phone.reads("Compare anyway");
});

it("compares treatments over pairs when the strips stand in reps", async () => {
  await phone.close();
  const reps = daySample({ reps: 3, oldGrass: false });
  phone = await onPhone(reps.rows);
  await phone.goTo(href({ at: "side-by-side", visit: reps.visit, strip: null }));
  await phone.reads("Compared over 3 pairs.");
  await phone.reads(
    /^Straw (left|carried off)(, | and )?.*straw (left|carried off): (clearly|probably) different\.$/,
  );
  // 45, 43 − 2 … : each rep lies ten points nearer than the one before (one hit of twenty on each side),
  // and all of them the way round of the sentence above.
  await phone.reads("Each pair by itself: straw left against straw carried off");
  const pairs = () => section("Ground cover").locator("tbody tr").allInnerTexts();
  await expect
    .poll(async () => (await pairs()).map((row) => Number(/(\S+) points/.exec(row)?.[1])))
    .toEqual([45, 35, 25]);
});

it("says before any number that one strip lies mostly in wheel tracks, with the shares of both", async () => {
  const tracks = daySample({ tracks: true });
  const other = await onPhone(tracks.rows);
  await other.goTo(href({ at: "side-by-side", visit: tracks.visit, strip: tracks.left }));
  await other.reads("Soaked in. Not like with like: the places against the row differ, or their shares do.");
  await other.reads(
    "straw left: wheel track 2 of 3, between rows 1 of 3. carried off: between rows 2 of 3, wheel track 1 of 3.",
  );
  await other.reads("so no number is shown yet");
  expect(await other.chromium.page.getByText("mm", { exact: true }).count()).toBe(0);
  await other.close();
});
