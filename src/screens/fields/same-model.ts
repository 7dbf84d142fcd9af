/** What somebody said to be the same as something of a field, and what could be. */
import { kindOf, type RecordId } from "../../record/ids.ts";
import type { House } from "../parts/house.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import { allFields, type SameField } from "../parts/same-field.ts";
import { type FieldOfFarm, readFields } from "./model.ts";

type Joinable = "field" | "strip";

/** A joining of two fields or of two strips, with what it joins. */
export interface JoinedPair {
  readonly id: RecordId<"join">;
  readonly kind: Joinable;
  readonly from: Listed<Joinable> | undefined;
  readonly to: Listed<Joinable> | undefined;
}

/** What the section shows. */
export interface SameNow {
  readonly pairs: readonly JoinedPair[];
  /** There are other living fields, which it could be the same as. */
  readonly others: boolean;
}

/** A field of any farm. */
export interface OtherField extends FieldOfFarm {
  readonly farm: Listed<"farm"> | undefined;
}

/** Every other living field, by farm and name. */
export const readOthers = async (records: Reader, { ids: own }: SameField): Promise<readonly OtherField[]> =>
  (await readFields(records)).flatMap(({ farm, fields }) =>
    fields.filter(({ same }) => !same.ids.some((id) => own.includes(id))).map((one) => ({ ...one, farm })),
  );

/** Reads the joinings of a field and of its strips, and whether there are fields that it could be the same as. */
export const readSame = async (records: Reader, same: SameField): Promise<SameNow> => {
  const [joins, fields, ...lists] = await Promise.all([
    records.list({ kind: "join" }),
    allFields(records),
    ...same.ids.map((field) => records.list({ field, kind: "strip" })),
  ]);
  const own = new Set<RecordId>([...same.ids, ...lists.flat().map(({ id }) => id)]);
  const ofField = joins.filter(({ body }) => own.has(body.from) || own.has(body.to));
  const sides = await records.many([...new Set(ofField.flatMap(({ body }) => [body.from, body.to]))]);
  const sideOf = (id: RecordId) => sides.find((one) => one.id === id) as Listed<Joinable> | undefined;
  return {
    pairs: ofField.map(({ id, body }) => ({
      id,
      kind: kindOf(body.from) as Joinable,
      from: sideOf(body.from),
      to: sideOf(body.to),
    })),
    others: fields.some(({ ids }) => !ids.some((id) => own.has(id))),
  };
};

/** Says that two records are the same: `to` stands for both from now on. */
export const join = async <K extends Joinable>(
  house: House,
  from: RecordId<K>,
  to: RecordId<K>,
): Promise<boolean> => {
  const written = await house.write(house.pen.write("join", { from, to }));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};

/** Takes a joining apart again. Nothing else changes: what was measured always stayed where it was written. */
export const takeApart = async (house: House, id: RecordId<"join">): Promise<void> => {
  const written = await house.write(house.pen.remove(id));
  if (!written.ok) house.tell(written.problem);
};
