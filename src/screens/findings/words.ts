import { writeNumber } from "../parts/numbers.ts";
import type { TradeWords } from "../parts/trade.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";

/** A chance as people say it; nearly sure is never said as sure. */
const inHundred = (chance: number): string => {
  const whole = Math.round(chance * 100);
  if (whole >= 100) return "more than 99 in 100";
  return whole <= 0 ? "less than 1 in 100" : `about ${writeNumber(whole, TONGUE)} in 100`;
};

const english = (trade: TradeWords) => ({
  findings: {
    title: "Findings",
    none: "No finding yet. Results stand here once a line is finished, a hole is closed or a ring was read for half an hour.",
    working: "Being worked out …",
    onDay: {
      cover: (day: string) => `Ground cover, ${day}`,
      hole: (day: string) => `Worms per hole, ${day}`,
      m2: (day: string) => `Worms per m², ${day}`,
      soak: (minutes: string, day: string) => `Soaked in after ${minutes} min, ${day}`,
    },
    wormsPerHole: (worms: string) => `${worms} per hole`,
    ringsStood: (rings: number) => `${writeNumber(rings, TONGUE)} rings stood there`,
    ringsCompare: "Ring figures are for comparing places, not for sizing drains or structures.",
    twoPlaces:
      "One strip of each: this compares the places as they lie, and ground and treatment cannot be told apart.",
    grass: (names: string, day: string) =>
      `Old-grass spot${names === "" ? "" : `, ${names}`}${day === "" ? "" : ` (${day})`}`,
    yardstick: "The old-grass spot is the farm's own yardstick, and part of no strip.",
    reps: "Strips of several reps stand here side by side; each is one place.",
    unlike: {
      cover: "Not like with like: the places of the lines against the row differ, or their shares do.",
      worms: "Not like with like: the places of the holes against the row differ, or their shares do.",
      soak: "Not like with like: the places of the rings against the row differ, or their shares do.",
    },
    since: (day: string, strip: string) =>
      `On ${day} only ${strip} has a number. Here stands the last day with two strips.`,
    stripPlaces: (strip: string, places: string) => `${strip}: ${places}.`,
    lacking: {
      cover: "no finished line yet",
      worms: "no closed hole yet",
      soak: (minutes: string) => `no ring was read for ${minutes} min`,
    },
    target: (percent: string) => `target ${percent} %`,
    aimedAt: { residue: "residue", "ground-cover": "ground cover" },
    chance: (chance: number, what: string, percent: string, strip: string) =>
      `${strip}: the chance that true ${what} is at least ${percent} % is ${inHundred(chance)}.`,
    chanceSampling: "This speaks of which places the lines fell on, not of misreading.",
    localFirst: "Local codes, conservation rules and licensed advice come first.",
    noChance: (strip: string, what: string, percent: string) =>
      `${strip}: too few lines to say how likely it reaches ${percent} % ${what}.`,
    noChances: (what: string, percent: string) =>
      `Too few lines to say how likely a strip reaches ${percent} % ${what}.`,
    showTable: "Show as table",
    showDrawing: "Show as drawing",
    besides:
      "This page looks at the place against the row alone. What else is unlike is said under Side by side.",
    beside: "Side by side",
    besideOn: (day: string) => `Side by side, ${day}`,
    toField: "Everything of this field",
    more: "Show more fields",
  },
  workedOut: {
    title: "How this was worked out",
    gone: "This strip is not on this device.",
    noLines: "No line of this strip was finished on that day.",
    readings: "What was read",
    line: "Line",
    hits: "Hits",
    of: (hits: string, marks: string) => `${hits} of ${marks}`,
    place: "Place",
    placeNotSaid: "not said",
    notFinished: "not finished, left out",
    nothingRead: "nothing was read, left out",
    notRead: (count: number) => `${writeNumber(count, TONGUE)} not read`,
    hitMeans: (stones: boolean) =>
      stones
        ? `A mark hits when the raindrop meets residue, living green or ${trade.stone} there first. ${trade.stone.charAt(0).toUpperCase()}${trade.stone.slice(1)} counts because you said so in the settings.`
        : `A mark hits when the raindrop meets residue or living green there first. ${trade.stone.charAt(0).toUpperCase()}${trade.stone.slice(1)} is reported and does not count.`,
    allKinds: "What lay at the marks, in percent",
    cautions: "To bear in mind",
    noCautions: "Nothing beyond the range itself.",
    formulas: "Formulas",
    constants: "Numbers that the formulas hold",
    sources: "Sources",
    targetSetting: "target for the chance",
    stonesSetting: `${trade.stone} counts as ground cover`,
    yes: "yes",
    no: "no",
    showLines: "Show all lines",
    toVisit: "To this visit",
    toMethods: "All methods and sources",
    soFar: "ground cover so far",
    kinds: {
      "residue-flat": "residue, flat",
      "residue-standing": "residue, standing",
      green: "green",
      bare: "bare",
      stone: trade.stone,
      own: "own key",
    },
    yourSettings: "Your settings",
  },
});

/** Words of the findings, and of how a number was worked out. */
export type FindingsWords = ReturnType<typeof english>;
export const FINDINGS_WORDS: WordsOf<FindingsWords> = { en: english };
