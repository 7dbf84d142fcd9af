/** Methods of comparing and the years, in words, and their symbols. */
import type { COMPARISON_METHODS } from "../../../science/methods/comparison.ts";
import type { MethodWords } from "../method-words.ts";
import type { SymbolWords } from "../symbols.ts";

type Id = keyof typeof COMPARISON_METHODS;

export const comparisonMethods: Readonly<Record<Id, MethodWords>> = {
  "welch-t": {
    title: "Difference of two means (Welch's t)",
    says: "The spread of each side by itself says how far the true difference may lie. With one strip of each it speaks of two places only.",
  },
  "welch-ratio-t": {
    title: "Ratio of two means (Welch's t on logarithms)",
    says: "Rates and counts differ by multiples, so their logarithms are compared and the answer is how many times as much.",
  },
  "paired-t": {
    title: "Mean difference within pairs (paired t)",
    says: "The two of a pair share their ground, so only the difference within each pair counts. The pair is the sample.",
  },
  "paired-ratios-t": {
    title: "Mean ratio within pairs (paired t on logarithms)",
    says: "How many times as much within each pair; the mean of those is taken on logarithms.",
  },
  "sign-flip": {
    title: "Flipping signs (exact randomisation test of pairs)",
    says: "If it made no difference, the two of a pair might as well have been changed over. All ways of changing over are counted; few pairs can never give a small share.",
  },
  "two-group-permutation": {
    title: "Dealing out anew (permutation test of two groups)",
    says: "If it made no difference, any value could have fallen to either side. All ways of dealing out are counted, or a seeded draw of them.",
  },
  "signed-rank": {
    title: "Signed ranks (Wilcoxon)",
    says: "Only the order of the differences by size counts. Zeros leave, equal ones share their rank.",
  },
  "rank-sum": {
    title: "Rank sum (Wilcoxon, Mann & Whitney)",
    says: "Only the order of all values counts: how often one side lies above the other.",
  },
  "blocks-two-way": {
    title: "Blocks (two-way table without interaction)",
    says: "What blocks have in common is taken out; what is left is the measure. The least significant difference says how finely the trial tells and is no test of any two.",
  },
  "blocks-t": {
    title: "Two treatments of many (t from the blocks, Bonferroni)",
    says: "With many pairs to look at some lie apart by chance, so each range is made wider.",
  },
  "spots-alike": {
    title: "Spots of one strip (intraclass correlation, design effect)",
    says: "Spots inside a strip are alike and count for fewer than there are. The strip is the sample.",
  },
  "rate-ratio-exact": {
    title: "How many times as many (exact conditional rate ratio)",
    says: "For things that lie by chance: the share that the first place has in all that was found.",
  },
  "rate-ratio-scaled": {
    title: "How many times as many, in clumps (rate ratio scaled by the dispersion)",
    says: "Worms in clumps count for less than their number: the range is wider by the root of variance over mean, and by how poorly that is known.",
  },
  "words-of-difference": {
    title: "Clearly different, probably different, cannot tell yet",
    says: "Clearly: the 95 % range leaves out no difference. Probably: only the 80 % range does. Else it cannot be told yet, and it is said how many samples would tell.",
  },
  "counts-needed": {
    title: "How many holes would tell",
    says: "How well few worms can be known at all says how many holes it takes to see the difference called worthwhile.",
  },
  "like-with-like": {
    title: "Like with like",
    says: "Place against the row, mulch in the ring, pour, wetness, kit, hands and minutes, season and harvest year are looked at before any number: which ones occur, and in which shares.",
  },
  "theil-sen": {
    title: "Change per year (Theil and Sen's slope)",
    says: "The middle of all slopes between two years: one odd year does not pull it.",
  },
  "gilbert-range": {
    title: "Range of the change per year (Gilbert)",
    says: "So many slopes from both ends of their order are left out as chance could account for.",
  },
  "counted-range": {
    title: "Range of the change per year (counted out)",
    says: "Up to ten years so many slopes from both ends are left out as all orders of the years would leave.",
  },
  "mann-kendall-exact": {
    title: "Do later years lie higher? (Mann-Kendall, counted out)",
    says: "How many orders of the same values rise as much. Four years can never give less than 8 %.",
  },
  "mann-kendall-normal": {
    title: "Do later years lie higher? (Mann-Kendall, normal curve)",
    says: "With more than ten years the count is close to a normal curve.",
  },
  "seasonal-kendall": {
    title: "Spots and seasons together (seasonal and regional Kendall)",
    says: "Each spot and each season is compared with itself only, and the counts are added up.",
  },
  "whole-years": {
    title: "Whole years change places (permutation of years)",
    says: "Spots share the weather of a year, so years are exchanged with all that was read in them. Many spots do not make up for few years.",
  },
  "bootstrap-percentile": {
    title: "Samples drawn anew (bootstrap, percentile)",
    says: "From the samples in hand others are drawn, with a seed, so that they come out the same; the range holds the middle of them. With few samples such ranges are too narrow.",
  },
  "bootstrap-bca": {
    title: "Samples drawn anew, put right (bootstrap, BCa)",
    says: "The same, put right for bias and for a spread that runs with the value. With few samples such ranges are too narrow.",
  },
};

const level = "how many of 100 such ranges would hold the truth, as a share";
const chance = "how often chance alone gives as much, on both sides";
const drawn = "arrangements that are drawn when there are too many to try";
const counted = "how many arrangements do";
const seldom = "below this a chance counts as seldom";
const leastChance = "the smallest chance that so few can ever give";
const welch = {
  SE: "standard error of the difference",
  s_a: "spread of the first side",
  n_a: "samples of the first side",
  s_b: "spread of the second side",
  n_b: "samples of the second side",
  "1−α": level,
};
const paired = {
  a_i: "first of one pair",
  b_i: "second of one pair",
  d̄: "mean over the pairs",
  t_: "Student's t for n−1 degrees of freedom",
  n: "number of pairs",
  s_d: "spread between pairs",
  "1−α": level,
};
const rate = {
  R: "how many times as many",
  A_x: "area or number of holes of the first place",
  A_y: "area or number of holes of the second place",
  p: "share of the first place in all that was found, when R is the ratio",
  "1−α": level,
};
const change = {
  S: "rises less falls over all two years",
  z: "that count as a standard normal number",
  Var_S: "variance of that count when there is no change",
};
const orders = {
  P: chance,
  N: counted,
  S_order: "the same count in one order of the years",
  "n!": "number of orders of n years",
  P_least: leastChance,
  α: seldom,
};

export const comparisonSymbols: Pick<SymbolWords, Id> = {
  "welch-t": {
    ...welch,
    d: "difference of the two means",
    ā: "mean of the first side",
    b̄: "mean of the second side",
    ν: "degrees of freedom",
    t_ν: "Student's t for ν degrees of freedom",
  },
  "welch-ratio-t": {
    ...welch,
    x: "logarithm of one value",
    v: "one value",
    d: "difference of the two means of logarithms",
    x̄_a: "mean of the logarithms of the first side",
    x̄_b: "mean of the logarithms of the second side",
    t_ν: "Student's t for Welch's degrees of freedom",
  },
  "paired-t": { ...paired, d_i: "difference within one pair" },
  "paired-ratios-t": { ...paired, d_i: "logarithm of the ratio within one pair" },
  "sign-flip": {
    P: chance,
    N: counted,
    d_i: "difference within one pair",
    n: "number of pairs",
    P_least: leastChance,
    α: seldom,
    N_drawn: drawn,
  },
  "two-group-permutation": {
    P: chance,
    N: counted,
    d_shared: "difference of the two means when the values are dealt out anew",
    d: "difference of the two means",
    K: "number of ways of dealing out",
    α: seldom,
    N_drawn: drawn,
  },
  "signed-rank": {
    W: "sum of the ranks of the positive differences",
    r_i: "rank of one positive difference by its size",
    z: "that sum as a standard normal number, when it is not counted out",
    r: "rank of any difference",
  },
  "rank-sum": {
    U: "how often the first side lies above the second, draws counting half",
    r_a: "rank of one value of the first side among all",
    n_a: "values of the first side",
  },
  "blocks-two-way": {
    e_ij: "what is left of one value",
    x_ij: "one value",
    x̄_i: "mean of its treatment",
    x̄_j: "mean of its block",
    x̄: "mean of all",
    EMS: "mean square of what is left",
    k: "number of treatments",
    b: "number of blocks",
    LSD: "least significant difference",
    t: "Student's t for (k−1)(b−1) degrees of freedom",
    "1−α": level,
  },
  "blocks-t": {
    d: "difference of two means",
    t_: "Student's t for (k−1)(b−1) degrees of freedom",
    α: "share of such ranges that would miss the truth",
    m: "number of pairs of treatments",
    EMS: "mean square of what is left",
    b: "number of blocks",
    k: "number of treatments",
    "1−α": level,
  },
  "spots-alike": {
    ρ: "correlation of two spots of one strip",
    MSB: "mean square between strips",
    MSW: "mean square within strips",
    m: "spots of a strip",
    deff: "how many times the variance is that of independent spots",
    n_eff: "independent spots that all of them are worth",
    n: "number of spots",
  },
  "rate-ratio-exact": {
    ...rate,
    x: "what was found in the first place",
    y: "what was found in the second place",
    P: "chance of a count",
    X: "a count in the first place, given all that was found",
    p_lower: "share at the lower end of the range",
    p_upper: "share at the upper end of the range",
    α: "share of such ranges that would miss the truth",
  },
  "rate-ratio-scaled": {
    ...rate,
    φ: "variance over mean within the places, of both together or of each by itself, whichever gives the wider range",
    x_i: "count of one hole",
    m: "mean of its place",
    n: "holes of a place",
    x_e: "what the count of a place is worth",
    x: "count of a place",
    z: "normal quantile of the level",
    t: "Student's t of the level, for Σ(n−1) degrees of freedom, or Welch's where each place by itself gives the wider range",
  },
  "words-of-difference": {
    d: "the difference, or the logarithm of the ratio",
    t: "Student's t of the level",
    SE: "standard error of the difference",
    G: "how often a difference that is there shows",
    F_: "noncentral t distribution",
    ν: "degrees of freedom",
    δ: "the worthwhile difference over its standard error",
    s: "spread",
    c: "1 for pairs, 2 for two sides",
    n: "pairs, or samples on each side",
    "1−α": level,
    "1−α_likely": "the same for probably different",
    G_wanted: "how often it is wanted to show",
    ν_least: "least degrees of freedom that the spread is planned with",
  },
  "counts-needed": {
    s: "spread of one hole's share, on the log scale",
    φ: "variance over mean within the places, at least 1",
    R: "the worthwhile ratio",
    m: "worms per hole, both places together",
    δ: "the worthwhile ratio over its standard error",
    n: "holes on each side",
  },
  "like-with-like": {
    a_i: "share of the readings of one side at each place, or under each condition",
    b_i: "the same of the other side",
    s_0: "share of one side that may lie apart",
    e_most: "larger of the two means of hands times minutes",
    e_least: "smaller of the two",
    r_0: "most that they may differ, as a multiple",
    z_most: "larger of the two sizes or depths",
    z_least: "smaller of the two",
    q: "most that they may differ, as a share of the larger",
  },
  "theil-sen": {
    b: "change per year",
    median: "the middle one of all",
    x_j: "value of a later year",
    x_i: "value of an earlier year",
    t_j: "the later year",
    t_i: "the earlier year",
  },
  "gilbert-range": {
    C: "slopes that chance could account for",
    z: "normal quantile of the level",
    Var_S: "variance of rises less falls when there is no change",
    N: "number of slopes",
    M_1: "rank of the slope at the lower end",
    M_2: "rank of the slope at the upper end",
    "1−α": level,
  },
  "counted-range": {
    P: "chance over all orders of the years",
    S: change.S,
    s: "the least sum that is so rare",
    α: "share of such ranges that would miss the truth",
    N: "number of slopes",
    M_1: "rank of the slope at the lower end",
    M_2: "rank of the slope at the upper end",
    "1−α": level,
  },
  "mann-kendall-exact": {
    ...orders,
    S: change.S,
    sgn: "1 for a rise, −1 for a fall, 0 for neither",
    x_j: "value of a later year",
    x_i: "value of an earlier year",
  },
  "mann-kendall-normal": {
    ...change,
    sgn: "1 for a rise, −1 for a fall, 0 for neither",
    x_j: "value of a later year",
    x_i: "value of an earlier year",
    n: "number of years",
    q: "size of a group of equal values",
  },
  "seasonal-kendall": {
    ...change,
    S: "rises less falls over all spots and seasons",
    S_g: "rises less falls of one spot in one season",
    Var_g: "variance of that",
  },
  "whole-years": {
    ...orders,
    Var_S: "variance of that count over the orders",
    S: "rises less falls over all spots and seasons",
  },
  "bootstrap-percentile": {
    q_low: "share of the drawn values below the lower end",
    q_high: "share of the drawn values below the upper end",
    α: "share of such ranges that would miss the truth",
    n_few: "with fewer samples it is said that the range is too narrow",
  },
  "bootstrap-bca": {
    Φ: "the normal distribution",
    z_0: "bias: how far the value lies from the middle of those drawn",
    q: "share of the drawn values below the value",
    a: "acceleration: how the spread runs with the value",
    U: "what one sample does to the value",
    n: "samples of its side",
    q_α: "share of the drawn values below one end of the range",
    z: "normal quantile of that end",
    n_few: "with fewer samples it is said that the range is too narrow",
  },
};
