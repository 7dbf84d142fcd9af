import { writeNumber } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";
import { visitWords } from "./words.shared.ts";

const english = (trade: TradeWords) => ({
  visit: {
    today: (field: string) => `Today in ${field}`,
    unnamed: "a field not named yet",
    on: (day: string) => `Visit of ${day}`,
    ...visitWords().visit,
    nameLabel: "What is this field called?",
    nameHint: "You can say it later.",
    nameKeep: "Keep this name",
    same: "Is it the same field?",
    sameHint:
      "A field of this name is here already. If it is the same one, what is measured here stands with it.",
    sameYes: (field: string, farm: string | null) =>
      farm === null ? `Yes, it is ${field}` : `Yes, it is ${field}, ${farm}`,
    sameNo: "No, another field of that name",
    countLine: "Count a line",
    digHole: "Dig a hole",
    setRing: "Set out a ring",
    ringBoard: (rings: number) => `Rings of the day: ${writeNumber(rings, TONGUE)}`,
    noStrips: "Nothing measured here yet. The strip is chosen or added with the first line, hole or ring.",
    noLine: "No finished line yet.",
    soFar: "ground cover so far",
    allAt: (place: string) => `all lines: ${place}`,
    unlike: (places: string) =>
      `Lines of this strip lie at different places: ${places}. Compare like with like before you read this number.`,
    placeNotSaid: "place not said",
    stripsWithout: "Strips not measured today",
    stripsWithoutThen: "Strips not measured that day",
    lines: "Lines",
    goOn: "go on",
    workedOut: "How this was worked out",
    harvestYear: `${trade.harvestYear.charAt(0).toUpperCase()}${trade.harvestYear.slice(1)}`,
    harvestYearNone: (year: string) => `Not said: this visit stands under the calendar year ${year}.`,
    harvestYearLabel: `The year of the harvest that this visit belongs to`,
    harvestYearSay: `Say the ${trade.harvestYear}`,
    harvestYearWrong: "That is not a year. Write it with four digits.",
    harvestYearOdd: (typed: string, day: string) => `${typed} for a visit of ${day}: is that what you mean?`,
    harvestYearYes: "Yes, I mean that",
    fieldDeleted:
      "This field was deleted. What was measured here stays on record. Bring the field back under Deleted records to go on.",
    far: (distance: string) =>
      `A line of this day lies ${distance} from every other line of this field. Is it the right field, and was the position right?`,
    goesOn: (today: string, day: string) =>
      `It is ${today} by now. What is counted here still stands under ${day}.`,
    beginAnew: (today: string) => `Begin a visit of ${today}`,
    ahead:
      "By the clock of this device this day is still to come. If the clock was wrong when you measured, correct the day below.",
    measureToday: "Measure here today",
    addThen: "Add a line to that day",
    moreLines: (count: number) => `Show ${writeNumber(count, TONGUE)} more`,
    onAnotherDay: (day: string, clock: string) => `${day}, ${clock}`,
    day: "Day",
    dayCorrect: "Correct the day",
    dayLabel: "On which day was it measured?",
    dayHint: (day: string) => `${day}. The times of the single lines stay as the device wrote them.`,
    dayMissing: "Choose a day first.",
    fieldPage: "Everything of this field",
  },
});

/** Words of a visit, one field on one day, beside those of the catalogue. */
export const VISIT_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
