/** Where the formulas and constants come from, for "How this was worked out". */

import type { Source } from "./source.ts";
import { COMPARISON_SOURCES } from "./sources/comparison.ts";
import { EARTHWORM_SOURCES } from "./sources/earthworms.ts";
import { INFILTRATION_SOURCES } from "./sources/infiltration.ts";
import { PLANS_SOURCES } from "./sources/plans.ts";
import { STORMS_SOURCES } from "./sources/storms.ts";
import { STRAW_SOURCES } from "./sources/straw.ts";
import { WATER_SOURCES } from "./sources/water.ts";

export type { Mark, Source } from "./source.ts";

export const SOURCES = {
  "missouri-g1570": {
    citation: "University of Missouri Extension, G1570 (1993): line-transect method for crop residue",
    mark: "published",
    address: "http://extension.missouri.edu/publications/DisplayPrinterFriendlyPub.aspx?P=G1570",
  },
  "nebraska-254": {
    citation: "University of Nebraska-Lincoln, Biological Systems Engineering, faculty publication 254",
    mark: "published",
    address: "http://digitalcommons.unl.edu/biosysengfacpub/254/",
  },
  "nebraska-g20": {
    citation: "University of Nebraska-Lincoln, G-20 (1990), with the Soil Conservation Service definition",
    mark: "published",
    address: "https://digitalcommons.unl.edu/biosysengfacpub/289/",
  },
  "cover-75": {
    citation: "Three quarters of the ground covered, as commonly aimed at for protection",
    mark: "common-practice",
  },
  "laflen-1981": {
    citation: "Laflen, Amemiya & Hintz (1981), Journal of Soil and Water Conservation 36: 341-343",
    mark: "not-checked",
  },
  "rickman-1996": {
    citation: "Rickman, Waldman, Morrison & McCool (1996): residue in strips and equally spaced marks",
    mark: "published",
    address: "https://ars.usda.gov/research/publications/publication/?seqNo115=75633",
  },
  "lohr-1999": {
    citation: "Lohr (1999), Sampling: Design and Analysis, chapter 5 (clusters), example 5.2, p. 137",
    mark: "published",
  },
  "korn-graubard-1999": {
    citation: "Korn & Graubard (1999), Analysis of Health Surveys: logit interval with design-based t",
    mark: "not-checked",
  },
  "wilson-1927": {
    citation: "Wilson (1927), Journal of the American Statistical Association 22: 209-212",
    mark: "not-checked",
  },
  "clopper-pearson-1934": {
    citation: "Clopper & Pearson (1934), Biometrika 26: 404-413",
    mark: "not-checked",
  },
  "nist-handbook": {
    citation: "NIST/SEMATECH e-Handbook of Statistical Methods, sections 1.3.5.2 and 1.3.6.7.2",
    mark: "not-checked",
    address: "https://www.itl.nist.gov/div898/handbook/",
  },
  "largest-remainder": {
    citation: "Largest-remainder rounding, so that shown percentages sum to 100",
    mark: "common-practice",
  },
  "w3c-geolocation": {
    citation: "W3C Geolocation: accuracy is the radius in metres at 95 % confidence",
    mark: "published",
    address: "https://www.w3.org/TR/geolocation/",
  },
  "nima-tr8350-2": {
    citation: "NIMA TR8350.2 (third edition, 2000), Department of Defense World Geodetic System 1984",
    mark: "not-checked",
  },
  geometry: {
    citation: "Plane geometry and the round normal distribution, worked out here",
    mark: "derived",
  },
  "own-rule": { citation: "A rule of this product, stated in full beside its formula", mark: "derived" },
  ...EARTHWORM_SOURCES,
  ...INFILTRATION_SOURCES,
  ...COMPARISON_SOURCES,
  ...STRAW_SOURCES,
  ...WATER_SOURCES,
  ...PLANS_SOURCES,
  ...STORMS_SOURCES,
} as const satisfies Readonly<Record<string, Source>>;

export type SourceId = keyof typeof SOURCES;
