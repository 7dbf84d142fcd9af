/** Sources of infiltration models and storms. */
import type { Source } from "../source.ts";

export const STORMS_SOURCES = {
  "kostiakov-1932": {
    citation: "Kostiakov (1932), Transactions of the 6th Commission of the ISSS, Part A: 17-21",
    mark: "not-checked",
  },
  "lewis-1937": {
    citation:
      "Lewis (1937), Transactions of the American Geophysical Union 18: 361-368; steady part, Mezencev (1948)",
    mark: "not-checked",
  },
  "horton-1940": {
    citation: "Horton (1940), Soil Science Society of America Proceedings 5: 399-417",
    mark: "not-checked",
  },
  "de-laat-savenije": {
    citation: "de Laat & Savenije, lecture notes LN0262, Delft, equations 4.2 and 4.3 and p. 67",
    mark: "published",
  },
  "green-ampt-1911": {
    citation: "Green & Ampt (1911), Journal of Agricultural Science 4: 1-24",
    mark: "not-checked",
  },
  "mein-larson-1973": {
    citation: "Mein & Larson (1973), Water Resources Research 9: 384-394",
    mark: "not-checked",
  },
  "chow-1988": {
    citation:
      "Chow, Maidment & Mays (1988), Applied Hydrology, sections 4.3 and 4.4, table 4.4.1, example 5.4.1",
    mark: "not-checked",
  },
  "rawls-1983": {
    citation: "Rawls, Brakensiek & Miller (1983), Journal of Hydraulic Engineering 109: 62-70",
    mark: "not-checked",
  },
  "golub-pereyra-1973": {
    citation: "Golub & Pereyra (1973), SIAM Journal on Numerical Analysis 10: 413-432",
    mark: "not-checked",
  },
  "lawson-hanson-1974": {
    citation: "Lawson & Hanson (1974), Solving Least Squares Problems, chapter 23",
    mark: "not-checked",
  },
  "brent-1973": {
    citation: "Brent (1973), Algorithms for Minimization without Derivatives, chapter 5",
    mark: "not-checked",
  },
  "seber-wild-1989": {
    citation: "Seber & Wild (1989), Nonlinear Regression, section 2.1.2",
    mark: "not-checked",
  },
  "hurvich-tsai-1989": {
    citation: "Hurvich & Tsai (1989), Biometrika 76: 297-307",
    mark: "not-checked",
  },
  "bagarello-2004": {
    citation:
      "Bagarello, Iovino & Elrick (2004), Soil Science Society of America Journal 68: 66-73, simplified falling head; proved here by integrating the curve of Green and Ampt under a falling head",
    mark: "not-checked",
  },
  "elrick-1989": {
    citation: "Elrick, Reynolds & Tan (1989), Ground Water Monitoring Review 9: 184-193, categories of α*",
    mark: "not-checked",
  },
  "reynolds-elrick-1990": {
    citation: "Reynolds & Elrick (1990), Soil Science Society of America Journal 54: 1233-1241",
    mark: "not-checked",
  },
  "sbi-2014": {
    citation: "Simplified method of a Beerkan run, transient (2014)",
    mark: "not-checked",
  },
  "ssbi-2017": {
    citation: "Steady simplified method of a Beerkan run (2017)",
    mark: "not-checked",
  },
  "iapws-2008": {
    citation:
      "IAPWS (2008): viscosity of liquid water at 0.1 MPa; the correlation from memory, 1001.6 µPa·s at 20 °C as it should be",
    mark: "not-checked",
  },
  "epa-1981": {
    citation:
      "Permeability classes for saturated soil, Natural Resources Conservation Service, adapted from USEPA (1981), Process Design Manual for Land Treatment of Municipal Wastewater",
    mark: "published",
    address:
      "https://www.climate-policy-watcher.org/constructed-wetlands/natural-resources-conservation-service-nrcs-permeability-classes-for-saturated-soil.html",
  },
  "cheng-2019": {
    citation: "Cheng, Cui & Zhu (2019), Hydrology Research 50: 155-165, on time compression",
    mark: "published",
    address: "https://doi.org/10.2166/nh.2017.062",
  },
  "scs-shapes": {
    citation:
      "Soil Conservation Service 24-hour rainfall distributions I, IA, II and III, as tabulated in Chow, Maidment & Mays (1988), p. 461; type II in steps of 0.1 h from a listing that agrees with it",
    mark: "published",
  },
  "neh-630-10": {
    citation: "USDA NRCS (2004), National Engineering Handbook, part 630, chapter 10",
    mark: "published",
  },
  "tr-55": {
    citation:
      "USDA SCS (1986), Urban Hydrology for Small Watersheds, TR-55, table 2-2b and equations 2-1 to 2-4",
    mark: "published",
    address: "https://de.scribd.com/document/270575197/SCS-Runoff-Curve-Number-Method-TR-55",
  },
} as const satisfies Readonly<Record<string, Source>>;
