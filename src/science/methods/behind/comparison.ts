/** The sources behind the methods of comparing and the years. */
import type { SourceId } from "../../sources.ts";

export const COMPARISON_BEHIND = {
  "welch-t": ["welch-1947", "nist-two-samples"],
  "welch-ratio-t": ["welch-1947", "nist-two-samples"],
  "paired-t": ["nist-two-samples", "hildebrand-1984", "sare-2004"],
  "paired-ratios-t": ["nist-two-samples", "helsel-hirsch-2002"],
  "sign-flip": ["fisher-1935"],
  "two-group-permutation": ["fisher-1935"],
  "signed-rank": ["wilcoxon-1945", "hodges-lehmann-1963"],
  "rank-sum": ["wilcoxon-1945"],
  "blocks-two-way": ["snedecor-cochran-1980", "sare-2004"],
  "blocks-t": ["snedecor-cochran-1980"],
  "spots-alike": ["lohr-1999"],
  "rate-ratio-exact": ["clopper-pearson-1934", "fay-2010"],
  "rate-ratio-scaled": ["clopper-pearson-1934", "fay-2010", "mccullagh-nelder-1989", "own-rule"],
  "words-of-difference": ["noncentral-t-power", "ohio-replicates", "own-rule"],
  "like-with-like": ["own-rule"],
  "theil-sen": ["sen-1968", "usepa-2009"],
  "gilbert-range": ["gilbert-1987", "usepa-2009"],
  "counted-range": ["sen-1968", "gilbert-1987"],
  "mann-kendall-exact": ["gilbert-1987"],
  "mann-kendall-normal": ["gilbert-1987", "usepa-2009"],
  "seasonal-kendall": ["hirsch-1982", "helsel-frans-2006", "usepa-2009"],
  "whole-years": ["own-rule"],
  "bootstrap-percentile": ["efron-tibshirani-1993"],
  "bootstrap-bca": ["efron-tibshirani-1993"],
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;
