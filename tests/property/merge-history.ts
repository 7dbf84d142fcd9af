/** Random histories of five devices, played with the product's own commands and its own merge. */
import { mergeAll, type Records } from "../../src/exchange/merge/merge.ts";
import type { Json } from "../../src/record/canonical.ts";
import { applyCommand } from "../../src/record/command/apply.ts";
import type { Command, Moment, Signature } from "../../src/record/command/command.ts";
import { COVERS } from "../../src/record/entry.ts";
import type { RecordId } from "../../src/record/ids.ts";
import type { LineFrame } from "../../src/record/line/reading.ts";
import { shown } from "../../src/record/record.ts";

const hex = (n: number, digits: number): string => n.toString(16).padStart(digits, "0");
const id = <K extends "farm" | "person" | "observation" | "visit" | "field" | "strip" | "spot" | "kit">(
  kind: K,
  n: number,
): RecordId<K> => `${kind}-${hex(n, 32)}`;

/** The records that the devices work on: two with a name, one line. */
const farms = [id("farm", 1), id("farm", 2)] as const;
const line = id("observation", 3);
const frame: LineFrame = { way: "mark-by-mark", ropeMarks: 6 };
const notThere = { position: null, why: "denied" } as const;
const lineBody: Readonly<Record<string, Json>> = {
  type: "line",
  visit: id("visit", 4),
  field: id("field", 5),
  strip: id("strip", 6),
  rope: id("kit", 7),
  way: "mark-by-mark",
  angleToRowsDeg: null,
  place: null,
  start: notThere,
  end: notThere,
  person: null,
  fifthKey: null,
  askThickness: false,
  rowSpacingM: null,
  passWidthM: null,
  startedAtMs: 0,
};

/** Often used steps stand here more than once. */
const OPS = [
  ...["edit", "edit", "edit", "edit", "edit", "append", "append", "append", "append", "correct"],
  ...[
    "undo",
    "redo",
    "delete",
    "delete",
    "restore",
    "restore",
    "settle",
    "settle",
    "settle",
    "settle",
    "erase",
  ],
  ...["import", "import", "import", "import", "import", "import", "old-backup", "restart", "clone"],
] as const;
const DECADES_MS = 9e11; // 28.5 years
const SKEWS = [0, 0, DECADES_MS, -DECADES_MS] as const;

/** One step of a history as one number, so that a history is cheap to draw and shrinks by itself. */
export const STEP_BOUND = OPS.length * 5 * 5 * 3 * SKEWS.length * 6;

const decode = (step: number) => {
  let left = step;
  const take = (count: number): number => {
    const digit = left % count;
    left = Math.floor(left / count);
    return digit;
  };
  return {
    op: OPS[take(OPS.length)] ?? "edit",
    device: take(5),
    from: take(5),
    farm: take(3),
    skewMs: SKEWS[take(SKEWS.length)] ?? 0,
    mark: take(6) + 1,
  };
};

interface Device {
  records: Records;
  /** Copied with a clone, as a backup of a whole phone copies it. */
  device: string;
  /** New at every start of the app. */
  actor: string;
  made: number;
  readonly past: Records[];
}

/** What came of a history. */
export interface Played {
  readonly devices: readonly Records[];
  readonly pasts: readonly Records[];
  /** Per revision ever made: its record and every revision that it was made from, near and far. */
  readonly madeFrom: ReadonlyMap<string, { readonly of: RecordId; readonly known: ReadonlySet<string> }>;
  /** Every entry ever made. */
  readonly entries: ReadonlySet<string>;
  readonly settled: number;
  readonly ownEditHidden: boolean;
}

/** Plays a history; the same numbers give the same history. */
export const play = (steps: readonly number[]): Played => {
  let chance = 0;
  let wallMs = 1.7e12;
  let settled = 0;
  let ownEditHidden = false;
  const next = (): string => hex(++chance, 16);
  const devices: Device[] = Array.from({ length: 5 }, () => ({
    records: new Map(),
    device: next(),
    actor: next(),
    made: 0,
    past: [],
  }));
  const madeFrom = new Map<string, { of: RecordId; known: Set<string> }>();
  const entries = new Set<string>();

  const write = (d: Device, command: Command): boolean => {
    const before = d.records.get(command.id);
    const applied = applyCommand(before, command);
    if (!applied.ok || applied.value.already) return false;
    const { record, added } = applied.value;
    d.records = new Map(d.records).set(command.id, record);
    for (const entry of added) entries.add(entry.id);
    if ("by" in command) {
      const known = new Set<string>();
      for (const { rev } of before?.revs ?? [])
        for (const one of [rev, ...(madeFrom.get(rev)?.known ?? [])]) known.add(one);
      madeFrom.set(command.by.rev, { of: command.id, known });
    }
    return true;
  };

  // The line is begun on one phone and carried to the others before they part.
  const [first] = devices;
  if (first !== undefined) {
    const by = { rev: next(), actor: first.actor, n: ++first.made, author: null };
    const stamp = { wallMs, counter: 0, device: first.device };
    write(first, { op: "write", id: line, by: { ...by, stamp }, body: lineBody });
    for (const d of devices) d.records = first.records;
  }

  for (const number of steps) {
    const { op, device, from, farm, skewMs, mark } = decode(number);
    const d = devices[device];
    const other = devices[from];
    if (d === undefined || other === undefined) continue;
    wallMs += 1000;
    const name = farms[farm];
    const target = name ?? line;
    const by = (): Signature => ({
      rev: next(),
      actor: d.actor,
      n: ++d.made,
      stamp: { wallMs: wallMs + skewMs, counter: d.made, device: d.device },
      author: null,
    });
    const at = (): Moment => ({
      id: next(),
      lookedAtMs: wallMs + skewMs,
      enteredAtMs: wallMs + skewMs,
      monoMs: 0,
      page: d.actor,
      device: d.device,
      by: null,
    });
    const edit = (): void => {
      const atSpot = mark % 2 === 1 ? { spot: id("spot", 8) } : {};
      const change = name === undefined ? { startedAtMs: wallMs, ...atSpot } : { name: `as of ${wallMs}` };
      // A line that is at no marked spot any more.
      const without = name === undefined && !("spot" in change) ? ["spot"] : [];
      const record = d.records.get(target);
      const command: Command =
        record === undefined || record.revs.length === 0
          ? {
              op: "write",
              id: target,
              by: by(),
              body: name === undefined ? { ...lineBody, ...change } : change,
            }
          : { op: "change", id: target, by: by(), patch: change, without };
      if (!write(d, command)) return;
      const now = d.records.get(target);
      const body: object = (now === undefined ? undefined : shown(now)?.body) ?? {};
      const stands = Object.entries(change).every(([key, value]) => Reflect.get(body, key) === value);
      if (!stands || without.some((key) => key in body)) ownEditHidden = true;
    };
    switch (op) {
      case "edit":
        edit();
        break;
      case "settle":
        if ((d.records.get(target)?.revs.length ?? 0) > 1) {
          settled++;
          edit();
        }
        break;
      case "append":
      case "correct": {
        const draft = {
          type: "mark",
          mark: op === "append" ? "next" : mark,
          cover: COVERS[(mark + farm) % COVERS.length] ?? "residue",
        } as const;
        write(d, { op: "append", id: line, frame, at: at(), draft });
        break;
      }
      case "undo":
      case "redo":
        write(d, { op, id: line, at: at() });
        break;
      case "delete":
      case "restore":
        write(d, { op, id: target, by: by() });
        break;
      case "erase":
        if (d.records.has(target)) write(d, { op, id: target });
        break;
      case "import":
        d.records = mergeAll(d.records, other.records);
        break;
      case "old-backup": {
        const past = other.past[mark % Math.max(1, other.past.length)];
        if (past !== undefined) d.records = mergeAll(d.records, past);
        break;
      }
      case "restart":
        d.actor = next();
        d.made = 0;
        break;
      case "clone":
        if (d === other) break;
        // What stood on the overwritten phone was carried along first; the cloned app then starts anew.
        d.records = mergeAll(d.records, other.records);
        d.device = other.device;
        d.actor = next();
        d.made = 0;
        break;
    }
    d.past.push(d.records);
  }
  return {
    devices: devices.map(({ records }) => records),
    pasts: devices.flatMap(({ past }) => past.slice(past.length >> 1).slice(0, 1)),
    madeFrom,
    entries,
    settled,
    ownEditHidden,
  };
};
