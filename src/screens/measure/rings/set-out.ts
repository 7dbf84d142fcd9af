/** Setting out a ring: what there is to choose from, what stood there last time, and writing it down. */
import { readClock } from "../../../device/clock.ts";
import type { Command } from "../../../record/command/command.ts";
import type { WETNESS } from "../../../record/conditions.ts";
import { grassOf } from "../../../record/ground.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { Ring } from "../../../record/kinds/kit.ts";
import type { RingHeader } from "../../../record/kinds/observation.ts";
import type { Stood } from "../../../record/shapes.ts";
import { type KitItem, type KitList, readKit } from "../../kit/kit-list.ts";
import type { House } from "../../parts/house.ts";
import type { Listed } from "../../parts/reader.ts";
import { onceEach, sameField, sameStrip } from "../../parts/same-field.ts";
import { type Ground, isGround, readSpots, type SpotToChoose } from "../set-out/ground.ts";
import { conditionsOf } from "./conditions.ts";
import { type DayRing, readRingDay } from "./day.ts";
import { inTheGround } from "./gaps.ts";
import { guessCommand, guessOf } from "./guess.ts";
import { USUAL_PLAN_MIN } from "./reading-plan.ts";
import { lostBy } from "./status.ts";

export type Wetness = (typeof WETNESS)[number];

/** What the person chooses for a ring. */
export type RingChoices = Pick<
  RingHeader,
  "way" | "rulerReads" | "mulch" | "place" | "ruler" | "bottle" | "outer"
> & {
  readonly ring: RecordId<"kit"> | null;
  readonly ground: Ground;
  readonly planMin: readonly number[];
  readonly wetness: Wetness | null;
};

/** What a new ring can choose from. */
export interface RingSetOut {
  readonly visit: Listed<"visit">;
  readonly field: Listed<"field">;
  readonly strips: readonly Listed<"strip">[];
  readonly spots: readonly SpotToChoose[];
  readonly kit: KitList;
  /** The rings of the day that are on the board. */
  readonly rings: readonly DayRing[];
  /** Rings of the kit that stand in the ground. */
  readonly taken: ReadonlySet<RecordId<"kit">>;
  /** The last ring that was set out on this visit. */
  readonly before: DayRing | null;
  /** The ring that leaked, whose test goes on here, or that was moved here. */
  readonly follows: DayRing | null;
  /** It was moved to a new spot: what is read there is a test of its own. */
  readonly moved: boolean;
  readonly first: RingChoices;
  /** Strips for which somebody guessed, or that have a ring already: they are not asked again. */
  readonly guessed: ReadonlySet<RecordId<"strip">>;
}

const onOldGrass = ({ header, spot }: DayRing): boolean =>
  grassOf(() => spot?.body.oldGrass, header) !== null;

/**
 * Everything as at another ring, but the ring itself: that one stands in the ground. A marked spot is chosen anew,
 * and old grass has no strip to hand on.
 */
export const asBefore = (ring: DayRing, next: RecordId<"kit"> | null): RingChoices => {
  const { way, rulerReads, mulch, place, ruler, bottle, strip, planMin } = ring.header;
  return {
    way,
    rulerReads,
    mulch,
    place,
    ruler,
    bottle,
    ground: { strip: onOldGrass(ring) ? null : strip, spot: null },
    planMin,
    outer: null,
    ring: next,
    wetness: conditionsOf(ring.entries).wetness,
  };
};

const FIRST: Omit<RingChoices, "ring" | "ground"> = {
  way: "ruler",
  rulerReads: "water-depth",
  mulch: null,
  place: null,
  ruler: null,
  bottle: null,
  outer: null,
  planMin: USUAL_PLAN_MIN.ruler,
  wetness: null,
};

/** The next ring of the kit that is free, by its letter. */
export const nextFree = (
  rings: readonly KitItem<Ring>[],
  taken: ReadonlySet<RecordId<"kit">>,
): RecordId<"kit"> | null => rings.find(({ id }) => !taken.has(id))?.id ?? null;

/** Rings that are large enough to stand around another one, and free. */
export const outersFor = (
  { kit, taken }: Pick<RingSetOut, "kit" | "taken">,
  ring: RecordId<"kit"> | null,
): readonly KitItem<Ring>[] => {
  const inner = kit.rings.find(({ id }) => id === ring);
  if (inner === undefined) return [];
  const wideM = inner.body.outsideM ?? inner.body.insideM[0];
  return kit.rings.filter(({ id, body }) => id !== ring && !taken.has(id) && body.insideM[0] > wideM);
};

/** Whether everything that was chosen is still there to be chosen, or stands there at first anyway. */
export const areThere = (
  { kit, strips, spots }: Pick<RingSetOut, "kit" | "strips" | "spots">,
  { ring, outer, ruler, bottle, ground }: RingChoices,
  first: RingChoices,
): boolean => {
  const things = [...kit.rings, ...kit.rulers, ...kit.bottles].map(({ id }) => id);
  const known = new Set([null, first.ring, first.outer, first.ruler, first.bottle, ...things]);
  return (
    [ring, outer, ruler, bottle].every((id) => known.has(id)) && isGround(ground, strips, spots, first.ground)
  );
};

/** Reads what a new ring of a visit can choose from; null when the visit is not on this device. */
export const readRingSetOut = async (
  house: House,
  id: RecordId<"visit">,
  followsId: RecordId<"observation"> | null,
): Promise<RingSetOut | null> => {
  const { records } = house;
  const day = await readRingDay(records, id, new Map(), () => false);
  const same = day === null ? undefined : await sameField(records, day.visit.body.field);
  if (day === null || same === undefined) return null;
  const [lists, joins, kit] = await Promise.all([
    Promise.all(same.ids.map((field) => records.list({ field, kind: "strip" }))),
    records.joins(),
    readKit(records),
  ]);
  const strips = onceEach(lists.flat(), sameStrip(joins));
  const spots = await readSpots(records, same.ids, strips);
  const rings = day.rings.filter(({ deleted }) => !deleted);
  const taken = inTheGround(rings);
  const follows = rings.find((ring) => ring.id === followsId) ?? null;
  const before = rings.at(-1) ?? null;
  const free = nextFree(kit.rings, taken);
  const guesses = await Promise.all(
    strips.map(async (strip) => ({
      id: strip.id,
      asked:
        rings.some((ring) => ring.header.strip === strip.id && !onOldGrass(ring)) ||
        (await guessOf(records, { visit: id, field: day.field.id, strip: strip.id })) !== null,
    })),
  );
  const moved = follows !== null && lostBy(follows) === "moved";
  const again = (ring: DayRing): RingChoices => {
    const same = asBefore(ring, taken.has(ring.header.ring) ? free : ring.header.ring);
    // A ring that goes on after a leak stands a pace away from it: at the same spot.
    const spot = moved ? null : (ring.header.spot ?? null);
    return { ...same, outer: ring.header.outer, ground: { strip: same.ground.strip, spot } };
  };
  const only = strips.length === 1 ? (strips[0]?.id ?? null) : null;
  return {
    visit: day.visit,
    field: day.field,
    strips,
    spots,
    kit,
    rings,
    taken,
    before,
    follows,
    moved,
    first: follows === null ? { ...FIRST, ring: free, ground: { strip: only, spot: null } } : again(follows),
    guessed: new Set(guesses.filter(({ asked }) => asked).map((one) => one.id)),
  };
};

/** Sets the ring out and gives its id; null, and the reason is shown, when it could not be written. */
export const setOutRing = async (
  house: House,
  { visit, field, follows, moved }: RingSetOut,
  choices: Omit<RingChoices, "ground"> & {
    readonly ring: RecordId<"kit">;
    readonly ground: Pick<RingHeader, "strip" | "spot">;
  },
  more: {
    readonly rimToSoilM: readonly number[];
    readonly at: Stood;
    readonly guessMm: number | null;
  },
): Promise<RecordId<"observation"> | null> => {
  const { wetness, planMin, ground, ...chosen } = choices;
  const startedAtMs = readClock().wallMs;
  const command = house.pen.write("observation", {
    type: "ring",
    visit: visit.id,
    field: field.id,
    ...chosen,
    ...ground,
    planMin: [...planMin],
    rimToSoilM: [...more.rimToSoilM],
    at: more.at,
    follows: moved ? null : (follows?.id ?? null),
    person: house.settings.value.person,
    startedAtMs,
  });
  const commands: Command[] = [command];
  if (wetness !== null)
    commands.push({
      op: "append",
      id: command.id,
      frame: null,
      at: house.pen.moment(),
      draft: { type: "wetness", is: wetness },
    });
  if (more.guessMm !== null) {
    const at = { visit: visit.id, field: field.id, strip: ground.strip };
    commands.push(guessCommand(house, at, more.guessMm, startedAtMs));
  }
  const written = await house.write(...commands);
  if (written.ok) return command.id;
  house.tell(written.problem);
  return null;
};

/** How a ring stands now, to be corrected. */
export const choicesOf = (ring: DayRing): RingChoices => ({
  ...asBefore(ring, ring.header.ring),
  outer: ring.header.outer,
  ground: { strip: onOldGrass(ring) ? null : ring.header.strip, spot: ring.header.spot ?? null },
});
