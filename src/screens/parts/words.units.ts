/** What units are called in full. */
import type { Unit } from "../../record/units.ts";
import type { WordsOf } from "./words-of.ts";

export const UNIT_WORDS: WordsOf<Readonly<Record<Unit, string>>> = {
  en: ({ metre }) => ({
    mm: "mm",
    cm: "cm",
    m: "m",
    in: "inches",
    ft: "feet",
    ha: "hectares",
    ac: "acres",
    mL: "mL",
    // Spelled as the metre is.
    L: metre === "meter" ? "liters" : "litres",
    "fl-oz": "US fluid ounces",
    gal: "US gallons",
    "%": "%",
  }),
};
