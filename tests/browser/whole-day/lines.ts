/** Lines on two strips with one rope: the first mark by mark, the others as sums called out. */
import { expect, it } from "vitest";
import { type Day, times } from "./day.ts";

/** Marks of the rope. */
const MARKS = 20;

/** Writes the sums of a line; what is left over is bare. */
const countTotals = async (day: Day, residue: number, green: number): Promise<void> => {
  const { chromium, choose, press, write, reads, touch } = day;
  await choose("totals");
  await chromium.page.getByRole("button", { name: /^Start counting/ }).tap();
  await reads("How many marks of each?");
  await write("Residue, flat", String(residue));
  await write("Green", String(green));
  await write("Bare", String(MARKS - residue - green));
  await press("Keep these totals");
  await reads("All 20 marks are read.");
  await touch("See this line");
  await reads("Ground cover on this line");
};

export const countMarkByMark = (today: () => Day): void => {
  it("sets out the first line; the rope is put into the kit on the way", async () => {
    const { stand, touch, choose, press, write, reads } = today();
    await touch("Count a line");
    await stand(40, 70);
    await reads("Position within about 4 m");
    await choose("north half");
    await press("Add a rope");
    await write("Name", "R1");
    await write("How many marks?", String(MARKS));
    await write("From mark to mark, in cm", "30");
    await press("Keep this rope");
    await reads("20 marks, 30 cm apart");
    await choose("between rows");
    await press("Start counting");
    await reads("What does the raindrop meet at mark 1?");
  });

  it("takes a mark back and brings it again, in words", async () => {
    const { answers, press, reads } = today();
    await answers(...times(10, "residue"), "bare");
    await reads("Taken: mark 11: bare");
    await press("Undo");
    await reads("Undone: mark 11: bare");
    await press("Redo");
    await reads("Redone: mark 11: bare");
  });

  it("goes on at the same mark after the page was loaded again", async () => {
    const { chromium, answers, reads } = today();
    await chromium.reload();
    await reads("What does the raindrop meet at mark 12?");
    await answers(...times(3, "residue"), "green", ...times(4, "bare"), "stone");
    await reads("All 20 marks are read.");
  });

  it("corrects mark 11, and the correction stays to be seen", async () => {
    const { chromium, answers, touch, press, reads, figure } = today();
    // 13 residue and 1 green of 20; stone does not count.
    await figure("70 %");
    await chromium.page.tap(".rope-key");
    await touch(/^11 bare/);
    await answers("residue");
    await reads("corrected");
    await press("Done");
    await figure("75 %");
  });

  it("shows what lay there, and the range of this line alone", async () => {
    const { chromium, touch, reads } = today();
    await touch("See this line");
    // 15 of 20 by Wilson's score interval (Wilson 1927, Journal of the American Statistical Association 22, 209):
    // (0.75 + 0.0960 ± 1.960 · √(0.009375 + 0.002401)) / 1.1921 = 0.531 and 0.888.
    await reads(/^53 to 89, this line alone/);
    await reads("Too few to give a range.");
    await expect
      .poll(() => chromium.page.locator("tbody tr").allInnerTexts())
      .toEqual(["residue, flat\t14\t70 %", "green\t1\t5 %", "bare\t4\t20 %", "stone\t1\t5 %"]);
  });
};

export const countOtherLines = (today: () => Day): void => {
  it("takes totals back to put one of them right, and brings them again", async () => {
    const { chromium, touch, choose, press, write, reads } = today();
    await touch("Next line");
    await choose("totals");
    await press("Start counting");
    await reads("How many marks of each?");
    await write("Residue, flat", "12");
    await write("Bare", "3");
    await press("Keep these totals");
    await reads("15 of 20 marks");
    await press("Undo");
    await reads("Undone: totals");
    await expect.poll(() => chromium.page.getByLabel("Residue, flat").inputValue()).toBe("12");
    await press("Redo");
    await reads("Redone: totals");
    await press("Undo");
    await write("Residue, flat", "16");
    await write("Green", "1");
    await press("Keep these totals");
    await reads("All 20 marks are read.");
    await touch("See this line");
    await reads("Ground cover on this line");
  });

  it("counts one more line on the strip, and the strip has a range", async () => {
    const { touch, reads } = today();
    await touch("Next line");
    await countTotals(today(), 16, 0);
    // 15, 17 and 16 of 20: see `today.ts`.
    await reads(/^Strip so far: 80 %, 65 to 90, 3 lines\./);
  });

  it("counts three lines on the other strip", async () => {
    const { touch, choose, reads } = today();
    for (const residue of [6, 8, 7]) {
      await touch("Next line");
      await choose("south half");
      await countTotals(today(), residue, 0);
    }
    await reads(/^Strip so far: 35 %, 24 to 48, 3 lines\./);
  });
};
