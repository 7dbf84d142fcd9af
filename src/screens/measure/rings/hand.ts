/** Writing at a ring: what a touch there becomes. Everything is on disk before it is shown. */
import type { Applied } from "../../../record/command/apply.ts";
import type { Draft, Moment } from "../../../record/command/command.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { ReadNumber } from "../../../record/number.ts";
import type {
  GoneEntry,
  Happening,
  InRing,
  LevelEntry,
  LookEntry,
  PourEntry,
  RulerReads,
  StartEntry,
  StopEntry,
  Timed,
} from "../../../record/ring/entries.ts";
import type { House } from "../../parts/house.ts";
import type { DayRing } from "./day.ts";
import { NOW, type Timing, timingOf, type When } from "./when.ts";

/** One entry to write: when, and what. */
interface ToWrite {
  readonly at: Moment;
  readonly draft: Draft;
}

export type LevelUnit = LevelEntry["unit"];
export type VolumeUnit = PourEntry["unit"];

/** A number as it was read off and typed. */
export interface TypedNumber<U> {
  readonly read: Pick<ReadNumber, "value" | "typed">;
  readonly unit: U;
  readonly odd: boolean;
}

const numberOf = <U>({ read, unit, odd }: TypedNumber<U>) => ({
  value: read.value,
  unit,
  typed: read.typed,
  ...(odd ? { unusual: true as const } : {}),
});

/** Writes entries together: all of them or none. Null, and the reason is shown, when they could not be. */
const append = async (
  house: House,
  id: RecordId<"observation">,
  entries: readonly ToWrite[],
): Promise<readonly Applied[] | null> => {
  const written = await house.write(
    ...entries.map(({ at, draft }) => ({ op: "append" as const, id, frame: null, at, draft })),
  );
  if (written.ok) return written.value;
  house.tell(written.problem);
  return null;
};

const timed = (house: House, when: When): Timing | null => {
  const timing = timingOf(house.pen, when);
  if (timing.ok) return timing.value;
  house.tell(timing.problem);
  return null;
};

const one = async (
  house: House,
  id: RecordId<"observation">,
  when: When,
  draft: (timed: Timed) => Draft,
): Promise<readonly Applied[] | null> => {
  const timing = timed(house, when);
  return timing === null ? null : append(house, id, [{ at: timing.at, draft: draft(timing.timed) }]);
};

/** *Read now*: keeps the moment; the number follows. */
export const lookNow = (house: House, id: RecordId<"observation">, ring: InRing = "inner") =>
  append(house, id, [{ at: house.pen.moment(), draft: { type: "look", ring } }]);

/** Starts the clock of a ring. Where a ruler is read the first level is looked at in the same moment. */
export const startRing = async (house: House, ring: DayRing, when: When = NOW) => {
  const timing = timed(house, when);
  if (timing === null) return null;
  const { at } = timing;
  const start: ToWrite = { at, draft: { type: "start", timed: timing.timed } };
  const first: ToWrite = {
    at: { ...house.pen.moment(), lookedAtMs: at.lookedAtMs },
    draft: { type: "look", ring: "inner" },
  };
  return append(house, ring.id, ring.header.way === "ruler" ? [start, first] : [start]);
};

/** Stops a ring. */
export const stopRing = (
  house: House,
  id: RecordId<"observation">,
  why: StopEntry["why"],
  when: When = NOW,
) => one(house, id, when, (how) => ({ type: "stop", why, timed: how }));

/** Something happened to the ring. */
export const happened = (
  house: House,
  id: RecordId<"observation">,
  what: Happening,
  words: string,
  when: When = NOW,
) => one(house, id, when, (how) => ({ type: "happened", what, words, timed: how }));

/** A level on the ruler that answers no look. */
export const levelRead = (
  house: House,
  id: RecordId<"observation">,
  level: TypedNumber<LevelUnit> & {
    readonly ring: InRing;
    readonly reads: RulerReads;
    readonly afterRefill: boolean;
  },
  when: When,
) =>
  one(house, id, when, (how) => ({
    type: "level",
    ring: level.ring,
    ...numberOf(level),
    reads: level.reads,
    ...(level.afterRefill ? { afterRefill: true as const } : {}),
    timed: how,
  }));

const momentOfLook = (house: House, look: LookEntry): Moment => ({
  ...house.pen.moment(),
  lookedAtMs: look.lookedAtMs,
});

/** The level of a look. */
export const levelOfLook = (
  house: House,
  id: RecordId<"observation">,
  look: LookEntry,
  level: TypedNumber<LevelUnit> & { readonly reads: RulerReads; readonly afterRefill: boolean },
) =>
  append(house, id, [
    {
      at: momentOfLook(house, look),
      draft: {
        type: "level",
        ring: look.ring,
        ...numberOf(level),
        reads: level.reads,
        of: look.id,
        ...(level.afterRefill ? { afterRefill: true as const } : {}),
        timed: "now",
      },
    },
  ]);

/** A look that found the last of the water gone. */
export const goneAtLook = (house: House, id: RecordId<"observation">, look: LookEntry) =>
  append(house, id, [
    {
      at: momentOfLook(house, look),
      draft: { type: "gone", ring: look.ring, of: look.id, timed: "now" },
    },
  ]);

/** A look that was followed by water up to the mark. The water has the moment of the look and stands for it. */
export const pourAtLook = (
  house: House,
  id: RecordId<"observation">,
  look: LookEntry,
  water: TypedNumber<VolumeUnit>,
) =>
  append(house, id, [
    {
      at: momentOfLook(house, look),
      draft: { type: "pour", ring: look.ring, ...numberOf(water), timed: "now", replaces: [look.id] },
    },
  ]);

/** Nobody could read it: the look goes, and that a reading is missing stays. */
export const lookMissed = (house: House, id: RecordId<"observation">, look: LookEntry) =>
  append(house, id, [
    {
      at: momentOfLook(house, look),
      draft: { type: "happened", what: "missed-reading", words: "", timed: "now", replaces: [look.id] },
    },
  ]);

/** The last of the water is gone. */
export const waterGone = (house: House, id: RecordId<"observation">, ring: InRing, when: When) =>
  one(house, id, when, (how) => ({ type: "gone", ring, timed: how }));

/** Water poured in. `start` gives it the moment at which the ring was started. */
export const waterPoured = async (
  house: House,
  id: RecordId<"observation">,
  water: TypedNumber<VolumeUnit> & { readonly ring: InRing },
  when: When | { readonly how: "at-start"; readonly start: StartEntry },
) => {
  const draft = (how: Timed): Draft => ({
    type: "pour",
    ring: water.ring,
    ...numberOf(water),
    timed: how,
  });
  if (when.how !== "at-start") return one(house, id, when, draft);
  const { start } = when;
  const at = { ...house.pen.moment(), lookedAtMs: start.lookedAtMs };
  return append(house, id, [{ at, draft: draft(start.timed) }]);
};

/** The entries that can be corrected. */
export type Correctable =
  | LevelEntry
  | PourEntry
  | GoneEntry
  | StartEntry
  | StopEntry
  | (Extract<Draft, { type: "happened" }> & Moment);

/**
 * Puts another answer in the place of one that stands there; what stood there is kept.
 *
 * @param ids what it replaces
 * @param lookedAtMs the moment as it stands, or null to take the one that was said now
 */
export const correct = async (
  house: House,
  id: RecordId<"observation">,
  ids: readonly string[],
  moment: { readonly lookedAtMs: number; readonly timed: Timed } | When,
  draft: (timed: Timed) => Draft,
) => {
  const replaces = [...ids];
  const withReplaced = (made: Draft): Draft => ({ ...made, replaces }) as Draft;
  if ("how" in moment) {
    const timing = timed(house, moment);
    if (timing === null) return null;
    return append(house, id, [{ at: timing.at, draft: withReplaced(draft(timing.timed)) }]);
  }
  const at = { ...house.pen.moment(), lookedAtMs: moment.lookedAtMs };
  return append(house, id, [{ at, draft: withReplaced(draft(moment.timed)) }]);
};

/** Undo or redo; gives the entry that it was about. */
export const step = async (house: House, id: RecordId<"observation">, op: "undo" | "redo") => {
  const written = await house.write({ op, id, at: house.pen.moment() });
  if (written.ok) return written.value;
  house.tell(written.problem);
  return null;
};
