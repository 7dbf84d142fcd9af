import type { LandUse } from "../../../record/kinds/observation.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { holes, number } from "./words.counts.ts";

/** A month by its name in this region. */
const monthName = (month: number, tongue: string): string =>
  new Intl.DateTimeFormat(tongue, { month: "long", timeZone: "UTC" }).format(
    new Date(Date.UTC(2024, month - 1)),
  );
const listOf = (parts: readonly string[]): string =>
  new Intl.ListFormat(TONGUE, { type: "conjunction" }).format(parts);

/** Words of the screen before a hole. */
export const digWords = (trade: TradeWords) => ({
  months: (months: readonly number[]) => listOf(months.map((month) => monthName(month, trade.tongue))),
  dig: {
    title: "Dig a hole",
    landUse: "What is the ground used for?",
    landUses: {
      cropland: "cropland",
      grassland: "grassland",
      "orchard-or-vineyard": "orchard or vineyard",
    } satisfies Record<LandUse, string>,
    method: "Which worm method?",
    own: "own sizes",
    ownHint: "a hole template from the kit, or sides and depth typed",
    minutes: (minutes: string) => `sort ${minutes} min`,
    mustard: "with mustard water",
    memory: "from memory, not yet checked",
    perField: (count: number) => `${holes(count)} a field`,
    offSeason: (months: string) =>
      `This method is meant for ${months}. At other times there may be fewer worms near the top. Dig all the same: the season stands beside the number.`,
    season: (months: string) => `This method is meant for ${months}, where it was written.`,
    template: "Which hole template?",
    noTemplate: "none, sides typed",
    addTemplate: "Add a hole template",
    side: (unit: string) => `One side, in ${unit}`,
    otherSide: (unit: string) => `Other side, in ${unit}`,
    depth: (unit: string) => `Depth, in ${unit}`,
    ownMinutes: "Minutes to sort (may stay empty)",
    ownMustard: "Wait for mustard water, minutes (may stay empty)",
    notASize: "That is too small or too large for a hole.",
    notMinutes: "That is too short or too long.",
    stand: "Stand still at the hole",
    placeQuestion: "Where does it lie?",
    startNumber: (index: number) => `Start hole ${number(index)}`,
    startAs: (index: number, before: number) => `Start hole ${number(index)}, as hole ${number(before)}`,
    needs: "Choose a strip first.",
    needsSize: "Write the sides and the depth first.",
    guess: "Guess first: how many worms per hole?",
    guessHint: "It is kept beside the result. May stay empty.",
    guessed: (value: string) => `Guessed on this strip: ${value} worms per hole.`,
    notAGuess: "That is no number of worms.",
    leftOut: "What stands as the guess is no number of worms: the hole begins without it.",
  },
});
