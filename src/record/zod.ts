/**
 * The one door to the schema library. `jitless` must be set before the first schema is made:
 * otherwise the library compiles schemas with `new Function`, which the policy refuses and reports.
 */
import { config, safeParse, unknown } from "zod/mini";

config({ jitless: true });

export {
  array,
  boolean,
  discriminatedUnion,
  enum as oneOf,
  exactOptional,
  type infer as Infer,
  int,
  literal,
  maximum,
  maxLength,
  minimum,
  minLength,
  nullable,
  number,
  refine,
  regex,
  strictObject,
  string,
  tuple,
  type ZodMiniType as Schema,
} from "zod/mini";

export { safeParse };
/** Any value; what it must be is checked by another schema. */
export const anything = unknown();
/** What a failed check reports. */
export interface SchemaError {
  readonly issues: readonly { readonly path: readonly PropertyKey[]; readonly message: string }[];
}
