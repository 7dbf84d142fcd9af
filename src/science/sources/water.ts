/** Sources of water, nitrogen, shelter and cover-crop mass. */
import type { Source } from "../source.ts";

export const WATER_SOURCES = {
  "fao-56": {
    citation:
      "Allen, Pereira, Raes & Smith (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, with the errata of 2006",
    mark: "published",
  },
  "fao-56-table-19": {
    citation:
      "FAO-56, Table 19, read second-hand: water held by soils in two copies, readily and totally evaporable water in one",
    mark: "published",
  },
  "fao-56-table-22": {
    citation:
      "FAO-56, Table 22, read second-hand in two copies: rooting depth and depletion fraction of crops",
    mark: "published",
  },
  "fao-56-from-memory": {
    citation:
      "FAO-56: shift and bounds of the depletion fraction, coefficient of wet soil, usual wind, calibration of Hargreaves, mulch in chapter 10",
    mark: "not-checked",
  },
  "asce-2005": {
    citation:
      "ASCE-EWRI (2005), Standardized reference evapotranspiration equation: limits of the cloud term",
    mark: "not-checked",
  },
  "greb-1966": {
    citation:
      "Greb (1966), Soil Science Society of America Proceedings 30: wheat straw and drying from wet soil",
    mark: "published",
    address: "https://zendy.io/title/10.2136/sssaj1966.03615995003000060035x",
  },
  "klocke-2009": {
    citation: "Klocke, Currie & Aiken (2009), Transactions of the ASABE 52(1): 103-110",
    mark: "published",
    address: "https://www.ars.usda.gov/research/publications/publication/?seqNo115=255584",
  },
  "unger-parker-1976": {
    citation: "Unger & Parker (1976), Soil Science Society of America Journal 40: 938",
    mark: "published",
    address: "https://scilit.com/publications/4fe29aeac3ea9fe34b10a7c45f182c5a",
  },
  "ramos-2024": {
    citation: "Ramos, Darouich & Pereira (2024), Irrigation Science, doi 10.1007/s00271-024-00924-8",
    mark: "published",
  },
  "cool-seedbed": {
    citation: "Mulch keeps the seedbed cooler and wetter in spring",
    mark: "common-practice",
  },
  "nrcs-c-to-n-2011": {
    citation: "USDA NRCS (2011), Carbon to nitrogen ratios in cropping systems, Table 1",
    mark: "published",
  },
  "pnw-636": {
    citation:
      "Sullivan & Andrews (2012), PNW 636: estimating plant-available nitrogen release from cover crops, and its current edition",
    mark: "published",
    address:
      "https://extension.oregonstate.edu/catalog/pub/pnw-636-estimating-plant-available-nitrogen-release-cover-crops",
  },
  "cover-crops-profitably": {
    citation:
      "Sustainable Agriculture Network, Managing cover crops profitably: nitrogen of the first season",
    mark: "published",
  },
  "carbon-40": {
    citation: "USDA ARS, Central Great Plains (Akron): percent N as 40 over C:N",
    mark: "published",
  },
  "farmstead-windbreaks": {
    citation:
      "Iowa State University Extension, Farmstead windbreaks: planning, Table 1; columns scrambled in the copy, their order inferred",
    mark: "published",
    address: "https://studylib.net/doc/11301295/farmstead-windbreaks--planning",
  },
  "how-windbreaks-work": {
    citation: "Brandle & Finch, How windbreaks work: extent of shelter; open-wind shares from memory",
    mark: "not-checked",
  },
  "kort-1988": {
    citation:
      "Kort (1988), Agriculture, Ecosystems & Environment 22/23: 165-190: spring wheat, maize and winter wheat",
    mark: "published",
  },
  "kort-1988-from-memory": {
    citation: "Kort (1988), the other crops of its table",
    mark: "not-checked",
  },
  "minnesota-yield-monitors": {
    citation:
      "Yield monitors on nine fields in south-west Minnesota (2007): gains of 2 to 3 % to losses of 2 %, loss zone of 1 to 1.5 heights, gain up to 12",
    mark: "published",
    address: "https://www.porkbusiness.com/article/windbreaks-can-increase-crop-yield",
  },
  "osu-cover-crop-sampling": {
    citation: "Andrews et al., Oregon State University, cover crop sampling instructions",
    mark: "published",
  },
  "brennan-2023": {
    citation: "Brennan (2023), Agronomy Journal 115: 2275-2285: quadrats and row spacing",
    mark: "published",
    address: "https://ars.usda.gov/research/publications/publication/?seqNo115=397556",
  },
  "garwood-1936-quadrats": {
    citation: "Garwood (1936), Biometrika 28: 437-442: exact limits of a count",
    mark: "not-checked",
  },
  "mirsky-2013": {
    citation: "Mirsky et al. (2013), Weed Technology 27: 193-203",
    mark: "published",
  },
  "nichols-2020": {
    citation: "Nichols et al. (2020), Agricultural & Environmental Letters 5: e20022",
    mark: "published",
    address: "https://digitalcommons.unl.edu/agronomyfacpub/1396/",
  },
  "wells-2016": {
    citation: "Wells et al. (2016), Renewable Agriculture and Food Systems",
    mark: "published",
  },
  "mirsky-2009": {
    citation: "Mirsky et al. (2009), Agronomy Journal 101: 1589",
    mark: "published",
  },
  "early-milk": { citation: "Early milk as the practical end of rolling", mark: "not-checked" },
  "carbon-share": {
    citation: "Dry matter of plants is 40 to 45 % carbon",
    mark: "common-practice",
  },
} as const satisfies Readonly<Record<string, Source>>;
