import type { TradeWords } from "../../parts/trade.ts";

/** Words of a visit: one field on one day. */
export const visitWords = (trade: TradeWords) => ({
  visit: {
    today: (field: string) => `Today in ${field}`,
    unnamed: "a field not named yet",
    on: (day: string) => `Visit of ${day}`,
    gone: "This visit is not on this device.",
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
    noStrips: "Nothing measured here yet. Count the first line: the strip is chosen or added there.",
    noLine: "No finished line yet.",
    soFar: "ground cover so far",
    allAt: (place: string) => `all lines: ${place}`,
    unlike: (places: string) =>
      `Lines of this strip lie at different places: ${places}. Compare like with like before you read this number.`,
    placeNotSaid: "place not said",
    stripsWithout: "Strips without a line today",
    stripsWithoutThen: "Strips without a line that day",
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
    fieldPage: "Everything of this field",
  },
});
