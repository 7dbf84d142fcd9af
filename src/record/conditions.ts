/** Conditions that are written down only at the tests where they matter. */
import { moment, replaces, unusual } from "./moment.ts";
import { finite, name } from "./shapes.ts";
import * as z from "./zod.ts";

/** How wet the ground is, as a hand tells. */
export const WETNESS = ["dry", "moist", "wet"] as const;

const temperature = z.strictObject({
  ...moment,
  type: z.literal("temperature"),
  of: z.oneOf(["water", "soil"]),
  value: finite,
  unit: z.oneOf(["C", "F"]),
  typed: name,
  unusual,
  replaces,
});
const wetness = z.strictObject({ ...moment, type: z.literal("wetness"), is: z.oneOf(WETNESS), replaces });

export const conditionEntries = [temperature, wetness] as const;
export type TemperatureEntry = z.Infer<typeof temperature>;
export type WetnessEntry = z.Infer<typeof wetness>;
