/** What units are called in full. */
import type { Unit } from "../../record/units.ts";
import type { WordsOf } from "./words-of.ts";

export const UNIT_WORDS: WordsOf<Readonly<Record<Unit, string>>> = {
  en: () => ({
    mm: "mm",
    cm: "cm",
    m: "m",
    in: "inches",
    ft: "feet",
    ha: "hectares",
    ac: "acres",
    mL: "mL",
    L: "litres",
    "fl-oz": "US fluid ounces",
    gal: "US gallons",
    "%": "%",
  }),
};
