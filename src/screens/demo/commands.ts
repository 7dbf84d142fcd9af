/** All commands that write the example farm, the same for the same round, moment and words. */
import type { Command } from "../../record/command/command.ts";
import type { DemoRound } from "../../record/demo-ids.ts";
import type { RecordId } from "../../record/ids.ts";
import { events, guesses, onPaper, rain } from "./around.ts";
import { demoPen } from "./demo-pen.ts";
import { layFarm, layPiece, layQuarter } from "./lay-out.ts";
import { scatterFrom } from "./scatter.ts";
import { type Season, seasonOfPiece, seasonOfQuarter } from "./seasons.ts";
import { today } from "./today.ts";
import type { FarmWords } from "./words.farm.ts";

/** Which example farm this app brings in; to be raised whenever what is in it changes. */
export const DEMO_EDITION = 3;

/** The seed with which the farm tells its three stories; the tests run the science over it. */
export const DEMO_SEED = 7;

const DAY_MS = 86_400_000;
/** A year in whole weeks, so that visits fall on the same day of the week and in the same season. */
const YEAR_MS = 364 * DAY_MS;

/** The year of the harvest that a day belongs to; from September on it is the next one. */
const harvestYearOf = (atMs: number): number => {
  const date = new Date(atMs);
  return date.getFullYear() + Number(date.getMonth() >= 8);
};

/** Half past seven of that day, by the clock of this device. */
const morningOf = (atMs: number): number => new Date(atMs).setHours(7, 30, 0, 0);

const seasonsBefore = (nowMs: number, daysAgo: number): readonly Season[] =>
  [2, 1, 0].map((yearsAgo) => ({
    atMs: morningOf(nowMs - daysAgo * DAY_MS - yearsAgo * YEAR_MS),
    harvestYear: harvestYearOf(nowMs) - yearsAgo,
    yearsAgo,
  }));

/** What a demo farm is made from. */
export interface DemoWanted {
  readonly round: DemoRound;
  readonly nowMs: number;
  readonly words: FarmWords;
  readonly seed?: number;
}

/** Steps in which the farm is written, for showing how far it has come. */
export const DEMO_STEPS = 38;

/**
 * The commands, step by step, so that no step takes long to work out.
 *
 * @example
 * for (const step of demoCommands({ round, nowMs, words })) await house.write(...step);
 */
export function* demoCommands({
  round,
  nowMs,
  words,
  seed = DEMO_SEED,
}: DemoWanted): Generator<readonly Command[]> {
  const pen = demoPen(round, nowMs);
  const scatter = scatterFrom(seed);
  const at = { nowMs, harvestYear: harvestYearOf(nowMs) };
  const beganMs = nowMs - 3 * YEAR_MS;
  const { farm, kit } = layFarm(pen, words, nowMs, beganMs);
  const hand = { pen, scatter, kit };
  const piece = layPiece(pen, words, farm, beganMs);
  yield pen.take();
  const quarter = layQuarter(pen, words, farm, beganMs);
  yield pen.take();
  events(pen, words, { piece, quarter }, at);
  yield pen.take();
  rain(pen, scatter, piece.id, nowMs);
  yield pen.take();
  for (const season of seasonsBefore(nowMs, 10)) {
    let visit: RecordId<"visit"> | undefined;
    for (const _ of seasonOfPiece(hand, words, piece, season)) {
      const step = pen.take();
      visit ??= step.find(({ id }) => id.startsWith("visit-"))?.id as RecordId<"visit"> | undefined;
      yield step;
    }
    if (season.yearsAgo === 0 && visit !== undefined) guesses(pen, piece, visit, season.atMs);
  }
  for (const season of seasonsBefore(nowMs, 9))
    for (const _ of seasonOfQuarter(hand, words, quarter, season)) yield pen.take();
  today(hand, words, piece, at);
  pen.seal(onPaper(words, piece, at.harvestYear), nowMs);
  yield pen.take();
}
