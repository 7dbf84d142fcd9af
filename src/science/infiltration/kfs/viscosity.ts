/** How thick water is at a temperature, and a conductivity brought to 20 °C. */
import { failed, ok, type Result } from "../../../record/result.ts";
import { KELVIN_AT_0_C, VISCOSITY_SCALE_K } from "../../constants/storms.ts";

/** Factors and powers of the four terms. */
const TERMS = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.459_03, -40],
] as const;

const HOTTEST_C = 60;

/**
 * Viscosity of liquid water at 0.1 MPa: `μ = Σ a·x^b`, `x = (T + 273.15)/300`. The power law that standards for
 * the laboratory print is 6 % too high at 5 °C and 30 % at 1 °C, which is where fields are tested.
 *
 * @param celsius from 0 to 60
 * @returns µPa·s; `science/not-a-water-temperature` outside of that
 *
 * Source: IAPWS 2008 (from memory; gives 1001.6 µPa·s at 20 °C as it should).
 *
 * @example
 * waterViscosity(20).value // => ≈ 1001.6
 */
export const waterViscosity = (celsius: number): Result<number> => {
  if (!(celsius >= 0 && celsius <= HOTTEST_C)) return failed("science/not-a-water-temperature");
  const x = (celsius + KELVIN_AT_0_C) / VISCOSITY_SCALE_K;
  return ok(TERMS.reduce((sum, [factor, power]) => sum + factor * x ** power, 0));
};

/**
 * A conductivity as it would be with water of 20 °C: `K₂₀ = K·μ/μ₂₀`. For conductivities only, never for the
 * rate of a ring that is given a class or compared, and shown beside the uncorrected value, never instead of it.
 *
 * @param mmPerH 0 or more
 * @returns mm/h; `science/not-a-rate`, `science/not-a-water-temperature`
 *
 * @example
 * conductivityAt20(30, 8).value // => ≈ 41.48
 */
export const conductivityAt20 = (mmPerH: number, celsius: number): Result<number> => {
  if (!(mmPerH >= 0 && Number.isFinite(mmPerH))) return failed("science/not-a-rate");
  const viscosity = waterViscosity(celsius);
  if (!viscosity.ok) return viscosity;
  const at20 = waterViscosity(20);
  if (!at20.ok) return at20;
  const mmPerHAt20 = (mmPerH * viscosity.value) / at20.value;
  return Number.isFinite(mmPerHAt20) ? ok(mmPerHAt20) : failed("science/not-a-rate");
};
