/** The JSON Schema of the archive, made from the schemas that the product checks with. */
import { toJSONSchema } from "zod/mini";
import { manifest } from "../../../src/exchange/format/manifest.ts";
import { KINDS } from "../../../src/record/ids.ts";
import { KIND } from "../../../src/record/kinds/all.ts";
import { entryList, MAX_SIDE_BY_SIDE, revisionFrame } from "../../../src/record/record.ts";
import * as z from "../../../src/record/zod.ts";

type JsonSchema = Readonly<Record<string, unknown>>;

const schemaOf = (schema: z.Schema): JsonSchema => {
  const { $schema: _, ...rest } = toJSONSchema(schema, { target: "draft-2020-12", io: "input" });
  return rest;
};

/** The schema as it follows from the code now. */
export const archiveSchema = (): JsonSchema => {
  const revision = z.strictObject({ ...revisionFrame, body: z.anything });
  const record = z.strictObject({
    id: z.string().check(z.regex(new RegExp(`^(${KINDS.join("|")})-[0-9a-f]{32}$`))),
    erased: z.boolean(),
    revs: z.array(revision).check(z.maxLength(MAX_SIDE_BY_SIDE)),
    entries: entryList,
  });
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Mulchmark archive, format version 1",
    description:
      "manifest.json fits #/$defs/manifest; every line of records.ndjson fits #/$defs/record, and each body in it the schema of its kind under #/$defs/bodies.",
    $defs: {
      manifest: schemaOf(manifest),
      record: schemaOf(record),
      bodies: Object.fromEntries(KINDS.map((kind) => [kind, schemaOf(KIND[kind].body)])),
    },
  };
};
