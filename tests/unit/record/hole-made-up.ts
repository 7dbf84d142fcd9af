/** Made-up spade holes and short ways to play touches on them. */
import { applyCommand } from "../../../src/record/command/apply.ts";
import type { Draft, Moment } from "../../../src/record/command/command.ts";
import type { Layer, WormGroup } from "../../../src/record/hole/entries.ts";
import { type HoleReading, readHole } from "../../../src/record/hole/reading.ts";
import type { HoleHeader } from "../../../src/record/kinds/observation.ts";
import type { RecordState } from "../../../src/record/record.ts";
import { got, idOf, LINE, NOON_MS, play, sign, touch } from "./made-up.ts";

export const holeBody: HoleHeader = {
  type: "hole",
  visit: idOf("visit", 1),
  field: idOf("field", 1),
  strip: idOf("strip", 1),
  place: null,
  person: null,
  startedAtMs: NOON_MS,
  template: null,
  sidesM: [0.2, 0.2],
  depthM: 0.2,
  method: null,
  landUse: null,
  minutes: 5,
  mustardMin: null,
  at: { position: null, why: "not-asked" },
  number: 1,
};

/** What a person does at a hole. */
export type HoleDoing = Draft | "undo" | "redo";

export const dug = (): RecordState =>
  play(undefined, { op: "write", id: LINE, by: sign(1), body: JSON.parse(JSON.stringify(holeBody)) });

/** One thing at a moment; a refusal ends the test. */
export const doAt = (record: RecordState, what: HoleDoing, at: Moment): RecordState =>
  got(
    applyCommand(
      record,
      typeof what === "string"
        ? { op: what, id: LINE, at }
        : { op: "append", id: LINE, frame: null, at, draft: what },
    ),
  ).record;

/** One thing after another on one phone, a second apart. */
export const did = (record: RecordState, things: readonly HoleDoing[], phone = 1): RecordState =>
  things.reduce((now, what, at) => doAt(now, what, touch(record.entries.length + at + 1, phone)), record);

export const readOf = (record: RecordState): HoleReading => readHole(record.entries);

export const worm = (from: Layer = "soil"): Draft => ({ type: "worm", from });
export const worms = (count: number, from: Layer = "soil"): Draft[] =>
  Array.from({ length: count }, () => worm(from));
export const put = (group: WormGroup): Draft => ({ type: "placed", group });
export const found = (count: number, from: Layer = "soil", replaces?: readonly string[]): Draft => ({
  type: "found",
  from,
  count,
  typed: String(count),
  ...(replaces === undefined || replaces.length === 0 ? {} : { replaces: [...replaces] }),
});
export const sorted = (count: number, group: WormGroup, replaces?: readonly string[]): Draft => ({
  type: "sorted",
  group,
  count,
  typed: String(count),
  ...(replaces === undefined || replaces.length === 0 ? {} : { replaces: [...replaces] }),
});
export const sorting = (people: number, from: Layer = "soil"): Draft => ({ type: "sorting", people, from });
