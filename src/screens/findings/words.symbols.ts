/** Every symbol of every formula, in words. */
import { comparisonSymbols } from "./specialist/comparison.ts";
import { earthwormSymbols } from "./specialist/earthworms.ts";
import { infiltrationSymbols } from "./specialist/infiltration.ts";
import { plansSymbols } from "./specialist/plans.ts";
import { stormsSymbols } from "./specialist/storms.ts";
import { strawSymbols } from "./specialist/straw.ts";
import { waterSymbols } from "./specialist/water.ts";
import type { CommonSymbol, SymbolWords } from "./symbols.ts";

const lower = "lower end of the range";
const upper = "upper end of the range";

/** Signs and functions that mean the same in every formula. */
export const commonSymbolWords: Readonly<Record<CommonSymbol, string>> = {
  Σ: "the sum over all lines, readings or kinds",
  "√": "the square root",
  "±": "once less and once more: the two ends of the range",
  "≤": "at most",
  "≥": "at least",
  ln: "the natural logarithm",
  exp: "the exponential function",
  sin: "the sine",
  cos: "the cosine",
  max: "the largest of these",
  frac: "what stands behind the decimal mark",
  round: "rounded to the nearest whole number",
};

const level = "how many of 100 such ranges would hold the truth, as a share";
const planned = "planning spread: how much more lines differ than marks falling one by one would";
const logit = {
  L: "the share on the logit scale, where a range cannot leave 0 to 100 %",
  SE: "standard error of the share: how far it would wander if the lines were drawn anew",
  SE_L: "that standard error on the logit scale",
  p: "share of the ground that is covered",
  n: "number of lines",
  t_: "Student's t for n−1 degrees of freedom",
  "1−α": level,
};

/** Per method its symbols. */
export const symbolWords: SymbolWords = {
  "marks-share": {
    p: "share of the marks that hit",
    h: "marks that hit",
    m: "marks that were read",
    m_all: "marks on the rope up to where the line ended",
    m_not_read: "marks nobody looked at, and marks with two answers until one is chosen",
  },
  "whole-percent": {
    q_i: "percent of one kind, as a whole number",
    h_i: "marks of that kind",
    m: "marks that were read",
  },
  "wilson-one-line": {
    p: "share of the marks that hit",
    z: "1.96 for a range that holds the truth 95 times of 100",
    m: "marks that were read",
    "1−α": level,
  },
  "strip-ratio": {
    p: "share of the ground that is covered, over all lines of the strip",
    h_i: "marks of one line that hit",
    m_i: "marks of that line that were read",
  },
  "logit-t": {
    ...logit,
    h_i: "marks of one line that hit",
    m_i: "marks of that line that were read",
    n_least: "lines from which on there is a range",
    h_few: "with fewer hits or misses in all, the range is called rough",
  },
  "logit-t-planned": {
    ...logit,
    k: planned,
    m_i: "marks of one line that were read",
  },
  "one-sided-exact": {
    m_e: "marks, as independent marks that would tell as much",
    m_i: "marks of one line that were read",
    k: planned,
    p_upper: upper,
    p_lower: lower,
    α: "what the level leaves over: 5 of 100",
    "1−α": level,
  },
  "lines-needed": {
    s: "spread between lines that is planned with",
    w: "how much the planned spread counts: all with one line, nothing from six lines on",
    k: planned,
    p: "share of the ground covered so far",
    m: "marks on the rope",
    n: "lines so far",
    SE: "standard error of the share, from the lines seen",
    t_: "Student's t for N−1 degrees of freedom",
    N: "lines in all",
    d: "give or take this much, as a share",
    s_low: "spread at the low end of the band",
    s_high: "spread at the high end of the band",
    N_most: "most that are planned for",
    ν: "degrees of freedom of the spread",
    χ: "the chi-square distribution",
    b: "share of what the spread may be that the band covers",
    n_seen: "lines from which on only the spread seen counts",
  },
  "chance-logit-t": {
    F_: "the distribution of Student's t",
    t: "Student's t",
    n: "number of lines",
    L: "the share on the logit scale",
    L_target: "the target on the logit scale",
    SE_L: "standard error of the share on the logit scale",
    p_target: "the target, as a share",
    p_rules: "residue after planting that defines conservation tillage",
    p_protection: "cover that is commonly aimed at for protection",
    m_e: "marks, as independent marks that would tell as much",
    k: planned,
  },
  "in-step": {
    a: "way across the rows from mark to mark",
    d: "distance from mark to mark",
    θ: "angle between line and rows",
    φ_j: "where mark j falls between two rows, from 0 to 1",
    j: "number of the mark",
    w: "row spacing",
    g: "widest stretch between the rows that no mark falls on",
    gap: "the stretch between two places next to each other",
    φ: "the places of all marks between two rows",
    m: "marks on the rope",
    W: "working width of the machine",
    g_max: "widest stretch that is let pass, as a share of the row spacing",
  },
  "across-pass": {
    x_j: "where mark j lies across the rows",
    x_1: "where the first mark lies across the rows",
    j: "number of the mark",
    d: "distance from mark to mark",
    θ: "angle between line and rows",
    y_j: "distance of mark j from the middle of the pass",
    W: "working width of the machine",
    p_c: "share of the marks of one class that hit",
    h_c: "marks of that class that hit",
    m_c: "marks of that class that were read",
    c: "number of classes from the middle of the pass to its edge",
  },
  "mean-t": {
    x̄: "mean of the readings",
    x_i: "one reading",
    n: "number of readings",
    t_: "Student's t for n−1 degrees of freedom",
    s: "spread between readings",
    "1−α": level,
    n_least: "readings from which on there is a range",
  },
  "line-mean-t": {
    x̄: "mean over all lines",
    y_i: "sum of the readings of one line",
    m_i: "number of readings of that line",
    SE: "standard error of the mean",
    n: "number of lines",
    t_: "Student's t for n−1 degrees of freedom",
    "1−α": level,
  },
  "standing-still": {
    w_i: "weight of one position reading",
    r_i: "accuracy that the device stated for it, in metres",
    φ: "latitude",
    φ_i: "latitude of one reading",
    λ: "longitude",
    λ_i: "longitude of one reading",
    s: "radius that 95 of 100 readings lie within",
    c: "95 % radius over the middle distance, for a round scatter",
    d_i: "distance of one reading from the middle",
    c_68: "95 % radius over the 68 % radius that some devices state",
    n_spread: "readings from which on there is a radius",
    n_drift: "readings from which on walking is told from standing",
    weighted: "counted by weight",
    median: "the value with half of the weight on either side",
  },
  "short-distance": {
    M: "radius of the earth's curve from north to south",
    N: "radius of the earth's curve from east to west",
    a: "half the longest diameter of the earth",
    e: "how far the earth is from round",
    φ: "latitude halfway between the two places",
    d: "distance",
    Δφ: "difference of the latitudes",
    Δλ: "difference of the longitudes",
    "1/f": "how flat the earth is, one part in",
  },
  ...earthwormSymbols,
  ...infiltrationSymbols,
  ...comparisonSymbols,
  ...strawSymbols,
  ...waterSymbols,
  ...plansSymbols,
  ...stormsSymbols,
};
