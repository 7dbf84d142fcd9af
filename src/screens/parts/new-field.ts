/** A new field, and with it the whole field as a strip: nobody has to think of strips before there are any. */
import type { Command } from "../../record/command/command.ts";
import type { RecordId } from "../../record/ids.ts";
import type { Strip } from "../../record/kinds/strip.ts";
import type { House } from "./house.ts";

/** A strip that is the whole field; what was done there can be said later. */
export const wholeField = (field: RecordId<"field">): Strip => ({
  field,
  name: "",
  done: [],
  wholeField: true,
  rep: null,
});

/** What writes a new field, to be written together. The name may be empty: it can be said later. */
export const newField = (
  pen: House["pen"],
  name = "",
  farm: RecordId<"farm"> | null = null,
): { readonly field: RecordId<"field">; readonly commands: readonly Command[] } => {
  const field = pen.write("field", {
    name,
    farm,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  });
  return { field: field.id, commands: [field, pen.write("strip", wholeField(field.id))] };
};
