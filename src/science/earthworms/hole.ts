/** One spade hole: from its record, and what it says by itself. */

import type { Layer } from "../../record/hole/entries.ts";
import type { HoleReading } from "../../record/hole/reading.ts";
import { personMinutesOf } from "../../record/hole/sorting.ts";
import type { HoleTemplate } from "../../record/kinds/kit.ts";
import type { HoleHeader } from "../../record/kinds/observation.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import { SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Estimate } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { conditionCautions } from "./conditions.ts";
import { type HoleCount, holeAreaM2, wormsFound } from "./hole-count.ts";

/**
 * The hole of a record. The template's sides stand before own sides, so that a corrected template corrects
 * its holes.
 *
 * @param template the one that the header names; null when it names none or it is not on this device
 * @returns `workedDaysAgo` is null: the field's events know it, not the hole
 */
export const holeOf = (
  reading: HoleReading,
  header: HoleHeader,
  template: Pick<HoleTemplate, "sidesM"> | null,
): HoleCount => {
  const count = (layer: Layer): number | null =>
    reading.found[layer].looked ? reading.found[layer].count : null;
  const { placed } = reading;
  return {
    sidesM: template?.sidesM ?? header.sidesM,
    depthM: header.depthM,
    found: { mulch: count("mulch"), soil: count("soil"), "mustard-water": count("mustard-water") },
    placed: {
      young: placed.young.count,
      surface: placed.surface.count,
      topsoil: placed.topsoil.count,
      deep: placed.deep.count,
    },
    left: reading.left,
    settled: reading.settled,
    finished: reading.finished,
    soilTemperatureC: reading.soilTemperature?.value ?? null,
    wetness: reading.wetness?.value ?? null,
    personMinutes: personMinutesOf(reading),
    workedDaysAgo: null,
    place: header.at.position,
  };
};

const alone = (value: number, unit: Estimate["unit"], hole: HoleCount): Estimate => {
  const cautions = conditionCautions([hole]);
  const methods: MethodId[] = cautions.length > 0 ? ["hole-density", "hole-conditions"] : ["hole-density"];
  return {
    value,
    unit,
    n: 1,
    sampledBy: "holes",
    range: failed("science/too-few-holes", { needs: SAMPLES_FOR_A_RANGE, has: 1 }),
    cautions,
    methods,
    sources: sourcesOf(methods),
  };
};

/**
 * Worms of one hole, with what may have made them few. One hole has no range (`science/too-few-holes`).
 *
 * @returns none found is 0; reasons as `wormsFound`
 *
 * @example
 * wormsInHole(hole); // 14 worms per hole
 */
export const wormsInHole = (hole: HoleCount): Result<Estimate> => {
  const worms = wormsFound(hole);
  return worms.ok ? ok(alone(worms.value, "/{hole}", hole)) : worms;
};

/**
 * Worms of one hole per square metre: count over the area of the hole. The depth does not enter.
 *
 * @returns none found is 0; reasons as `wormsFound` and `holeAreaM2`
 *
 * Source: ISO 23611-1 (counts per area of a plot dug and sorted by hand).
 *
 * @example
 * wormsPerM2OfHole(hole); // 9 in 20 × 20 cm: 225 per m²
 */
export const wormsPerM2OfHole = (hole: HoleCount): Result<Estimate> => {
  const worms = wormsFound(hole);
  if (!worms.ok) return worms;
  const area = holeAreaM2(hole.sidesM);
  return area.ok ? ok(alone(worms.value / area.value, "/m2", hole)) : area;
};
