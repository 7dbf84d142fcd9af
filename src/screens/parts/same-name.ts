import type { RecordId } from "../../record/ids.ts";
import type { Listed, Reader } from "./reader.ts";
import { allFields } from "./same-field.ts";

/** A field of the wanted name, with its farm. */
export interface NameTaken {
  readonly field: Listed<"field">;
  readonly farm: Listed<"farm"> | undefined;
}

const plain = (name: string): string => name.trim().normalize("NFC").toLocaleLowerCase("en");

/**
 * Fields that are called like this already, whatever the case of the letters.
 *
 * @param but the field that is being named; null for one that is not written yet
 */
export const fieldsNamed = async (
  records: Reader,
  name: string,
  but: RecordId<"field"> | null,
): Promise<readonly NameTaken[]> => {
  const [fields, farms] = await Promise.all([allFields(records), records.list({ kind: "farm" })]);
  return fields
    .filter(
      ({ field, ids }) => (but === null || !ids.includes(but)) && plain(field.body.name) === plain(name),
    )
    .map(({ field }) => ({ field, farm: farms.find(({ id }) => id === field.body.farm) }));
};
