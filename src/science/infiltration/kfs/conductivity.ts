/** What every estimate of the field-saturated conductivity hands back. */
import { failed, ok, type Result } from "../../../record/result.ts";
import type { Caution, Estimate, SampledBy } from "../../estimate.ts";
import { type MethodId, sourcesOf } from "../../methods.ts";
import { conductivityAt20 } from "./viscosity.ts";

/** Field-saturated conductivity in mm/h, as measured, with what it would be at 20 °C beside it. */
export interface Conductivity extends Estimate {
  /** `science/not-measured` when the temperature of the water is not known. */
  readonly at20: Result<number>;
}

/** What an estimate rests on. */
export interface Behind {
  readonly n: number;
  readonly sampledBy: SampledBy;
  readonly method: MethodId;
  readonly cautions: readonly Caution[];
}

/** Beside every conductivity from a ring. */
const ALWAYS: readonly Caution[] = [
  { code: "science/kfs-one-point", facts: {} },
  { code: "science/not-for-design", facts: {} },
];

/**
 * A conductivity with everything that stands beside it.
 *
 * @param waterC temperature of the water; null when it was not measured
 * @returns `science/no-number` when it is not above 0 and finite
 */
export const conductivity = (mmPerH: number, behind: Behind, waterC: number | null): Result<Conductivity> => {
  if (!(mmPerH > 0 && Number.isFinite(mmPerH))) return failed("science/no-number");
  const at20: Result<number> =
    waterC === null ? failed("science/not-measured") : conductivityAt20(mmPerH, waterC);
  const methods: MethodId[] = at20.ok ? [behind.method, "kfs-at-20"] : [behind.method];
  return ok({
    value: mmPerH,
    unit: "mm/h",
    n: behind.n,
    sampledBy: behind.sampledBy,
    range: failed("science/one-ring-only"),
    cautions: [...behind.cautions, ...ALWAYS],
    methods,
    sources: sourcesOf(methods),
    at20,
  });
};

/** A number that is above 0 and finite. */
export const isAbove0 = (value: number): boolean => value > 0 && Number.isFinite(value);
