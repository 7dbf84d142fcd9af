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
import type { Listed } from "../../parts/reader.ts";
import { onceEach, sameField, sameStrip, standsFor } from "../../parts/same-field.ts";
import type { StripSaid } from "../../parts/strip-form.tsx";
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
  const [spots, atBefore] = await Promise.all([
    readSpots(records, same.ids, strips),
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

/** Begins the line and gives its id; null, and the reason is shown, when it could not be written. */
export const beginLine = async (
  house: House,
  { visit, field, spots }: SetOut,
  { ground, ...choices }: Choices & { readonly rope: RecordId<"kit"> },
  start: Stood,
): Promise<RecordId<"observation"> | null> => {
  const kept = groundToKeep(ground, spots);
  if (kept === null) return null;
  const fifth = choices.fifthKey?.trim() ?? "";
  const command = house.pen.write("observation", {
    type: "line",
    visit: visit.id,
    field: field.id,
    ...choices,
    ...kept,
    fifthKey: fifth === "" ? null : fifth,
    start,
    end: { position: null, why: "not-asked" },
    person: house.settings.value.person,
    startedAtMs: readClock().wallMs,
  });
  const written = await house.write(command);
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
