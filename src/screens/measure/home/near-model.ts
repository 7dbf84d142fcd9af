/** The fields that one may be standing at, with their farm, area and distance. */
import { boundaryOf } from "../../../science/position/boundary.ts";
import type { LatitudeLongitude } from "../../../science/position/distance.ts";
import { fieldSize } from "../../../science/position/field-size.ts";
import {
  type FieldNear,
  type FieldPlaces,
  type FieldsNear,
  fieldsNear,
} from "../../../science/position/fields-near.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { allFields, type SameField } from "../../parts/same-field.ts";

/** A field that may be meant. */
export interface NearNow {
  readonly same: SameField;
  readonly farm: Listed<"farm"> | undefined;
  /** Null without a boundary that encloses an area. */
  readonly areaM2: number | null;
  readonly near: FieldNear;
}

/** The fields that one may be standing at, and how they were found; no methods where none could be looked for. */
export interface NearNowAll extends Pick<FieldsNear, "methods" | "sources"> {
  readonly fields: readonly NearNow[];
}

/** How many are offered; the nearest is never taken for granted. */
const OFFERED = 3;
/** Newest measurements of a field without a boundary that say where it lies. */
const NEWEST = 5;

const measuredOn = async (records: Reader, { ids }: SameField): Promise<readonly LatitudeLongitude[]> => {
  const lists = await Promise.all(
    ids.map(async (field) => {
      const [tests, spots] = await Promise.all([
        records.list({ field, kind: "observation" }, { newestFirst: true, limit: NEWEST }),
        records.list({ field, kind: "spot" }),
      ]);
      return [
        ...tests.flatMap(({ body }) =>
          body.type === "line" ? [body.start.position, body.end.position] : [body.at.position],
        ),
        ...spots.map(({ body }) => body.position),
      ];
    }),
  );
  return lists.flat().filter((position) => position !== null);
};

/**
 * The nearest fields, nearest first.
 *
 * @returns none when no field within 2 km has a boundary or a measurement with a position
 */
export const readNear = async (records: Reader, here: LatitudeLongitude): Promise<NearNowAll> => {
  const [fields, farms] = await Promise.all([allFields(records), records.list({ kind: "farm" })]);
  const known = await Promise.all(
    fields.map(async (same) => {
      const { boundary } = same.field.body;
      const looked = boundary === null ? null : boundaryOf(boundary);
      const size = looked?.ok === true ? fieldSize(looked.value) : null;
      const measuredAt = looked?.ok === true ? [] : await measuredOn(records, same);
      const places: FieldPlaces = { id: same.field.id, boundary, measuredAt };
      return { same, places, areaM2: size?.ok === true ? size.value.areaM2 : null };
    }),
  );
  const found = fieldsNear(
    here,
    known.map(({ places }) => places),
    OFFERED,
  );
  if (!found.ok) return { fields: [], methods: [], sources: [] };
  const { methods, sources } = found.value;
  const offered = found.value.fields.flatMap((near) => {
    const one = known.find(({ places }) => places.id === near.id);
    if (one === undefined) return [];
    const farm = farms.find(({ id }) => id === one.same.field.body.farm);
    return [{ same: one.same, areaM2: one.areaM2, farm, near }];
  });
  return { fields: offered, methods, sources };
};
