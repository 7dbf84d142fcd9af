/** Reference evapotranspiration from temperatures alone. */
import { ok, type Result } from "../../record/result.ts";
import * as k from "../constants/water.ts";
import { checkedWarmth, type DayWarmth } from "./air.ts";
import { where } from "./bounded.ts";

/**
 * Hargreaves: `ET_o = 0.0023·(T_mean + 17.8)·√(T_max − T_min)·R_a`, R_a as water in mm per day. With R_a in
 * megajoules the answer would be 2.45 times too much.
 *
 * @param raMm extraterrestrial radiation as water (`radiationAsWater`), mm per day, 0 to 25
 * @returns mm per day; 0 below −17.8 °C. `science/out-of-bounds` or reasons as `checkedWarmth`
 *
 * Source: FAO-56, eq. 52.
 *
 * @example
 * hargreaves({ maxC: 26.6, minC: 14.8 }, 16.56).value // => ≈ 5.04
 */
export const hargreaves = (day: DayWarmth, raMm: number): Result<number> => {
  const good = checkedWarmth(day);
  if (!good.ok) return good;
  const { maxC, minC } = day;
  const mean = (maxC + minC) / 2;
  const formula = where(
    [["radiation as water", raMm, 0, 25]],
    () => k.HARGREAVES * (mean + k.HARGREAVES_SHIFT_C) * Math.sqrt(maxC - minC) * raMm,
  );
  return formula.ok ? ok(Math.max(0, formula.value)) : formula;
};
