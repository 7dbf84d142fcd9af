/** From hours, hands and litres to numbers of lines, holes and rings. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  HOLE_MINUTES,
  LINE_MINUTES,
  LONGEST_DAY_H,
  MOST_RINGS,
  RING_HANDS_MINUTES,
  RING_RUN_MINUTES,
  WALK_MINUTES,
} from "../constants/plans.ts";
import { GIVE_OR_TAKE, MOST_HOLES, SAMPLES_FOR_A_RANGE, WORMS_GIVE_OR_TAKE } from "../constants.ts";
import { holesInAll } from "../earthworms/holes-needed.ts";
import type { Caution, Worked } from "../estimate.ts";
import { linesNeeded } from "../ground-cover/lines-needed.ts";
import { type SmallestRatio, smallestRatio } from "../infiltration/smallest-ratio.ts";
import { sourcesOf } from "../methods.ts";
import { holesShow, linesShow, plannedHoleSpread, type Shows } from "./day-shows.ts";

/** The three tests that a day is shared among. */
export type DayTest = "lines" | "holes" | "rings";

/** What there is. */
export interface DayMeans {
  readonly hours: number;
  readonly people: number;
  readonly litres: number;
  readonly strips: number;
  /** Rings that can run at the same time. */
  readonly ringsAtHand: number;
}

/** What a test takes. */
export interface TestCosts {
  /** Minutes of one person. */
  readonly lineMinutes: number;
  readonly holeMinutes: number;
  readonly ringHandsMinutes: number;
  /** Minutes on the clock that a ring runs by itself. */
  readonly ringRunMinutes: number;
  /** Minutes on foot to each test. */
  readonly walkMinutes: number;
  /** As from `litresNeeded`. */
  readonly litresPerRing: number;
  readonly marksPerLine: number;
  readonly holeAreaM2: number;
}

/** Minutes before anybody timed their own; common practice, each to be changed by the person. */
export const USUAL_MINUTES = {
  lineMinutes: LINE_MINUTES,
  holeMinutes: HOLE_MINUTES,
  ringHandsMinutes: RING_HANDS_MINUTES,
  ringRunMinutes: RING_RUN_MINUTES,
  walkMinutes: WALK_MINUTES,
} as const satisfies Partial<TestCosts>;

export interface DayPlan extends Worked {
  readonly perStrip: Readonly<Record<DayTest, number>>;
  /** Work of all people together. */
  readonly handMinutes: number;
  readonly handMinutesLeft: number;
  readonly litres: number;
  /** What keeps more rings from running; null when rings were not wanted or there are as many as are asked for. */
  readonly ringsHeldBy: "water" | "rings-at-hand" | "hands" | null;
  /** Null for a test that was not wanted. */
  readonly shows: {
    readonly lines: Result<Shows> | null;
    readonly holes: Result<Shows> | null;
    readonly rings: Result<SmallestRatio> | null;
  };
}

const whole = (value: number, least: number): boolean => Number.isSafeInteger(value) && value >= least;
const amount = (value: number): boolean => value >= 0 && Number.isFinite(value);

const goodDay = (means: DayMeans, costs: TestCosts, wanted: readonly DayTest[]): Result<null> => {
  if (!(amount(means.hours) && means.hours <= LONGEST_DAY_H))
    return failed("science/not-a-day", { most: LONGEST_DAY_H });
  if (!(whole(means.people, 1) && whole(means.strips, 1) && whole(means.ringsAtHand, 0)))
    return failed("science/not-a-count");
  if (!amount(means.litres)) return failed("science/no-number");
  const { lineMinutes, holeMinutes, ringHandsMinutes, ringRunMinutes, walkMinutes, litresPerRing } = costs;
  const minutes = [lineMinutes, holeMinutes, ringHandsMinutes, ringRunMinutes];
  if (!(minutes.every((each) => amount(each) && each > 0) && amount(walkMinutes)))
    return failed("science/not-minutes");
  if (!(litresPerRing > 0 && Number.isFinite(litresPerRing))) return failed("science/no-number");
  return wanted.length === 0 ? failed("science/nothing-wanted") : ok(null);
};

/** The most of each test on a strip: enough for the usual give or take, and for rings what water and kit allow. */
const mostOf = (
  means: DayMeans,
  costs: TestCosts,
): Result<Record<DayTest, number> & { readonly kit: number; readonly water: number }> => {
  const lines = linesNeeded(
    [],
    "residue",
    { stoneCounts: false },
    { giveOrTake: GIVE_OR_TAKE, marksPerLine: costs.marksPerLine },
  );
  if (!lines.ok) return lines;
  const spread = plannedHoleSpread(costs.holeAreaM2);
  if (!spread.ok) return spread;
  const holes = holesInAll(spread.value, WORMS_GIVE_OR_TAKE);
  if (!holes.ok) return holes;
  const rounds = Math.floor((60 * means.hours) / (costs.ringHandsMinutes + costs.ringRunMinutes));
  const kit = Math.floor((rounds * means.ringsAtHand) / means.strips);
  const water = Math.floor(means.litres / costs.litresPerRing / means.strips);
  return ok({
    lines: lines.value.more.middle,
    holes: holes.value ?? MOST_HOLES,
    rings: Math.min(MOST_RINGS, kit, water),
    kit,
    water,
  });
};

/**
 * How many lines, holes and rings fit into a day, the same number on every strip. First each wanted test gets
 * the three that a range needs, in the order wanted, if all three fit; then one of each in turn is added until
 * the hands have no time left, or there are enough: lines for give or take 5 points, holes for a quarter of the
 * mean, ten rings. Rings run by themselves while lines are counted and holes dug; how many run is held by water,
 * by the rings at hand times the rounds that fit into the hours, and by the hands that set them.
 *
 * @param wanted tests, the most wanted first; repeated ones count once
 * @returns numbers per strip and what they can show with the spreads planned with; `science/too-few-for-a-range`
 * as a caution for each test that stays below three; `science/not-a-day` for hours below 0, above 24 or not
 * finite, `science/not-a-count`, `science/not-minutes`, `science/no-number`, `science/nothing-wanted`, reasons as
 * `linesNeeded`. No hours give a plan of nothing, with its cautions.
 *
 * Source: minutes are common practice; spreads as `linesNeeded`, `holesNeeded`, `smallestRatio`; the sharing is a
 * rule of this product.
 *
 * @example
 * const means = { hours: 6, people: 2, litres: 60, strips: 2, ringsAtHand: 4 };
 * const costs = { ...USUAL_MINUTES, litresPerRing: 2, marksPerLine: 100, holeAreaM2: 0.04 };
 * dayPlan(means, costs, ["rings", "lines", "holes"]).value.perStrip // => { lines: 7, holes: 7, rings: 7 }
 */
export const dayPlan = (means: DayMeans, costs: TestCosts, wanted: readonly DayTest[]): Result<DayPlan> => {
  const tests = [...new Set(wanted)];
  const good = goodDay(means, costs, tests);
  if (!good.ok) return good;
  const most = mostOf(means, costs);
  if (!most.ok) return most;
  const minutes: Readonly<Record<DayTest, number>> = {
    lines: means.strips * (costs.lineMinutes + costs.walkMinutes),
    holes: means.strips * (costs.holeMinutes + costs.walkMinutes),
    rings: means.strips * (costs.ringHandsMinutes + costs.walkMinutes),
  };
  const perStrip = { lines: 0, holes: 0, rings: 0 };
  const all = 60 * means.hours * means.people;
  let left = all;
  const add = (test: DayTest, number: number): boolean => {
    // A thousandth of a minute is rounding, not time.
    if (perStrip[test] + number > most.value[test] || number * minutes[test] > left + 0.001) return false;
    perStrip[test] += number;
    left -= number * minutes[test];
    return true;
  };
  for (const test of tests) add(test, SAMPLES_FOR_A_RANGE);
  for (let added = true; added; ) {
    added = false;
    for (const test of tests) if (add(test, 1)) added = true;
  }
  const cautions: Caution[] = tests
    .filter((test) => perStrip[test] < SAMPLES_FOR_A_RANGE)
    .map((test) => ({
      code: "science/too-few-for-a-range",
      facts: { test, has: perStrip[test], needs: SAMPLES_FOR_A_RANGE },
    }));
  const { rings, kit, water } = most.value;
  const full = perStrip.rings >= MOST_RINGS || !tests.includes("rings");
  const heldBy = perStrip.rings < rings ? "hands" : water < kit ? "water" : "rings-at-hand";
  return ok({
    perStrip,
    handMinutes: all - left,
    handMinutesLeft: Math.max(0, left),
    litres: perStrip.rings * means.strips * costs.litresPerRing,
    ringsHeldBy: full ? null : heldBy,
    shows: {
      lines: tests.includes("lines") ? linesShow(perStrip.lines, costs.marksPerLine) : null,
      holes: tests.includes("holes") ? holesShow(perStrip.holes, costs.holeAreaM2) : null,
      rings: tests.includes("rings") ? smallestRatio(perStrip.rings) : null,
    },
    n: means.strips,
    sampledBy: "strips",
    cautions,
    methods: ["day-plan", "lines-needed", "holes-needed", "smallest-ratio"],
    sources: sourcesOf(["day-plan", "lines-needed", "holes-needed", "smallest-ratio"]),
  });
};
