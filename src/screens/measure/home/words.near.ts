/** Words for the fields that one may be standing at. */
import type { WordsOf } from "../../parts/words-of.ts";

const english = () => ({
  title: "Near here",
  ask: "Which fields are near me?",
  looking: "Looking for your position…",
  none: (far: string) => `No field within ${far} of here has a boundary or an earlier measurement.`,
  inside: "you stand in it",
  toEdge: (distance: string) => `${distance} to its edge`,
  toMeasured: (distance: string) => `${distance} to an earlier measurement`,
  noFarm: "farm not said",
  goodTo: (accuracy: string) => `Your position is within about ${accuracy}: look which field it is.`,
  coarse: (accuracy: string) =>
    `Your position is only within about ${accuracy}. The field that you stand in may be another one.`,
  old: (ago: string) =>
    `No new position for ${ago}. Where you were then is not where you are now, so no field is offered.`,
});

export const NEAR_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
