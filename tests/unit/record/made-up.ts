/** Made-up records and short ways to play commands on them. */
import type { Json } from "../../../src/record/canonical.ts";
import { type Applied, applyCommand } from "../../../src/record/command/apply.ts";
import type { Command, Draft, Moment, Signature } from "../../../src/record/command/command.ts";
import type { Cover, Entry } from "../../../src/record/entry.ts";
import type { Kind, RecordId } from "../../../src/record/ids.ts";
import type { Way } from "../../../src/record/kinds/observation.ts";
import { type LineFrame, type LineReading, readLine } from "../../../src/record/line/reading.ts";
import { arranged, type RecordState } from "../../../src/record/record.ts";
import type { Result } from "../../../src/record/result.ts";

export const hex = (n: number, digits = 16): string => n.toString(16).padStart(digits, "0");
export const idOf = <K extends Kind>(kind: K, n: number): RecordId<K> => `${kind}-${hex(n, 32)}`;

export const LINE = idOf("observation", 1);
export const NOON_MS = 1_700_000_000_000;

/** A touch: the n-th of one phone. */
export const touch = (n: number, phone = 1): Moment => ({
  id: hex(phone * 2 ** 32 + n),
  lookedAtMs: NOON_MS + n * 1000,
  enteredAtMs: NOON_MS + n * 1000,
  monoMs: n * 1000.5,
  page: hex(phone + 100),
  device: hex(phone),
  by: null,
});

/** A signature: the n-th revision that an actor makes. */
export const sign = (n: number, actor = 1, wallMs = NOON_MS + n * 1000): Signature => ({
  rev: hex(actor * 2 ** 32 + n),
  actor: hex(actor),
  n,
  stamp: { wallMs, counter: n, device: hex(actor) },
  author: null,
});

const unknown = { position: null, why: "not-asked" } as const;
export const lineBody = (way: Way = "mark-by-mark"): { readonly [key: string]: Json } => ({
  type: "line",
  visit: idOf("visit", 1),
  field: idOf("field", 1),
  strip: idOf("strip", 1),
  rope: idOf("kit", 1),
  way,
  angleToRowsDeg: 45,
  rowSpacingM: null,
  passWidthM: null,
  place: null,
  start: unknown,
  end: unknown,
  person: null,
  fifthKey: null,
  askThickness: false,
  startedAtMs: NOON_MS,
});

/** What a command gave; a refusal fails the test. */
export const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`refused: ${result.problem.code} ${JSON.stringify(result.problem.facts)}`);
  return result.value;
};
/** The code of a refusal, or "done". */
export const codeOf = (result: Result<unknown>): string => (result.ok ? "done" : result.problem.code);

export const play = (record: RecordState | undefined, command: Command): RecordState =>
  got(applyCommand(record, command)).record;

export const begun = (way: Way = "mark-by-mark"): RecordState =>
  play(undefined, { op: "write", id: LINE, by: sign(1), body: lineBody(way) });

export const mark = (number: number | "next", cover: Cover): Draft => ({ type: "mark", mark: number, cover });

/** What a person does on a line. */
export type Doing = Draft | "undo" | "redo";

export const doing = (record: RecordState, what: Doing, frame: LineFrame, at: Moment): Result<Applied> =>
  applyCommand(
    record,
    typeof what === "string"
      ? { op: what, id: LINE, at }
      : { op: "append", id: LINE, frame, at, draft: what },
  );

/** Does one thing after another on one phone. */
export const counted = (
  record: RecordState,
  frame: LineFrame,
  things: readonly Doing[],
  phone = 1,
): RecordState => {
  const from = record.entries.length;
  return things.reduce<RecordState>(
    (now, what, at) => got(doing(now, what, frame, touch(from + at + 1, phone))).record,
    record,
  );
};

/** Both phones' entries, as bringing files together leaves them. */
export const union = (a: RecordState, b: RecordState): RecordState => {
  const entries = new Map<string, Entry>([...a.entries, ...b.entries].map((one) => [one.id, one]));
  return arranged({ ...a, entries: [...entries.values()] });
};

export const TEN: LineFrame = { way: "mark-by-mark", ropeMarks: 10 };
export const read = (record: RecordState, frame: LineFrame = TEN): LineReading =>
  readLine(record.entries, frame);

/** The covers as a row of first letters, `?` for two answers, `.` for not read. */
export const row = (reading: LineReading): string => {
  const highest = Math.max(0, ...reading.marks.keys());
  return Array.from({ length: highest }, (_, at) => {
    const one = reading.marks.get(at + 1);
    if (one === undefined) return ".";
    return one.answers.length > 1 ? "?" : one.cover.slice(0, 1);
  }).join("");
};
