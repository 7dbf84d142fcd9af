/** What the methods are called, and how well their sources stand. */
import type { MethodId } from "../../science/methods.ts";
import type { Mark } from "../../science/sources.ts";
import type { MethodWords } from "./method-words.ts";
import { comparisonMethods } from "./specialist/comparison.ts";
import { earthwormMethods } from "./specialist/earthworms.ts";
import { infiltrationMethods } from "./specialist/infiltration.ts";
import { plansMethods } from "./specialist/plans.ts";
import { stormsMethods } from "./specialist/storms.ts";
import { strawMethods } from "./specialist/straw.ts";
import { waterMethods } from "./specialist/water.ts";

export const methodWords: Readonly<Record<MethodId, MethodWords>> = {
  "marks-share": {
    title: "Share of the marks (line transect)",
    says: "Marks that hit over marks that were read. Marks nobody read leave both sums.",
  },
  "whole-percent": {
    title: "Whole percent that add up to 100 (largest remainder)",
    says: "Every kind is rounded down; the points left over go to the kinds that lost most.",
  },
  "wilson-one-line": {
    title: "Range of one line (Wilson interval)",
    says: "Speaks of the ground under this one line, as if its marks had fallen one by one.",
  },
  "strip-ratio": {
    title: "Ground cover of a strip (ratio estimator)",
    says: "All hits of all lines over all marks read on them, so that a short line weighs as much as it has marks.",
  },
  "logit-t": {
    title: "Range of a strip (lines as samples, Student's t on the logit scale)",
    says: "How much the lines differ from each other says how far the true value may lie. The line is the sample, never the mark.",
  },
  "logit-t-planned": {
    title: "Range of a strip whose lines agree (planning spread)",
    says: "Lines that agree to the mark would give a range of no width, which nobody should believe: a usual spread stands in.",
  },
  "one-sided-exact": {
    title: "Bound when all or no marks hit (exact, one-sided)",
    says: "With nothing else seen there is no spread. The bound says what could still have been missed.",
  },
  "lines-needed": {
    title: "How many more lines",
    says: "The least number of lines whose range would be narrow enough, with the spread seen so far and a usual one until six lines are in.",
  },
  "chance-logit-t": {
    title: "Chance that the target is reached",
    says: "The same spread as the range. It speaks of which places the lines fell on, not of misreading.",
  },
  "in-step": {
    title: "Marks in step with the rows",
    says: "Checks before counting that marks fall on all places between two rows and that the line crosses one full machine pass.",
  },
  "across-pass": {
    title: "Ground cover across the machine pass",
    says: "Marks sorted by their distance from the middle of the pass.",
  },
  "mean-t": {
    title: "Mean of the readings (Student's t)",
    says: "The mean, and how far it would wander with other readings.",
  },
  "line-mean-t": {
    title: "Mean over lines (ratio estimator, Student's t)",
    says: "Readings of one line lie close together: the line is the sample.",
  },
  "standing-still": {
    title: "Position taken standing still (weighted median)",
    says: "Many readings of the position put together so that a few wild ones do not pull it away.",
  },
  "short-distance": {
    title: "Distance between two positions",
    says: "On the shape of the earth, good for distances within a field.",
  },
  ...earthwormMethods,
  ...infiltrationMethods,
  ...comparisonMethods,
  ...strawMethods,
  ...waterMethods,
  ...plansMethods,
  ...stormsMethods,
};

export const markWords: Readonly<Record<Mark | "your-setting", string>> = {
  published: "published",
  "common-practice": "common practice",
  "not-checked": "not yet checked",
  derived: "worked out here",
  "your-setting": "your setting",
};
