/** Sources of comparing and the years. */
import type { Source } from "../source.ts";

export const COMPARISON_SOURCES = {
  "welch-1947": { citation: "Welch (1947), Biometrika 34: 28-35", mark: "not-checked" },
  "nist-two-samples": {
    citation: "NIST/SEMATECH e-Handbook of Statistical Methods, sections 7.3.1 and 7.3.1.1",
    mark: "not-checked",
    address: "https://www.itl.nist.gov/div898/handbook/",
  },
  "fisher-1935": {
    citation: "Fisher (1935), The Design of Experiments, section 21: all patterns of signs",
    mark: "not-checked",
  },
  "hildebrand-1984": {
    citation: "Hildebrand (1984), Agronomy Journal 76: 271-274: one pair on each of 14 farms",
    mark: "published",
  },
  "wilcoxon-1945": {
    citation: "Wilcoxon (1945), Biometrics Bulletin 1: 80-83; Mann & Whitney (1947)",
    mark: "not-checked",
  },
  "hodges-lehmann-1963": {
    citation: "Hodges & Lehmann (1963), Annals of Mathematical Statistics 34: 598-611",
    mark: "not-checked",
  },
  "helsel-hirsch-2002": {
    citation: "Helsel & Hirsch (2002), Statistical Methods in Water Resources, pp. 139-140",
    mark: "published",
  },
  "snedecor-cochran-1980": {
    citation: "Snedecor & Cochran (1980), Statistical Methods, 7th edition, chapter 14: blocks",
    mark: "not-checked",
  },
  "sare-2004": {
    citation: "Baldwin (2004), basic statistical analysis for on-farm research: 4 to 6 replications",
    mark: "published",
    address: "https://www.sare.org/Learning-Center/Bulletins/How-to-Conduct-Research-on-Your-Farm-or-Ranch",
  },
  "fay-2010": {
    citation:
      "Fay, vignettes of the R packages rateratio.test and exactci: chance and range by one rule (his article of 2010 was not read)",
    mark: "published",
  },
  "mccullagh-nelder-1989": {
    citation: "McCullagh & Nelder (1989), Generalized Linear Models, chapter 6: over-dispersion",
    mark: "not-checked",
  },
  "noncentral-t-power": {
    citation: "NIST/SEMATECH e-Handbook, section 7.2.2.2, with the noncentral t distribution",
    mark: "not-checked",
    address: "https://www.itl.nist.gov/div898/handbook/",
  },
  "ohio-replicates": {
    citation:
      "Ohio State University Extension, on-farm research: 5 to 6 replicates, 10 % difference at a CV of 5 %",
    mark: "published",
    address: "http://ohioline.osu.edu/sc166/sc166_30.html",
  },
  "sen-1968": {
    citation: "Sen (1968), Journal of the American Statistical Association 63: 1379-1389",
    mark: "not-checked",
  },
  "gilbert-1987": {
    citation:
      "Gilbert (1987), Statistical Methods for Environmental Pollution Monitoring, chapter 16 and table A18",
    mark: "not-checked",
  },
  "usepa-2009": {
    citation:
      "USEPA (2009), Statistical Analysis of Groundwater Monitoring Data, Unified Guidance, examples 14-10, 16-1 and 17-6",
    mark: "published",
  },
  "hirsch-1982": {
    citation: "Hirsch, Slack & Smith (1982), Water Resources Research 18: 107-121: seasonal Kendall",
    mark: "not-checked",
  },
  "helsel-frans-2006": {
    citation: "Helsel & Frans (2006), Environmental Science & Technology 40: 4066-4073: regional Kendall",
    mark: "not-checked",
  },
  "efron-tibshirani-1993": {
    citation: "Efron & Tibshirani (1993), An Introduction to the Bootstrap, chapters 13 and 14",
    mark: "not-checked",
  },
} as const satisfies Readonly<Record<string, Source>>;
