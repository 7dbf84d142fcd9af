/** Temperature and wetness of the soil: asked only where they matter. */
import type { RecordId } from "../../../record/ids.ts";
import { LOW_WORMS_PER_M2 } from "../../../science/constants.ts";
import { holeAreaM2 } from "../../../science/earthworms/hole-count.ts";
import type { Reader } from "../../parts/reader.ts";
import { countOfHole, type DayHole, holesOfVisit } from "./holes-of-day.ts";
import { readDegrees } from "./sizes.ts";
import type { ConditionsBefore } from "./stand.ts";
import type { HoleWords } from "./words.ts";

/** Whether few or no worms were found, so that cold or dry soil may be why. */
export const isLow = (hole: DayHole): boolean => {
  const { reading } = hole;
  if (!reading.settled) return false;
  const area = holeAreaM2(countOfHole(hole).sidesM);
  return area.ok ? reading.foundTotal / area.value < LOW_WORMS_PER_M2 : reading.foundTotal === 0;
};

/** Conditions of the last other hole of the visit where somebody wrote them down; null when none did. */
export const conditionsBefore = async (
  records: Reader,
  visit: RecordId<"visit">,
  hole: RecordId<"observation">,
): Promise<ConditionsBefore | null> => {
  const holes = await holesOfVisit(records, visit);
  const before = holes.findLast(
    ({ id, reading }) => id !== hole && (reading.soilTemperature !== null || reading.wetness !== null),
  );
  if (before === undefined) return null;
  const { soilTemperature, wetness } = before.reading;
  return { temperature: soilTemperature?.entry ?? null, wetness: wetness?.entry ?? null };
};

/** "9 °C, moist"; empty when nothing was written down. */
export const conditionsWords = (words: HoleWords, { temperature, wetness }: ConditionsBefore): string =>
  [
    ...(temperature === null ? [] : [readDegrees(temperature)]),
    ...(wetness === null ? [] : [words.conditions.wetness[wetness.is]]),
  ].join(", ");

/** Temperatures of soil that are taken without asking, in each unit (own choice, no source). */
export const USUAL_SOIL = { C: { min: -1, max: 35 }, F: { min: 30, max: 95 } } as const;
/** Degrees beyond which no soil is, in each unit (own choice, no source). */
export const POSSIBLE_SOIL = { C: { min: -40, max: 80 }, F: { min: -40, max: 176 } } as const;
