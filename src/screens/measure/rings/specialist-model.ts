/** What the specialist sees of a ring: rows ready to be written. */
import { ok, type Result } from "../../../record/result.ts";
import type { Caution, Worked } from "../../../science/estimate.ts";
import { ALPHA_PER_MM, type SoilKind } from "../../../science/infiltration/kfs/alpha.ts";
import type { Conductivity } from "../../../science/infiltration/kfs/conductivity.ts";
import {
  type Fit,
  MODELS,
  type ModelId,
  type ParameterSymbol,
} from "../../../science/infiltration/models/fit.ts";
import {
  type GroundStated,
  KFS_WAYS,
  type KfsWay,
  type RingForSpecialist,
} from "../../../science/infiltration/ring-for-specialist.ts";
import type { MethodId } from "../../../science/methods.ts";
import { onceEachCaution } from "./sheet-model.ts";

/** The method behind each model and each equation: its record holds formula, sources and words. */
export const METHOD_OF_MODEL = {
  kostiakov: "fit-kostiakov",
  "kostiakov-lewis": "fit-kostiakov-lewis",
  philip: "fit-philip",
  horton: "fit-horton",
  "green-ampt": "fit-green-ampt",
} as const satisfies Readonly<Record<ModelId, MethodId>>;
export const METHOD_OF_KFS = {
  "steady-ring": "kfs-steady-ring",
  "falling-head": "kfs-falling-head",
  "beerkan-steady": "kfs-beerkan-steady",
  "beerkan-transient": "kfs-beerkan-transient",
} as const satisfies Readonly<Record<KfsWay, MethodId>>;

/** Symbols as the formulas write them. */
export const WRITTEN = {
  a: "a",
  b: "b",
  c: "c",
  S: "S",
  A: "A",
  f0: "f_0",
  fc: "f_c",
  k: "k",
  K: "K",
  M: "M",
  F1: "F_1",
} as const satisfies Readonly<Record<ParameterSymbol, string>>;

/** Units as the curves are laid: millimetres and hours. */
export const UNIT_OF = {
  a: "mm/h^b",
  b: "",
  c: "mm/h",
  S: "mm/h^½",
  A: "mm/h",
  f0: "mm/h",
  fc: "mm/h",
  k: "1/h",
  K: "mm/h",
  M: "mm",
  F1: "mm",
} as const satisfies Readonly<Record<ParameterSymbol, string>>;

/** What a person says of the ground before anything is worked out. */
export interface GroundSaid {
  readonly soil: SoilKind;
  /** Degrees Celsius; null when not measured. */
  readonly waterC: number | null;
  readonly moistureGap: number | null;
}

/** The first choice for farm soil (Elrick, Reynolds & Tan 1989, from memory). */
export const GROUND_FIRST: GroundSaid = {
  soil: "structured-or-medium-sand",
  waterC: null,
  moistureGap: null,
};

export const groundStated = ({ soil, waterC, moistureGap }: GroundSaid): GroundStated => ({
  alphaPerMm: ALPHA_PER_MM[soil],
  waterC,
  moistureGap,
});

/** One model beside the others. */
export interface FitRow {
  readonly model: ModelId;
  readonly fit: Result<Fit>;
  /** AICc above the lowest one of this ring; null without one. */
  readonly above: number | null;
  readonly chosen: boolean;
}

/** All five, in the order of the science room; the reason of each where no curve can be laid at all. */
export const fitRows = ({ fits }: RingForSpecialist): Result<readonly FitRow[]> => {
  if (!fits.ok) return fits;
  const { chosen } = fits.value;
  const criteria = MODELS.flatMap((model) => {
    const fit = fits.value.fits[model];
    return fit.ok && fit.value.aicc.ok ? [fit.value.aicc.value] : [];
  });
  const lowest = Math.min(...criteria);
  return ok(
    MODELS.map((model) => {
      const fit = fits.value.fits[model];
      const above = fit.ok && fit.value.aicc.ok ? fit.value.aicc.value - lowest : null;
      return { model, fit, above, chosen: chosen.model === model };
    }),
  );
};

/** One equation for the conductivity, with what is to be said beside it alone. */
export interface KfsRow {
  readonly way: KfsWay;
  readonly kfs: Result<Conductivity>;
  readonly own: readonly Caution[];
}

const nameOf = ({ code, facts }: Caution): string => `${code} ${JSON.stringify(facts)}`;

/**
 * The equations, and what holds for all of them that came out: said once, and not what the sheet says already.
 *
 * @param said cautions that stand on the sheet
 */
export const kfsRows = (
  { kfs }: RingForSpecialist,
  said: readonly Caution[],
): { readonly rows: readonly KfsRow[]; readonly forAll: readonly Caution[] } => {
  const known = new Set(said.map(nameOf));
  const out = KFS_WAYS.flatMap((way) => {
    const one = kfs[way];
    return one.ok ? [one.value] : [];
  });
  const isForAll = (caution: Caution): boolean =>
    out.every(({ cautions }) => cautions.some((one) => nameOf(one) === nameOf(caution)));
  const fresh = (cautions: readonly Caution[]) =>
    onceEachCaution(cautions).filter((one) => !known.has(nameOf(one)));
  return {
    rows: KFS_WAYS.map((way) => {
      const one = kfs[way];
      return {
        way,
        kfs: one,
        own: one.ok ? fresh(one.value.cautions).filter((caution) => !isForAll(caution)) : [],
      };
    }),
    forAll: fresh(out[0]?.cautions ?? []).filter(isForAll),
  };
};

/** Every answer that is shown: its methods and sources stand under "How this was worked out". */
export const workedAnswers = ({
  fits,
  kfs,
  permeability,
}: RingForSpecialist): readonly Pick<Worked, "methods" | "sources">[] => [
  ...(fits.ok ? MODELS.map((model) => fits.value.fits[model]) : []).flatMap((one) =>
    one.ok ? [one.value] : [],
  ),
  ...KFS_WAYS.flatMap((way) => {
    const one = kfs[way];
    return one.ok ? [one.value] : [];
  }),
  ...(permeability.ok ? [permeability.value] : []),
];
