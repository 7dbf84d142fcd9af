import { expect, it } from "vitest";
import { HABITS } from "../../../src/record/units.ts";
import { accuracyWords } from "../../../src/screens/parts/accuracy.ts";
import { standingWords } from "../../../src/screens/parts/words.standing.ts";

it("says how often a stated radius holds the place, and nothing more where that is not known", () => {
  const { standing } = standingWords();
  const said = (means: Parameters<typeof accuracyWords>[1]) =>
    accuracyWords(4, means, standing, HABITS.metric);
  expect(said("68-percent")).toBe("4 m (2 times in 3)");
  expect(said("95-percent")).toBe("4 m (19 times in 20)");
  expect(said("not-known")).toBe("4 m");
  expect(said(null)).toBe("4 m");
});
