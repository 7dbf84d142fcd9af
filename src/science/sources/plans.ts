/** Sources of positions and plans. */
import type { Source } from "../source.ts";

export const PLANS_SOURCES = {
  "snyder-1987": {
    citation:
      "Snyder (1987), Map Projections: A Working Manual, USGS Professional Paper 1395, pp. 16-19, 187-190",
    mark: "not-checked",
  },
  "vincenty-1975": {
    citation: "Vincenty (1975), Survey Review 23(176): 88-93",
    mark: "not-checked",
  },
  "declination-definition": {
    citation: "Magnetic declination counted positive to the east, as the World Magnetic Model does",
    mark: "not-checked",
  },
  "cochran-1977": {
    citation: "Cochran (1977), Sampling Techniques, chapters 5 (strata) and 8 (systematic sampling)",
    mark: "not-checked",
  },
  "diggle-2003": {
    citation: "Diggle (2003), Statistical Analysis of Spatial Point Patterns: simple sequential inhibition",
    mark: "not-checked",
  },
  "freeman-shapira-1975": {
    citation: "Freeman & Shapira (1975), Communications of the ACM 18: 409-413",
    mark: "not-checked",
  },
  "held-karp-1962": {
    citation: "Held & Karp (1962), Journal of the Society for Industrial and Applied Mathematics 10: 196-210",
    mark: "not-checked",
  },
  "croes-1958": {
    citation: "Croes (1958), Operations Research 6: 791-812: turning stretches of a round",
    mark: "not-checked",
  },
  "w-walk-practice": {
    citation: "Walking a W through a field, as commonly advised for composite soil samples",
    mark: "common-practice",
  },
  "field-minutes": {
    citation: "Minutes for a line, a hole and a ring, as people in the field reckon; time your own",
    mark: "common-practice",
  },
} as const satisfies Readonly<Record<string, Source>>;
