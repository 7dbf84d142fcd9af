/** Methods of spade holes, in words, and their symbols. */
import type { EARTHWORM_METHODS } from "../../../science/methods/earthworms.ts";
import type { MethodWords } from "../method-words.ts";
import type { SymbolWords } from "../symbols.ts";

type Id = keyof typeof EARTHWORM_METHODS;

export const earthwormMethods: Readonly<Record<Id, MethodWords>> = {
  "hole-density": {
    title: "Worms of a hole (hand sorting)",
    says: "Worms of mulch, soil and mustard water added up. Per m² they are divided by the area of the hole, never by its depth.",
  },
  "holes-mean-log-t": {
    title: "Mean of the holes and its range (Student's t on the log scale)",
    says: "How much the holes differ says how far the true mean may lie. The range never falls below nothing.",
  },
  "holes-mean-alike": {
    title: "Range of holes that are all alike (spread by chance)",
    says: "Holes that agree to the worm would give a range of no width: the spread of worms that lie by chance stands in.",
  },
  "none-found-exact": {
    title: "Bound when no hole has a worm (exact, one-sided)",
    says: "So many worms could be there, lying by chance, and still be missed by all holes 5 times of 100.",
  },
  "hole-conditions": {
    title: "What may have changed the counts",
    says: "Cold or dry soil beside few worms, soil worked lately, unlike effort, holes close together. It is said and changes no number.",
  },
  "share-of-holes": {
    title: "Share of holes (Clopper-Pearson interval)",
    says: "Holes that have it over holes where that can be said, with a range that is never too narrow.",
  },
  "counts-dispersion": {
    title: "Do worms lie in clumps? (variance to mean, dispersion test)",
    says: "By chance the variance of counts equals their mean. A larger one means clumps.",
  },
  "negative-binomial-k": {
    title: "How strong the clumps are (negative-binomial k, maximum likelihood)",
    says: "A small k means strong clumps. Without over-dispersion there is no k, and none is given.",
  },
  "empty-share": {
    title: "How many holes would be empty",
    says: "The share of holes without a worm that such a mean leaves, by chance and in clumps, beside the share that was seen.",
  },
  "count-range-exact": {
    title: "Range of one count (exact limits, worms by chance)",
    says: "All worms over all holes as one count. Where the holes show clumps no such range is given.",
  },
  "holes-to-see": {
    title: "Holes to see a group at all",
    says: "How many holes show it at least once, and how many may still hold it when none did. Not seen is not absent.",
  },
  "guide-level": {
    title: "Read by one guide",
    says: "Only by the guide's own hole, depth, season and land use, with its name beside it.",
  },
  "holes-needed": {
    title: "How many more holes",
    says: "The least number of holes whose range would be narrow enough, with the spread seen so far and that of worms in clumps until six holes are in.",
  },
};

const lower = "lower end of the range";
const upper = "upper end of the range";
const level = "how many of 100 such ranges would hold the truth, as a share";
const holesMean = {
  m: "mean of the holes",
  x_i: "worms of one hole, per hole or per m²",
  n: "number of holes",
  t_: "Student's t for n−1 degrees of freedom",
  "1−α": level,
};

export const earthwormSymbols: Pick<SymbolWords, Id> = {
  "hole-density": {
    c: "worms of the hole",
    c_layer: "worms of one layer: mulch, soil or mustard water",
    D: "worms per square metre",
    a: "one side of the hole",
    b: "the other side",
  },
  "holes-mean-log-t": {
    ...holesMean,
    s: "spread between holes",
    n_least: "holes from which on there is a range",
  },
  "holes-mean-alike": {
    ...holesMean,
    s: "spread of worms that lie by chance",
    A: "ground of one hole: its area, or 1 when worms are given per hole",
  },
  "none-found-exact": {
    x_upper: upper,
    α: "what the level leaves over: 5 of 100",
    A_i: "ground of one hole: its area, or 1 when worms are given per hole",
    "1−α": level,
  },
  "hole-conditions": {
    x: "worms of a hole, per m²",
    x_0: "fewer than this are few",
    T: "temperature of the soil",
    T_0: "soil colder than this is cold",
    d: "days since the soil was worked",
    d_0: "days after which that is not said any more",
    e_most: "most people × minutes of a hole",
    e_least: "least people × minutes of a hole",
    r_0: "how many times more is much",
    z: "distance between two holes",
    z_0: "nearer holes are alike",
  },
  "share-of-holes": {
    p: "share of the holes",
    x: "holes that have it",
    n: "holes where that can be said",
    P: "the chance of",
    X: "holes that have it, if holes were dug anew",
    p_lower: lower,
    p_upper: upper,
    α: "what the level leaves over: 5 of 100",
    "1−α": level,
  },
  "counts-dispersion": {
    v: "variance over mean: about 1 by chance, more in clumps",
    s: "spread between holes",
    m: "mean of the holes",
    X: "the test figure, read on the chi-square distribution with n−1 degrees of freedom",
    n: "number of holes",
  },
  "negative-binomial-k": {
    Var: "variance between holes",
    m: "mean of the holes",
    k: "exponent of the negative binomial: small when clumps are strong",
    N_j: "holes with j worms or more",
    j: "1, 2, 3 up to the most worms of a hole",
    n: "number of holes",
  },
  "empty-share": {
    P_0: "share of holes without a worm",
    m: "mean of the holes",
    k: "exponent of the negative binomial: small when clumps are strong",
  },
  "count-range-exact": {
    D: "worms per m²",
    x: "worms of all holes",
    A_i: "area of one hole",
    P: "the chance of",
    X: "worms of all holes, if they were dug anew",
    μ_lower: lower,
    μ_upper: upper,
    α: "what the level leaves over: 5 of 100",
    P_seldom: "counts that chance makes so uneven this seldom lie in clumps",
    "1−α": level,
  },
  "holes-to-see": {
    P: "how often at least one hole shows it",
    p: "share of the holes that hold it",
    n: "number of holes",
    p_upper: upper,
    α: "what the level leaves over: 5 of 100",
    N_most: "most holes that are planned for",
    "1−α": level,
  },
  "guide-level": {
    m: "mean of the holes, counted as the guide counts",
    g: "where a level of the guide begins",
    g_survey: "where the levels of the survey of 2019 begin",
    g_levy_board: "the same of the levy board",
    g_farm: "of the farm-conservation advice",
    g_pasture: "of the guide of wet pasture",
    g_cube: "of the soil cube of 2008",
    g_foot: "of the hole of a square foot",
    g_Europe: "of the guide of Central Europe, per m²",
    "same side": "sides that differ by less are the same, as a share",
    "same depth": "depths that differ by less are the same, as a share",
    apart: "so many times guides differ on the same hole",
  },
  "holes-needed": {
    v: "spread between holes that is planned with, as a share of the mean",
    w: "how much the planned spread counts: all with one hole, nothing from six holes on",
    m: "worms per hole",
    m_0: "worms per m² that are planned with before the first hole",
    k: "exponent of the negative binomial that is planned with",
    s: "spread between holes seen so far",
    n: "holes so far",
    t_: "Student's t for N−1 degrees of freedom",
    N: "holes in all",
    d: "give or take this much, as a share of the mean",
    v_low: "spread at the low end of the band",
    v_high: "spread at the high end of the band",
    ν: "degrees of freedom of the spread",
    χ: "the chi-square distribution",
    b: "share of what the spread may be that the band covers",
    n_seen: "holes from which on only the spread seen counts",
    N_most: "most that are planned for",
  },
};
