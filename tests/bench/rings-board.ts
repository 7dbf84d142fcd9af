/** A board of the day with many rings that run, laid into the database of the app. */
import type { RecordId } from "../../src/record/ids.ts";
import { href } from "../../src/screens/parts/route.ts";
import { beginSample, fieldOf, type Rows } from "./seed.ts";
import { entriesAt, levelAt, ringOf, startAt } from "./seed-rings.ts";

const MINUTE_MS = 60_000;
const LETTERS = "ABCDEFGHIJKL";

export interface BoardSample {
  readonly rows: Rows;
  /** The address of the board. */
  readonly board: string;
  /** Letters of its rings. */
  readonly letters: readonly string[];
}

/** The local day, as a visit keeps it. */
const dayOf = (wallMs: number): string => {
  const now = new Date(wallMs);
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** Depth of the water at a reading: it falls with the root of time and is filled up at every fifth reading. */
const levels = (count: number) =>
  Array.from({ length: count }, (_, at): readonly [number, ReturnType<typeof levelAt>] => [
    at * 5,
    levelAt(Math.round(100 - 8 * Math.sqrt((at % 5) + 1)), at > 0 && at % 5 === 0),
  ]);

/**
 * Rings that run, begun one minute after the other, each read every five minutes.
 *
 * @param wallMs now
 * @param rings at most twelve
 * @param readings of each ring, the first one at its start
 */
export const boardSample = (wallMs: number, rings: number, readings: number): BoardSample => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day: dayOf(wallMs), harvestYear: null });
  const strips: RecordId<"strip">[] = ["straw left", "straw off"].map((name) =>
    add("strip", { field, name, done: [], wholeField: false, rep: null }),
  );
  const letters = [...LETTERS].slice(0, rings);
  // The last reading of the last ring lies a minute back.
  const firstMs = wallMs - ((readings - 1) * 5 + rings + 1) * MINUTE_MS;
  for (const [at, name] of letters.entries()) {
    const ring = add("kit", { type: "ring", name, insideM: [0.3, 0.302], heightsM: [0.25], outsideM: null });
    const strip = strips[at % strips.length];
    if (strip === undefined) continue;
    const startedAtMs = firstMs + at * MINUTE_MS;
    add(
      "observation",
      ringOf(
        { visit, field, strip, ring },
        { startedAtMs, planMin: Array.from({ length: 60 }, (_, n) => 5 * (n + 1)) },
      ),
      { entries: entriesAt([[0, startAt], ...levels(readings)], startedAtMs, name.toLowerCase()) },
    );
  }
  return { rows: rows(), board: href({ at: "rings", visit }), letters };
};
