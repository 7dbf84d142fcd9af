/** Setting out a line: what it was last time stands there already, and one key starts counting. */

import { readClock } from "../../../device/clock.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { Rope } from "../../../record/kinds/kit.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import type { Stood } from "../../../record/shapes.ts";
import { checkLayout, type LayoutCheck } from "../../../science/ground-cover/in-step.ts";
import type { House } from "../../parts/house.ts";
import { newestOf } from "../../parts/newest-of.ts";
import { onGrass, spotsOf } from "../../parts/old-grass.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { onceEach, type SameField, sameField, sameStrip, standsFor } from "../../parts/same-field.ts";
import type { StripSaid } from "../../parts/strip-form.tsx";
import { visitsOf } from "../../parts/visits.ts";
import { type Ground, groundToKeep, readSpots, type SpotToChoose } from "./ground.ts";

/** What the person chooses for a line. */
export type Choices = Pick<
  LineHeader,
  "way" | "angleToRowsDeg" | "rowSpacingM" | "passWidthM" | "place" | "fifthKey" | "askThickness"
> & {
  readonly ground: Ground;
  readonly rope: RecordId<"kit"> | null;
};

/** What there is to choose from, and what is chosen at first. */
export interface SetOut {
  readonly visit: Listed<"visit">;
  /** The field itself, also when it was measured under another name first. */
  readonly field: Listed<"field">;
  readonly strips: readonly Listed<"strip">[];
  readonly spots: readonly SpotToChoose[];
  readonly ropes: readonly Listed<"kit">[];
  /** Percent guessed on that day, by strip. */
  readonly guesses: ReadonlyMap<RecordId<"strip">, number>;
  /** Strips with a line on that day: what is guessed after the first line is no guess. */
  readonly counted: ReadonlySet<RecordId<"strip">>;
  readonly first: Choices;
}

const FIRST: Omit<Choices, "ground" | "rope"> = {
  way: "mark-by-mark",
  angleToRowsDeg: 45,
  rowSpacingM: null,
  passWidthM: null,
  place: null,
  fifthKey: null,
  askThickness: false,
};

/** The last line, also when rings and holes of a long day were begun since. */
const LAST = { most: 1, among: 200 } as const;

/** What was guessed of ground cover on the day of a visit, and where lines were begun. */
const readGuesses = async (
  records: Reader,
  visit: Listed<"visit">,
  same: SameField,
  rootOf: (strip: RecordId<"strip">) => RecordId<"strip">,
): Promise<Pick<SetOut, "guesses" | "counted">> => {
  const [all, lists] = await Promise.all([
    visitsOf(records, same.ids),
    Promise.all(same.ids.map((field) => records.list({ field, kind: "guess" }))),
  ]);
  const onDay = all.filter(({ id, body }) => id === visit.id || body.day === visit.body.day);
  const days = new Set<RecordId>(onDay.map(({ id }) => id));
  const tests = await Promise.all(onDay.map(({ id }) => records.list({ visit: id, kind: "observation" })));
  return {
    guesses: new Map(
      lists
        .flat()
        .flatMap(({ body: { what, visit: on, strip, value } }) =>
          what === "ground-cover-percent" && on !== null && days.has(on) && strip !== null
            ? [[rootOf(strip), value] as const]
            : [],
        ),
    ),
    counted: new Set(tests.flat().flatMap(({ body }) => (body.type === "line" ? [rootOf(body.strip)] : []))),
  };
};

/** Reads what a new line of a visit can choose from; null when the visit is not on this device. */
export const readSetOut = async ({ records }: House, visitId: RecordId<"visit">): Promise<SetOut | null> => {
  const visit = await records.one(visitId);
  if (visit === undefined) return null;
  const same = await sameField(records, visit.body.field);
  if (same === undefined) return null;
  const [stripLists, joins, kit, here, anywhere] = await Promise.all([
    Promise.all(same.ids.map((field) => records.list({ field, kind: "strip" }))),
    records.joins(),
    records.list({ kind: "kit" }),
    newestOf(records, same.field.id, "line", LAST),
    newestOf(records, null, "line", LAST),
  ]);
  const stripOf = sameStrip(joins);
  const strips = onceEach(stripLists.flat(), stripOf);
  const ropes = kit.filter(({ body }) => body.type === "rope");
  const before = (here.tests[0] ?? anywhere.tests[0])?.body;
  const [spots, guesses, atBefore] = await Promise.all([
    readSpots(records, same.ids, strips),
    readGuesses(records, visit, same, (strip) => standsFor(strips, stripOf, strip) ?? strip),
    spotsOf(records, before === undefined ? [] : [{ body: before }]),
  ]);
  const known = <T extends string>(id: T | undefined, among: readonly { readonly id: T }[]): T | null =>
    among.find((one) => one.id === id)?.id ?? (among.length === 1 ? (among[0]?.id ?? null) : null);
  // A marked spot is chosen anew each time, and what lay on old grass says nothing of the next strip.
  const ground = (strip: RecordId<"strip"> | undefined): Ground => ({
    strip: known(strip === undefined ? undefined : standsFor(strips, stripOf, strip), strips),
    spot: null,
  });
  return {
    visit,
    field: same.field,
    strips,
    spots,
    ropes,
    ...guesses,
    first:
      before !== undefined
        ? {
            way: before.way,
            angleToRowsDeg: before.angleToRowsDeg,
            rowSpacingM: before.rowSpacingM,
            passWidthM: before.passWidthM,
            place: before.place,
            fifthKey: before.fifthKey,
            askThickness: before.askThickness,
            ground: ground(onGrass(atBefore, before) ? undefined : before.strip),
            rope: known(before.rope, ropes),
          }
        : { ...FIRST, ground: ground(undefined), rope: known(undefined, ropes) },
  };
};

/** Adds a strip to the field; the whole field is a strip too. */
export const addStrip = async (
  house: House,
  field: RecordId<"field">,
  said: StripSaid,
): Promise<RecordId<"strip"> | null> => {
  const command = house.pen.write("strip", { field, ...said });
  const written = await house.write(command);
  if (written.ok) return command.id;
  house.tell(written.problem);
  return null;
};

/** Begins the line, keeps a guess with it, and gives its id; null, and the reason is shown, when it could not be written. */
export const beginLine = async (
  house: House,
  { visit, field, spots }: SetOut,
  { ground, ...choices }: Choices & { readonly rope: RecordId<"kit"> },
  { start, guess }: { readonly start: Stood; readonly guess: number | null },
): Promise<RecordId<"observation"> | null> => {
  const kept = groundToKeep(ground, spots);
  if (kept === null) return null;
  const fifth = choices.fifthKey?.trim() ?? "";
  const { wallMs } = readClock();
  const shared = { visit: visit.id, field: field.id, strip: kept.strip, person: house.settings.value.person };
  const command = house.pen.write("observation", {
    type: "line",
    ...shared,
    ...choices,
    ...kept,
    fifthKey: fifth === "" ? null : fifth,
    start,
    end: { position: null, why: "not-asked" },
    startedAtMs: wallMs,
  });
  const guessed =
    guess === null
      ? []
      : [house.pen.write("guess", { ...shared, what: "ground-cover-percent", value: guess, atMs: wallMs })];
  const written = await house.write(...guessed, command);
  if (written.ok) return command.id;
  house.tell(written.problem);
  return null;
};

/**
 * What science says of laying this line like that: marks in step with rows, or not a full pass crossed; null where it
 * cannot be looked at.
 */
export const layoutOf = (rope: Rope | undefined, choices: Choices): LayoutCheck | null => {
  if (rope === undefined || choices.angleToRowsDeg === null) return null;
  const inMm = (metres: number | null): number | null => (metres === null ? null : metres * 1000);
  const checked = checkLayout({
    markSpacingMm: rope.spacingM * 1000,
    marks: rope.marks,
    angleToRowsDeg: choices.angleToRowsDeg,
    rowSpacingMm: inMm(choices.rowSpacingM),
    passWidthMm: inMm(choices.passWidthM),
  });
  return checked.ok ? checked.value : null;
};
