/** Sources of spade holes. */
import type { Source } from "../source.ts";

export const EARTHWORM_SOURCES = {
  "iso-23611-1": {
    citation: "ISO 23611-1 (third edition, 2026): sampling of earthworms by hand-sorting and extraction",
    mark: "not-checked",
  },
  "mustard-water": {
    citation: "Mustard water on 0.5 × 0.5 m: 53 g of powder made up to 7 L, a wait of about 20 minutes",
    mark: "published",
  },
  "stroud-2019": {
    citation: "Stroud (2019), PLoS ONE 14(2): e0203909, with the survey results that went with it",
    mark: "published",
    address: "https://journals.plos.org/plosone/article?id=10.1371/journal.pone.0203909",
  },
  "farm-conservation-worms": {
    citation: "Game & Wildlife Conservation Trust, advice for farmer clusters: earthworms",
    mark: "published",
    address: "https://www.farmerclusters.com/advice/monitoring-species/earthworms/",
  },
  "sheep-manual-6-3": {
    citation: "Making more from sheep, manual of the Australian wool and meat levy bodies, tool 6.3",
    mark: "published",
    address: "http://makingmorefromsheep.com.au/healthy-soils/tool_6.3.htm",
  },
  "central-european-worms": {
    citation:
      "Soil fertility guide of organic research in Central Europe: 120-140 worms per m² in good cropland",
    mark: "published",
  },
  "levy-board-worms": {
    citation:
      "AHDB, How to count earthworms: fewer than 4, 4 to 8, more than 8 per 20 cm cube in arable land",
    mark: "not-checked",
  },
  "fao-2008": {
    citation:
      "Shepherd et al. (2008), Visual soil assessment, FAO: 15 and 30 per 20 cm cube; the edition of 2000 used lower limits",
    mark: "not-checked",
  },
  "test-kit-worms": {
    citation: "USDA, Soil quality test kit guide (1999): about 10 worms per square foot, 12 in deep",
    mark: "not-checked",
  },
  "hodson-2021": {
    citation: "Hodson et al. (2021), PLoS ONE 16(8): e0241945: counts within 20-30 m predict each other",
    mark: "published",
  },
  "worm-conditions": {
    citation: "Cold and dry soil drive worms down, as field guides say; the limit of 8 °C",
    mark: "not-checked",
  },
  "garwood-1936": {
    citation: "Garwood (1936), Biometrika 28: 437-442: exact limits for counts that fall by chance",
    mark: "not-checked",
  },
  "bliss-fisher-1953": {
    citation: "Bliss & Fisher (1953), Biometrics 9: 176-200: fitting the negative binomial",
    mark: "not-checked",
  },
  krebs: {
    citation: "Krebs, Ecological Methodology, chapters 4 and 7: counts in clumps and how many samples",
    mark: "not-checked",
  },
} as const satisfies Readonly<Record<string, Source>>;
