import { describe, expect, it } from "vitest";
import { failed, ok } from "../../../../src/record/result.ts";
import { compareBlocks } from "../../../../src/science/side-by-side/blocks.ts";
import type { Asked } from "../../../../src/science/side-by-side/comparison.ts";
import { compareCounts } from "../../../../src/science/side-by-side/counts.ts";
import { compareGroups } from "../../../../src/science/side-by-side/groups.ts";
import { comparePairs, type PairedBy } from "../../../../src/science/side-by-side/pairs.ts";
import { planFor } from "../../../../src/science/side-by-side/plan.ts";
import { meansOfStrips } from "../../../../src/science/side-by-side/strip-means.ts";
import { wordFor } from "../../../../src/science/side-by-side/words.ts";
import { reached, reasonOf } from "../counts.ts";

const DIFFERENCE: Asked = { scale: "difference", unit: "1", worthwhile: 0.1, seed: 1 };
const RATIO: Asked = { scale: "ratio", unit: "mm/h", worthwhile: 2, seed: 1 };
const seen = (values: readonly number[], least: number | null = null) =>
  values.map((value) => ({ value, least }));
const pairs = (sides: readonly (readonly [number, number])[], least: number | null = null) =>
  sides.map(([a, b], at) => ({ label: `${at}`, a: { value: a, least }, b: { value: b, least } }));
const codes = ({ cautions }: { readonly cautions: readonly { readonly code: string }[] }) =>
  cautions.map(({ code }) => code);

describe("words", () => {
  const range = (lower: number, upper: number) => ok({ lower, upper });
  const none = failed("science/no-spread-seen");

  it.each([
    ["clearly-different", range(0.1, 1), range(0.2, 0.9)],
    ["clearly-different", range(-2, -0.1), range(-1, -0.2)],
    ["probably-different", range(-0.1, 1), range(0.1, 0.9)],
    ["cannot-tell-yet", range(-1, 1), range(-0.5, 0.5)],
    ["cannot-tell-yet", range(0, 1), range(0, 0.9)],
    ["cannot-tell-yet", none, none],
    ["probably-different", none, range(0.1, 0.9)],
  ] as const)("%s", (word, wide, narrow) => {
    expect(wordFor(wide, narrow, 0)).toBe(word);
  });
});

describe("pairs", () => {
  it("say that a trial of few pairs cannot reach 5 % by signs, and that six can", () => {
    const steady = (n: number) => pairs(Array.from({ length: n }, (_, at) => [0.8 + at / 100, 0.5] as const));
    const four = reached(comparePairs(steady(4), "blocks", DIFFERENCE));
    expect(four.cautions).toEqual([
      { code: "science/too-few-pairs-for-five-percent", facts: { pairs: 4, percent: 13 } },
      { code: "science/range-if-lopsided", facts: { values: 4 } },
    ]);
    expect(codes(reached(comparePairs(steady(6), "farms", DIFFERENCE)))).toEqual([
      "science/range-if-lopsided",
    ]);
    expect(reached(comparePairs(steady(30), "farms", DIFFERENCE)).cautions).toEqual([]);
  });

  it("count several pairs of one farm as one", () => {
    const farms = [
      { label: "north", a: { value: 8, least: null }, b: { value: 4, least: null } },
      { label: "north", a: { value: 4, least: null }, b: { value: 4, least: null } },
      { label: "south", a: { value: 9, least: null }, b: { value: 6, least: null } },
      { label: "east", a: { value: 5, least: null }, b: { value: 4, least: null } },
    ];
    const result = reached(comparePairs(farms, "farms", DIFFERENCE));
    expect(result).toMatchObject({ n: 3, sampledBy: "farms", value: 2 });
    expect(result.each.map(({ value }) => value)).toEqual([2, 3, 1]);
    expect(codes(result)).toContain("science/pairs-of-one-place-averaged");
  });

  it.each<[PairedBy, string]>([
    ["blocks", "pairs"],
    ["farms", "farms"],
    ["edge-spots", "spots"],
  ])("by %s", (by, sampledBy) => {
    const result = reached(
      comparePairs(
        pairs([
          [3, 1],
          [4, 3],
          [6, 2],
        ]),
        by,
        DIFFERENCE,
      ),
    );
    expect(result.sampledBy).toBe(sampledBy);
    expect(codes(result).includes("science/ground-and-treatment")).toBe(by === "edge-spots");
  });

  it("let the least stand in for nothing where ratios are compared, and say so", () => {
    const result = reached(
      comparePairs(
        pairs(
          [
            [0, 4],
            [2, 8],
            [1, 4],
          ],
          1,
        ),
        "blocks",
        RATIO,
      ),
    );
    expect(result.value).toBeCloseTo(0.25, 12);
    expect(codes(result)).toContain("science/least-stands-in");
    expect(reasonOf(comparePairs(pairs([[0, 4]]), "blocks", RATIO))).toBe("science/no-ratio-of-nothing");
    expect(reasonOf(comparePairs(pairs([[-1, 4]], 1), "blocks", RATIO))).toBe("science/no-ratio-of-nothing");
  });

  it("have no range with one or two, or when all differ by the same", () => {
    for (const sides of [
      [[3, 1]],
      [
        [3, 1],
        [4, 1],
      ],
    ] as const) {
      const few = reached(comparePairs(pairs(sides), "blocks", DIFFERENCE));
      expect(reasonOf(few.range)).toBe("science/too-few-to-compare");
      expect(few.word).toBe("cannot-tell-yet");
    }
    const same = reached(
      comparePairs(
        pairs([
          [0.3, 0.1],
          [0.4, 0.2],
          [0.9, 0.7],
        ]),
        "blocks",
        DIFFERENCE,
      ),
    );
    expect(reasonOf(same.range)).toBe("science/no-spread-seen");
    expect(reasonOf(same.plan.needed)).toBe("science/no-spread-seen");
    expect(same.value).toBeCloseTo(0.2, 12);
    expect(reasonOf(comparePairs([], "blocks", DIFFERENCE))).toBe("science/nothing-read");
    expect(reasonOf(comparePairs(pairs([[Number.NaN, 1]]), "blocks", DIFFERENCE))).toBe("science/no-number");
  });
});

describe("groups", () => {
  it("of one strip each always say that ground and treatment cannot be told apart", () => {
    const result = reached(
      compareGroups(seen([0.9, 0.8, 0.85]), seen([0.3, 0.2, 0.25]), "spots", DIFFERENCE),
    );
    expect(result.word).toBe("clearly-different");
    expect(codes(result)).toEqual(["science/ground-and-treatment", "science/range-if-lopsided"]);
    expect(result.sampledBy).toBe("spots");
  });

  it("of strips say what dealing out can reach", () => {
    const strips = (n: number) =>
      compareGroups(seen([9, 8, 7, 6].slice(0, n)), seen([2, 3, 4, 1].slice(0, n)), "strips", DIFFERENCE);
    const lopsided = "science/range-if-lopsided";
    expect(codes(reached(strips(3)))).toEqual(["science/too-few-strips-for-five-percent", lopsided]);
    expect(codes(reached(strips(4)))).toEqual([lopsided]);
    expect(reached(reached(strips(3)).permutation).chance).toBeCloseTo(0.1, 12);
    expect(reached(reached(strips(4)).rankSum).wins).toBe(16);
  });

  it("as ratios have geometric means", () => {
    const result = reached(compareGroups(seen([10, 40, 20]), seen([5, 5.5, 4.5]), "spots", RATIO));
    expect(result.means.a).toBeCloseTo(20, 9);
    expect(result.value).toBeCloseTo(20 / Math.cbrt(5 * 5.5 * 4.5), 9);
    expect(result.unit).toBe("1");
  });

  it("of holes say what few of them may miss, and that the least stands in", () => {
    const worms = (...values: number[]) => values.map((value) => ({ value, least: 1 }));
    const few = "science/few-holes-may-miss-patches";
    const said = (a: readonly number[], b: readonly number[]) =>
      codes(reached(compareGroups(worms(...a), worms(...b), "holes", RATIO)));
    expect(said([9, 8, 7], [4, 5, 3])).toEqual(["science/ground-and-treatment", few]);
    expect(said([9, 0, 7], [4, 5, 3])).toEqual([
      "science/ground-and-treatment",
      "science/least-stands-in",
      few,
    ]);
    // Without a range there is none to be wrong.
    expect(said([9, 8], [4, 5, 3])).toEqual(["science/ground-and-treatment"]);
    expect(reached(compareGroups(worms(9, 8, 7), worms(4, 5, 3), "holes", RATIO)).sampledBy).toBe("holes");
  });

  it("give reasons", () => {
    expect(reasonOf(compareGroups([], seen([1]), "spots", DIFFERENCE))).toBe("science/nothing-read");
    const equal = reached(compareGroups(seen([1, 1, 1]), seen([2, 2, 2]), "spots", DIFFERENCE));
    expect(reasonOf(equal.range)).toBe("science/no-spread-seen");
    expect(equal.word).toBe("cannot-tell-yet");
    expect(reasonOf(reached(compareGroups(seen([1, 2]), seen([2, 3, 4]), "spots", DIFFERENCE)).range)).toBe(
      "science/too-few-to-compare",
    );
  });
});

describe("counts", () => {
  it("turn the ratio when nothing was found in the second place", () => {
    const result = reached(
      compareCounts({ counts: [4, 5, 3], effortEach: 1 }, { counts: [0, 0, 0], effortEach: 1 }, 2),
    );
    expect(result).toMatchObject({ value: 0, turned: true });
    expect(reached(result.range)).toMatchObject({ lower: 0, sides: "upper-only" });
    expect(reached(result.range).upper).toBeLessThan(1);
    expect(codes(result)).toEqual([
      "science/ground-and-treatment",
      "science/ratio-turned",
      "science/few-worms-wide-range",
      "science/few-holes-may-miss-patches",
    ]);
  });

  it("in clumps are worth less", () => {
    const even = reached(
      compareCounts({ counts: [9, 9, 9, 9], effortEach: 1 }, { counts: [5, 5, 5, 5], effortEach: 1 }, 2),
    );
    const clumped = reached(
      compareCounts({ counts: [0, 27, 2, 7], effortEach: 1 }, { counts: [1, 12, 0, 7], effortEach: 1 }, 2),
    );
    expect(even.value).toBeCloseTo(clumped.value, 12);
    expect(reached(even.range).method).toBe("rate-ratio-exact");
    expect(reached(clumped.range).method).toBe("rate-ratio-scaled");
    expect(reached(clumped.range).upper).toBeGreaterThan(reached(even.range).upper);
    expect(reached(clumped.chance)).toBeGreaterThan(reached(even.chance));
  });

  it("say what few holes may miss, and when one place lies more unevenly than the other", () => {
    const said = (a: readonly number[], b: readonly number[]) =>
      codes(reached(compareCounts({ counts: a, effortEach: 1 }, { counts: b, effortEach: 1 }, 2))).slice(1);
    const ten = (low: number, high: number) => [...Array(5).fill(low), ...Array(5).fill(high)];
    const thirty = (low: number, high: number) => [...Array(15).fill(low), ...Array(15).fill(high)];
    const few = "science/few-holes-may-miss-patches";
    expect(said([9, 9, 8, 9], [5, 5, 4, 5])).toEqual([few]);
    expect(said(thirty(19, 21), thirty(9, 11))).toEqual([]);
    expect(said(ten(19, 21), ten(9, 11))).toEqual([few]);
    // Of 20, d = 8: s² = 71.1, √(s² − 20) = 7.15, 0.36 of the mean; d = 9: s² = 90, √70 = 8.37, 0.42 of it.
    expect(said(ten(12, 28), ten(9, 11))).toEqual([few]);
    expect(said(ten(11, 29), ten(9, 11))).toEqual([few, "science/range-if-lopsided"]);
    expect(said(ten(9, 11), ten(11, 29))).toEqual([few, "science/range-if-lopsided"]);
    // The other about as uneven: 10 of 20 on both.
    expect(said(ten(10, 30), ten(5, 15))).toEqual([few]);
    expect(said(ten(0, 1), ten(11, 29))).toContain("science/few-worms-wide-range");
  });

  it.each([
    [1, [9], [5]],
    [1, [90, 85, 95], [5]],
    [2, [90, 85], [5, 7, 6]],
    [2, [0, 0], [40, 50]],
  ] as const)("of %i holes in one place show the ratio and give no verdict", (has, a, b) => {
    const result = reached(compareCounts({ counts: a, effortEach: 1 }, { counts: b, effortEach: 1 }, 2));
    expect(result.word).toBe("cannot-tell-yet");
    for (const none of [result.range, result.likely, result.chance])
      expect(none).toEqual(failed("science/too-few-to-compare", { needs: 3, has }));
    const mean = (counts: readonly number[]) => counts.reduce((sum, one) => sum + one, 0) / counts.length;
    expect(result.value).toBeCloseTo(mean(a) / mean(b), 12);
  });

  it("of three holes each are enough", () => {
    const result = reached(
      compareCounts({ counts: [30, 29, 31], effortEach: 1 }, { counts: [5, 7, 6], effortEach: 1 }, 2),
    );
    expect(result.word).toBe("clearly-different");
  });

  it("say how many holes would show the worthwhile ratio", () => {
    const few = reached(
      compareCounts({ counts: [3, 4, 2, 3], effortEach: 1 }, { counts: [3, 2, 4, 3], effortEach: 1 }, 2),
    );
    expect(few.word).toBe("cannot-tell-yet");
    // By hand: s² = 9/(8·3) = 0.375; (1.96 + 0.8416)²·2·0.375/ln²2 = 12.3, and one or two more for Student's t.
    expect(reached(few.plan.needed).middle).toBeGreaterThanOrEqual(13);
    expect(reached(few.plan.needed).middle).toBeLessThanOrEqual(14);
    expect(few.methods).toContain("counts-needed");
    const clumped = reached(
      compareCounts({ counts: [0, 9, 1, 2], effortEach: 1 }, { counts: [8, 0, 0, 4], effortEach: 1 }, 2),
    );
    expect(reached(clumped.plan.needed).middle).toBeGreaterThan(reached(few.plan.needed).middle * 2);
    for (const worthwhile of [1, 0, -1, Number.NaN])
      expect(
        reasonOf(
          reached(
            compareCounts(
              { counts: [3, 4, 2], effortEach: 1 },
              { counts: [3, 2, 4], effortEach: 1 },
              worthwhile,
            ),
          ).plan.needed,
        ),
      ).toBe("science/no-worthwhile-difference");
  });

  it("by the area of holes of unlike size", () => {
    const result = reached(
      compareCounts({ counts: [8, 8], effortEach: 0.04 }, { counts: [18, 18], effortEach: 0.09 }, 2),
    );
    expect(result.value).toBeCloseTo(1, 12);
  });

  it("give reasons", () => {
    expect(reasonOf(compareCounts({ counts: [0], effortEach: 1 }, { counts: [0], effortEach: 1 }, 2))).toBe(
      "science/nothing-in-either",
    );
    expect(reasonOf(compareCounts({ counts: [], effortEach: 1 }, { counts: [1], effortEach: 1 }, 2))).toBe(
      "science/no-number",
    );
  });
});

describe("blocks", () => {
  const table = [
    { label: "none", blocks: seen([2.1, 2.8, 2.7, 2.9]) },
    { label: "60", blocks: seen([4.9, 4.6, 4.6, 5.0]) },
    { label: "90", blocks: seen([5.3, 5.2, 5.1, 6.1]) },
  ];

  it("look at every two with a level raised for their number", () => {
    const result = reached(compareBlocks(table, DIFFERENCE));
    expect(result.twos.map(({ first, second, word }) => [first, second, word])).toEqual([
      ["none", "60", "clearly-different"],
      ["none", "90", "clearly-different"],
      ["60", "90", "probably-different"],
    ]);
    expect(result).toMatchObject({ n: 4, sampledBy: "blocks" });
    const half = (reached(result.twos[0]?.range ?? failed("science/nothing-read")).upper -
      (result.twos[0]?.value ?? 0)) as number;
    expect(half).toBeGreaterThan(result.leastSignificant);
  });

  it("say how many blocks would show the worthwhile difference between any two", () => {
    const { plan } = reached(compareBlocks(table, { ...DIFFERENCE, worthwhile: 0.5 }));
    expect(plan).toMatchObject({ design: { treatments: 3 }, worthwhile: 0.5 });
    const { low, middle, high } = reached(plan.needed);
    expect(low).toBeLessThanOrEqual(middle);
    expect(middle).toBeLessThanOrEqual(high);
    expect(middle).toBeGreaterThan(4);
    expect(reached(plan.power)).toBeLessThan(0.8);
    expect(reached(plan.smallestVisible)).toBeGreaterThan(0.5);
    // Of two treatments a block is a pair: the rest is half as wide as the differences are.
    const two = reached(compareBlocks(table.slice(0, 2), { ...DIFFERENCE, worthwhile: 0.5 })).plan;
    const same = reached(
      comparePairs(
        pairs([
          [2.1, 4.9],
          [2.8, 4.6],
          [2.7, 4.6],
          [2.9, 5.0],
        ]),
        "blocks",
        { ...DIFFERENCE, worthwhile: 0.5 },
      ),
    ).plan;
    expect(reached(two.power)).toBeCloseTo(reached(same.power), 9);
    expect(reached(two.needed)).toEqual(reached(same.needed));
    expect(reasonOf(reached(compareBlocks(table, { ...DIFFERENCE, worthwhile: 0 })).plan.needed)).toBe(
      "science/no-worthwhile-difference",
    );
  });

  it("of two treatments are the pairs", () => {
    const two = reached(compareBlocks(table.slice(0, 2), DIFFERENCE));
    const same = reached(
      comparePairs(
        pairs([
          [2.1, 4.9],
          [2.8, 4.6],
          [2.7, 4.6],
          [2.9, 5.0],
        ]),
        "blocks",
        DIFFERENCE,
      ),
    );
    expect(two.twos[0]?.value).toBeCloseTo(same.value, 12);
    expect(two.table.chance).toBeCloseTo(reached(same.chance), 9);
    expect(two.twos[0]?.range.ok).toBe(true);
    if (two.twos[0]?.range.ok)
      expect(two.twos[0].range.value.lower).toBeCloseTo(reached(same.range).lower, 9);
  });

  it("as ratios", () => {
    const doubled = table.map(({ label, blocks }) => ({
      label,
      blocks: blocks.map(({ value }) => ({ value: 2 * value, least: null })),
    }));
    const [one, two] = [reached(compareBlocks(table, RATIO)), reached(compareBlocks(doubled, RATIO))];
    expect(one.twos.map(({ value }) => value.toFixed(9))).toEqual(
      two.twos.map(({ value }) => value.toFixed(9)),
    );
    expect(one.leastSignificant).toBeGreaterThan(1);
  });

  it("give reasons", () => {
    expect(reasonOf(compareBlocks([], DIFFERENCE))).toBe("science/too-few-treatments");
    expect(
      reasonOf(
        compareBlocks(
          [
            { label: "a", blocks: seen([1, 0]) },
            { label: "b", blocks: seen([1, 2]) },
          ],
          RATIO,
        ),
      ),
    ).toBe("science/no-ratio-of-nothing");
  });
});

describe("plan", () => {
  it("is a band around the middle, and more for less", () => {
    const spread = { spread: 0.1, degreesOfFreedom: 3, n: 4 };
    const { needed, power, smallestVisible } = planFor(spread, 0.1, "pairs", "difference");
    const { low, middle, high } = reached(needed);
    expect(low).toBeLessThanOrEqual(middle);
    expect(middle).toBeLessThanOrEqual(high);
    expect(reached(planFor(spread, 0.05, "pairs", "difference").needed).middle).toBeGreaterThan(middle);
    expect(reached(power)).toBeLessThan(0.8);
    expect(reached(smallestVisible)).toBeGreaterThan(0.1);
  });

  it.each([0, -1, 1, Number.NaN])("is none for a ratio of %d", (worthwhile) => {
    const plan = planFor({ spread: 0.5, degreesOfFreedom: 5, n: 6 }, worthwhile, "pairs", "ratio");
    expect(reasonOf(plan.needed)).toBe("science/no-worthwhile-difference");
    expect(reasonOf(plan.power)).toBe("science/no-worthwhile-difference");
  });

  it("holds the high end to what is planned for", () => {
    const plan = planFor({ spread: 1, degreesOfFreedom: 2, n: 3 }, 0.1, "pairs", "difference");
    expect(reached(plan.needed)).toMatchObject({ high: 1000 });
    expect(
      reasonOf(planFor({ spread: 1, degreesOfFreedom: 2, n: 3 }, 0.01, "pairs", "difference").needed),
    ).toBe("science/too-many-samples");
  });
});

describe("spots of strips", () => {
  it("become one number a strip, with what they are worth", () => {
    const result = reached(
      meansOfStrips(
        [
          { label: "a", spots: seen([12, 13, 11]) },
          { label: "b", spots: seen([9, 8, 10]) },
          { label: "c", spots: seen([15, 14, 16]) },
          { label: "empty", spots: [] },
        ],
        "difference",
      ),
    );
    expect(result.strips.map(({ value }) => value)).toEqual([12, 9, 15]);
    expect(result.cautions).toEqual([
      { code: "science/spots-are-sub-samples", facts: { spots: 9, strips: 3, worth: 3 } },
    ]);
  });

  it("give reasons", () => {
    expect(reasonOf(meansOfStrips([], "difference"))).toBe("science/nothing-read");
    expect(reasonOf(meansOfStrips([{ label: "a", spots: seen([0]) }], "ratio"))).toBe(
      "science/no-ratio-of-nothing",
    );
  });
});
