import type { GuideWord } from "../../../science/earthworms/guides.ts";
import { plural } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { holes, number } from "./words.counts.ts";

/** Words of the holes of one strip. */
export const stripWords = () => ({
  strip: {
    title: "Worms",
    perHole: "worms per hole so far",
    range: (low: string, high: string, count: string) => `${low} to ${high}, ${count}`,
    tooFew: (count: string) => `too few to give a range, ${count}`,
    perM2Only: "worms per m² so far",
    perM2: (value: string, low: string, high: string) => `${value} per m², ${low} to ${high}`,
    perM2NoRange: (value: string) => `${value} per m²`,
    none: "No hole is finished yet.",
    open: (count: number) => `${holes(count)} not finished`,
    more: (low: number, high: number) =>
      high === 0
        ? "Enough holes for give or take a quarter."
        : low === high
          ? `About ${number(low)} more ${plural(low, TONGUE, { one: "hole", other: "holes" })} for give or take a quarter.`
          : `About ${number(low)} to ${number(high)} more holes for give or take a quarter.`,
    groupsTitle: "Holes with grown worms of each kind",
    group: { surface: "surface", topsoil: "topsoil", deep: "deep burrowers" },
    says: {
      "below-survey-mean": "below the mean of the fields surveyed",
      "survey-mean": "at or above the mean of the fields surveyed",
      high: "high",
      few: "few",
      middling: "between few and many",
      many: "many",
      "below-good": "below what the guide calls good",
      good: "good",
      excellent: "excellent",
      "not-high": "not above what the guide calls high",
    } satisfies Record<GuideWord, string>,
    share: (seen: number, all: number) => `${number(seen)} of ${holes(all)}`,
    shareRange: (low: string, high: string) => `${low} to ${high} %`,
    notDetermined: "not determined",
    notDeterminedIn: (count: number) => `not determined in ${holes(count)}`,
    guess: (value: string) => `Guessed before the first hole: ${value} per hole.`,
    guidesTitle: "What published guides say of it",
    guide: (says: string, name: string) => `${says}, by ${name}`,
    guidesDiffer:
      "Guides disagree: one asks for about four times as many worms as another. The farm's own old-grass spot says more than any.",
    noGuide: "No guide fits this hole size, depth and season.",
    unclear: (low: string, high: string) => `by its range anything from ${low} to ${high}`,
    goOn: "go on",
    cautions: "To bear in mind",
  },
});
