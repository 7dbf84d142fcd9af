/** The names that a person knows things by, gathered in the order of the archive, for tables and maps. */
import { isDemoTest } from "../../../record/demo-mark.ts";
import { grassOf } from "../../../record/ground.ts";
import { kindOf, type RecordId } from "../../../record/ids.ts";
import type { BodyOf } from "../../../record/kinds/all.ts";
import type { Kit } from "../../../record/kinds/kit.ts";
import type { RecordState, Revision } from "../../../record/record.ts";

/** Where and when a test was made, by name. */
export interface Whereabouts {
  readonly field: string;
  /** Empty for what was measured on old grass: it lies in no strip. */
  readonly strip: string;
  /** The marked spot by its name; empty when at none. */
  readonly spot: string;
  readonly oldGrass: boolean;
  /** Of the example farm, which is invented. */
  readonly example: boolean;
  /** Calendar day of the visit; empty when the visit is not known. */
  readonly day: string;
}

/** Names that came before the tests in the order of the archive. */
export interface Names {
  /** Takes the next record. */
  remember(record: RecordState, revision: Revision): void;
  where(id: RecordId, header: Pick<BodyOf["observation"], "field" | "strip" | "visit" | "spot">): Whereabouts;
  /** A thing of the kit, if it is of this type. */
  kit<T extends Kit["type"]>(type: T, id: RecordId<"kit"> | null): Extract<Kit, { type: T }> | undefined;
}

/** Begins at the first record of an archive. */
export const beginNames = (): Names => {
  const fields = new Map<string, string>();
  const strips = new Map<string, string>();
  const spots = new Map<string, BodyOf["spot"]>();
  const days = new Map<string, string>();
  const kit = new Map<string, Kit>();
  return {
    remember({ id }, { body }) {
      switch (kindOf(id)) {
        case "field":
          fields.set(id, (body as BodyOf["field"]).name);
          break;
        case "strip":
          strips.set(id, (body as BodyOf["strip"]).name);
          break;
        case "spot":
          spots.set(id, body as BodyOf["spot"]);
          break;
        case "visit":
          days.set(id, (body as BodyOf["visit"]).day);
          break;
        case "kit":
          kit.set(id, body as Kit);
          break;
      }
    },
    where: (id, header) => {
      const { field, strip, visit, spot } = header;
      const oldGrass = grassOf((at) => spots.get(at)?.oldGrass, header) !== null;
      return {
        field: fields.get(field) ?? "",
        strip: strip === null || oldGrass ? "" : (strips.get(strip) ?? ""),
        spot: spot === undefined ? "" : (spots.get(spot)?.name ?? ""),
        oldGrass,
        example: isDemoTest(id, field),
        day: days.get(visit) ?? "",
      };
    },
    kit<T extends Kit["type"]>(type: T, id: RecordId<"kit"> | null) {
      const found = id === null ? undefined : kit.get(id);
      return found?.type === type ? (found as Extract<Kit, { type: T }>) : undefined;
    },
  };
};
