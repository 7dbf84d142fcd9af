import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";

/** Words of the start of Measure. */
export const homeWords = () => ({
  home: {
    title: "Measure",
    question: "Which field are you in?",
    open: "Not finished yet",
    goOn: "go on",
    noTotals: "no totals yet",
    begun: (when: string) => `begun ${when}`,
    today: "Today",
    fields: "Fields",
    lastVisit: (day: string) => `last visit ${day}`,
    neverVisited: "not measured yet",
    addField: "Add a field",
    nameLater: "Measure now, name the field later",
    noFields: "No field yet. Add one, or measure now and name it later: nothing is lost by it.",
    more: (count: number) => `Show ${writeNumber(count, TONGUE)} more`,
  },
});
