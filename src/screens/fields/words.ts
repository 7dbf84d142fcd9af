import { plural, writeNumber } from "../parts/numbers.ts";
import type { TradeWords } from "../parts/trade.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";
import { sharedFieldWords } from "./words.shared.ts";

const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** Words of the fields: list, adding one, the page of one. */
const english = (trade: TradeWords) => ({
  fields: {
    ...sharedFieldWords().fields,
    title: "Fields",
    add: "Add a field",
    none: "No field yet. Add the first one; its name is enough.",
    noFarm: "Farm not said",
    lastVisit: (day: string) => `last visit ${day}`,
    neverVisited: "not measured yet",
    more: (count: number) => `Show ${writeNumber(count, TONGUE)} more`,
    newTitle: "Add a field",
    name: "What is it called?",
    farm: "Which farm does it belong to?",
    farmNone: "not said",
    farmNew: "another farm",
    farmName: "Name of the farm",
    hereAlready: (field: string, farm: string | null) =>
      `${farm === null ? field : `${field}, ${farm}`} is here already. Go there`,
    measureHere: "Measure here now",
    backToList: "Back to the list",
    keptHint: "The field is written down with either key. Name and farm can be changed later.",
    gone: "This field is not on this device.",
    deleted: "This field was deleted. It lies under Deleted records.",
    correct: "Change name or farm",
    measureToday: "Measure here today",
    strips: "Strips",
    noStrips: "No strip yet. The whole field can be a strip too.",
    addStrip: "Add a strip",
    changeStrips: "Change a strip",
    stripName: "Name of the strip",
    stripDone: "What was done there?",
    stripWhole: "This strip is the whole field",
    stripRep: "Rep",
    stripRepHint: "Number of the block or pair, where strips are repeated. Leave it empty for none.",
    stripRepWrong: "A rep is a whole number from 1 to 1000.",
    rep: (rep: number) => `rep ${writeNumber(rep, TONGUE)}`,
    cover: "Ground cover",
    noFinished: "no finished line",
    unfinished: (count: number) =>
      `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "line is", other: "lines are" })} not finished`,
    goOnWith: (count: number) =>
      plural(count, TONGUE, { one: "Go on with it", other: "Go on with the newest" }),
    harvestYear: (year: number) => `${upper(trade.harvestYear)} ${year}`,
    calendarYear: (year: number) => `${year} (calendar year, ${trade.harvestYear} not said)`,
    showHarvestYear: (year: number) => `Show ${trade.harvestYear} ${year}`,
    showCalendarYear: (year: number) => `Show ${year} (${trade.harvestYear} not said)`,
    visits: "Visits",
    lines: "Lines",
    placeNotSaid: "place not said",
    delete: "Delete this field",
    deleteAsk: "Delete this field?",
    deleteHint:
      "What was measured on it stays on record. The field can be brought back for 30 days under Deleted records.",
    deleteStrip: "Delete this strip",
    deleteStripAsk: "Delete this strip?",
    deleteStripHint:
      "Its lines stay on record and in the results. The strip can be brought back for 30 days under Deleted records.",
    deleteYes: "Yes, delete it",
  },
});

export type FieldWords = ReturnType<typeof english>;

export const FIELD_WORDS: WordsOf<FieldWords> = { en: english };
