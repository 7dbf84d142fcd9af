/** The sheet of a ring: every reading with what it says, how the ring stood, and what it goes on from. */
import type { RecordId } from "../../../record/ids.ts";
import { ok, type Result } from "../../../record/result.ts";
import type { Caution } from "../../../science/estimate.ts";
import { type LeftOut, rateOf } from "../../../science/infiltration/pieces.ts";
import { type RingRate, ringRate } from "../../../science/infiltration/ring-rate.ts";
import { type SideFlow, sideFlow } from "../../../science/infiltration/side-flow.ts";
import { soakingOf } from "../../../science/infiltration/soaking.ts";
import { METHODS } from "../../../science/methods/all.ts";
import type { MethodId } from "../../../science/methods.ts";
import type { SourceId } from "../../../science/sources.ts";
import type { LastChange } from "../../kit/kit-list.ts";
import type { House } from "../../parts/house.ts";
import type { Listed } from "../../parts/reader.ts";
import { type DayRing, readRingOf } from "./day.ts";
import { guessOf } from "./guess.ts";
import { type ReadingRow, rowsOf } from "./readings.tsx";
import { type RingResult, resultOf } from "./result.ts";

/** A reading with what had soaked in by then. */
export interface SheetRow extends ReadingRow {
  /** Soaked in since water was first in the ring; null where the curve does not reach. */
  readonly mm: number | null;
  /** Rate since the reading before it. */
  readonly mmPerH: number | null;
  readonly leftOut: LeftOut | null;
}

export interface RingSheet {
  readonly ring: DayRing;
  readonly result: RingResult;
  readonly rows: readonly SheetRow[];
  readonly rate: Result<RingRate>;
  /** Null for a single ring. */
  readonly side: Result<SideFlow> | null;
  readonly cautions: readonly Caution[];
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
  readonly field: Listed<"field"> | undefined;
  readonly person: Listed<"person"> | undefined;
  /** The marked spot at which it stood. */
  readonly spot: Listed<"spot"> | undefined;
  /** When it was last corrected how the ring stood, and the name of who did; null when it never was. */
  readonly changed: LastChange | null;
  readonly changedBy: string | null;
  readonly guessMm: number | null;
  readonly follows: DayRing | null;
  /** The ring that goes on from this one, after a leak. */
  readonly followedBy: DayRing | null;
}

const MINUTE_MS = 60_000;
/** Two moments of one reading differ by rounding alone. */
const SAME_MIN = 1e-6;

/**
 * The rows of the sheet. Readings of the outer ring carry what soaked in between the rings; what happened
 * carries no depth of its own.
 *
 * @param ring with whatever was read, also nothing
 */
export const sheetRows = (ring: DayRing): readonly SheetRow[] => {
  const soakings = {
    inner: resultOf(ring).soaking,
    outer: soakingOf(ring.reading, ring.set, "outer"),
  };
  const rings = new Map(ring.reading.events.map((event) => [event.entry.id, event.ring]));
  return rowsOf(ring).map((row) => {
    const which = rings.get(row.entry.id);
    const soaking = which === undefined ? null : soakings[which];
    if (soaking === null || !soaking.ok) return { ...row, mm: null, mmPerH: null, leftOut: null };
    const atMin = (row.moment.sinceStartMs - soaking.value.zeroMs) / MINUTE_MS;
    const near = (min: number): boolean => Math.abs(min - atMin) < SAME_MIN;
    const point = soaking.value.curve.find((one) => near(one.atMin));
    const piece = soaking.value.pieces.findLast((one) => near(one.toMin));
    const rate = piece?.kind === "soak" ? rateOf(piece) : null;
    return { ...row, mm: point?.mm ?? null, mmPerH: rate, leftOut: piece?.leftOut ?? null };
  });
};

/** The cautions of several answers, each once. */
export const onceEachCaution = (cautions: readonly Caution[]): readonly Caution[] => {
  const seen = new Set<string>();
  return cautions.filter(({ code, facts }) => {
    const name = `${code} ${JSON.stringify(facts)}`;
    if (seen.has(name)) return false;
    seen.add(name);
    return true;
  });
};

const sideOf = (ring: DayRing, result: RingResult): Result<SideFlow> | null => {
  if (ring.header.outer === null || !result.soaking.ok) return null;
  const outer = soakingOf(ring.reading, ring.set, "outer");
  return outer.ok ? sideFlow(result.soaking.value, outer.value) : outer;
};

const answersOf = (result: RingResult, side: Result<SideFlow> | null) => {
  const { soaking, headlines, lastHalfHour, levelling } = result;
  const rate: Result<{
    readonly cautions: readonly Caution[];
    readonly methods: readonly MethodId[];
    readonly sources: readonly SourceId[];
  }> = levelling.ok ? ok(levelling.value.rate) : levelling;
  return [
    soaking,
    ...headlines.map(({ depth }) => depth),
    lastHalfHour,
    rate,
    ...(side === null ? [] : [side]),
  ]
    .filter((one) => one.ok)
    .map(({ value }) => value);
};

/** Reads the sheet of a ring; null when the ring is not on this device. */
export const readRingSheet = async (
  { records }: House,
  id: RecordId<"observation">,
): Promise<RingSheet | null> => {
  const ring = await readRingOf(records, id);
  if (ring === null) return null;
  const { header } = ring;
  const { changed } = ring;
  const [field, person, spot, corrector, guessMm, follows, others] = await Promise.all([
    records.one(header.field),
    header.person === null ? undefined : records.one(header.person),
    header.spot === undefined ? undefined : records.one(header.spot),
    changed?.by == null ? undefined : records.one(changed.by),
    guessOf(records, header),
    header.follows === null ? null : readRingOf(records, header.follows),
    records.list({ visit: header.visit, kind: "observation" }),
  ]);
  const next = others.find(({ body }) => body.type === "ring" && body.follows === id);
  const result = resultOf(ring);
  const side = sideOf(ring, result);
  const answers = answersOf(result, side);
  const methods = [...new Set(answers.flatMap((one) => one.methods))];
  return {
    ring,
    result,
    rows: sheetRows(ring),
    rate: result.soaking.ok ? ringRate(result.soaking.value) : result.soaking,
    side,
    cautions: onceEachCaution(answers.flatMap((one) => one.cautions)),
    methods,
    sources: [
      ...new Set([
        ...answers.flatMap((one) => one.sources),
        ...methods.flatMap((one) => METHODS[one].sources),
      ]),
    ],
    field,
    person,
    spot,
    changed,
    changedBy: corrector?.body.name || null,
    guessMm,
    follows,
    followedBy: next === undefined ? null : await readRingOf(records, next.id),
  };
};
