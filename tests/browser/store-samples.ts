/** Commands and helpers for the tests of the store: invented values, ids that count up. */
import type { Append, Command, Moment, Signature, Step, Write } from "../../src/record/command/command.ts";
import type { RecordId } from "../../src/record/ids.ts";
import type { Result } from "../../src/record/result.ts";
import type { Notice } from "../../src/store/notice.ts";

let counted = 0;
const hex = (digits: number): string => {
  counted++;
  return counted.toString(16).padStart(digits, "0");
};

/** A short id of this run; `actor` keeps several windows apart. */
export const shortId = (actor = "0"): string => actor + hex(16 - actor.length);

/** A database name that no other test uses. */
export const freshName = (): string => `store-test-${crypto.randomUUID()}`;

export const signature = (wallMs = 1_700_000_000_000): Signature => {
  const rev = shortId();
  return {
    rev,
    actor: "a".repeat(16),
    n: counted,
    stamp: { wallMs, counter: 0, device: "d".repeat(16) },
    author: null,
  };
};

export const newId = <
  K extends "field" | "guess" | "strip" | "visit" | "observation" | "kit" | "person" | "photo" | "join",
>(
  kind: K,
): RecordId<K> => `${kind}-${hex(32)}`;

export const write = (id: RecordId, body: Write["body"], wallMs?: number): Command => ({
  op: "write",
  id,
  by: signature(wallMs),
  body,
});

export const fieldBody = (name: string): Write["body"] => ({
  name,
  farm: null,
  boundary: null,
  rowDirectionDeg: null,
  soilTexture: null,
  harvestCrop: null,
});

/** A line in a field, and what it stands on. */
export interface SampleLine {
  readonly field: RecordId<"field">;
  readonly strip: RecordId<"strip">;
  readonly visit: RecordId<"visit">;
  readonly line: RecordId<"observation">;
}

export const sampleLine = (): SampleLine => ({
  field: newId("field"),
  strip: newId("strip"),
  visit: newId("visit"),
  line: newId("observation"),
});

const NOWHERE = { position: null, why: "not-asked" } as const;

export const lineBody = ({ field, strip, visit }: SampleLine, startedAtMs = 0): Write["body"] => ({
  type: "line",
  visit,
  field,
  strip,
  rope: `kit-${"0".repeat(32)}`,
  way: "mark-by-mark",
  angleToRowsDeg: 90,
  place: null,
  start: NOWHERE,
  end: NOWHERE,
  person: null,
  fifthKey: null,
  askThickness: false,
  rowSpacingM: null,
  passWidthM: null,
  startedAtMs,
});

export const lineCommands = (sample: SampleLine): Command[] => [
  write(sample.field, fieldBody("Long Field")),
  write(sample.strip, { field: sample.field, name: "A", done: [], wholeField: true, rep: null }),
  write(sample.visit, { field: sample.field, day: "2026-04-01", harvestYear: null }),
  write(sample.line, lineBody(sample)),
];

export const moment = (actor?: string): Moment => ({
  id: shortId(actor),
  lookedAtMs: 1_700_000_000_000,
  enteredAtMs: 1_700_000_000_000,
  monoMs: 1000,
  page: "b".repeat(16),
  device: "d".repeat(16),
  by: null,
});

export const FRAME = { way: "mark-by-mark", ropeMarks: 10_000 } as const;

export const mark = (id: RecordId<"observation">, cover: "residue" | "bare", actor?: string): Append => ({
  op: "append",
  id,
  frame: FRAME,
  at: moment(actor),
  draft: { type: "mark", mark: "next", cover },
});

export const undo = (id: RecordId<"observation">): Step => ({ op: "undo", id, at: moment() });

/** The value, or an error that names the problem. */
export const need = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`${result.problem.code} ${JSON.stringify(result.problem.facts)}`);
  return result.value;
};

/** Collects what the store says. */
export const listening = (): { readonly said: Notice[]; readonly tell: (notice: Notice) => void } => {
  const said: Notice[] = [];
  return { said, tell: (notice) => void said.push(notice) };
};

/** Waits until something is so, and fails after a while. */
export const until = async (isSo: () => boolean, withinMs = 15_000): Promise<void> => {
  const end = performance.now() + withinMs;
  while (!isSo()) {
    if (performance.now() > end) throw new Error("did not come to be so in time");
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
};
