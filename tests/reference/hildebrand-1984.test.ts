/**
 * Source: Hildebrand 1984, Agronomy Journal 76: 271-274: maize on 14 farms in Malawi, t/ha.
 * Mark: published (data, means 1.35 and 2.70, variances 0.2996 and 0.9185); computed here with R (the rest).
 */
import { expect, it } from "vitest";
import { comparePairs } from "../../src/science/side-by-side/pairs.ts";
import { blockedTable } from "../../src/science/statistics/blocks.ts";
import { sampleOf } from "../../src/science/statistics/sample.ts";
import { pairedStudent, welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const PLAIN = [2.2, 2.2, 1.9, 1.2, 1.3, 0.9, 1.0, 0.5, 1.8, 1.1, 1.6, 1.0, 1.6, 0.6];
const FED = [3.6, 3.7, 4.3, 3.2, 2.3, 2.3, 3.1, 2.8, 3.2, 2.5, 2.9, 1.2, 1.9, 0.8];

it("means and variances as published", () => {
  const [plain, fed] = [reached(sampleOf(PLAIN)), reached(sampleOf(FED))];
  expect(plain.mean).toBeCloseTo(1.35, 10);
  expect(fed.mean).toBeCloseTo(2.7, 10);
  expect(plain.variance).toBeCloseTo(0.2996, 4);
  expect(fed.variance).toBeCloseTo(0.9185, 4);
});

it("a pair for each farm: 1.35, t 6.93589 on 13, p = 1.028e-5, 0.92951 to 1.77049", () => {
  const test = reached(pairedStudent(FED.map((fed, at) => fed - (PLAIN[at] ?? 0))));
  expect(test.t).toBeCloseTo(6.93589, 5);
  expect(test.degreesOfFreedom).toBe(13);
  expect(test.chance).toBeCloseTo(1.028e-5, 8);
  const seen = reached(
    comparePairs(
      FED.map((fed, at) => ({
        label: `farm ${at}`,
        a: { value: fed, least: null },
        b: { value: PLAIN[at] ?? 0, least: null },
      })),
      "farms",
      { scale: "difference", unit: "1", worthwhile: 0.5, seed: 1 },
    ),
  );
  expect(seen.value).toBeCloseTo(1.35, 10);
  const range = reached(seen.range);
  expect(range.lower).toBeCloseTo(0.92951, 5);
  expect(range.upper).toBeCloseTo(1.77049, 5);
  expect(seen).toMatchObject({ n: 14, sampledBy: "farms", word: "clearly-different" });
});

it("least significant difference 0.42049, the half of that range, also from the table of blocks", () => {
  expect(reached(blockedTable([PLAIN, FED])).leastSignificant).toBeCloseTo(0.42049, 5);
});

it("ignoring the pairs t is 4.57678", () => {
  expect(reached(welch(FED, PLAIN)).t).toBeCloseTo(4.57678, 5);
});
