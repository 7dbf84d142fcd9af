/** What is plausible at a ring, in the unit that is typed; what is not is asked about and kept after "yes". */
import type { PlausibleBounds } from "../../../record/number.ts";
import type { InRing } from "../../../record/ring/entries.ts";
import { inUnit } from "../../../record/units.ts";
import type { DayRing } from "./day.ts";
import type { LevelUnit, VolumeUnit } from "./hand.ts";

/** Where nobody measured how high the ring is, in metres (own choice, no source). */
const HIGHEST_M = 0.4;
/** More than this is carried in several bottles: 25 L weigh 25 kg (own choice, no source). */
const LARGEST_POUR_M3 = 0.025;

/** A level can be no deeper than its ring is high. */
export const levelBounds = ({ kit }: DayRing, unit: LevelUnit, which: InRing): PlausibleBounds => {
  const heightsM = (which === "inner" ? kit.ring : kit.outer)?.heightsM ?? [];
  const highM = heightsM.length === 0 ? HIGHEST_M : Math.max(...heightsM);
  return { min: 0, max: inUnit(highM, unit) };
};

export const pourBounds = (unit: VolumeUnit): PlausibleBounds => ({
  min: 0,
  max: inUnit(LARGEST_POUR_M3, unit),
});
