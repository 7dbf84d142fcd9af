/** Sources of residue and straw. */
import type { Source } from "../source.ts";

export const STRAW_SOURCES = {
  "gregory-1982": {
    citation:
      "Gregory (1982), Transactions of the ASAE 25: 1333-1337: cover from residue mass (read in quotations)",
    mark: "published",
  },
  "cover-coefficients": {
    citation:
      "Cover per kilogram of residue: Agriculture Handbook 703 (1997), chapter 5, and others; the low end for wheat from the rule that 1120 kg/ha cover 30 %",
    mark: "not-checked",
  },
  "mulch-density": {
    citation: "Dry mass of a cubic metre of straw mulch, loose to settled",
    mark: "not-checked",
  },
  "ipcc-2006-table-11-2": {
    citation: "IPCC (2006), Guidelines for National Greenhouse Gas Inventories, volume 4, Table 11.2",
    mark: "published",
  },
  "harvest-index-table-s3": {
    citation: "Global Biogeochemical Cycles, GBC20346, supplement, Table S3: harvest index per crop",
    mark: "published",
    address: "https://studylib.net/doc/7211666/gbc20346-sup-0006-tables3",
  },
  "straw-per-bushel": {
    citation:
      "Straw per bushel: University of Illinois, University of Nebraska-Lincoln, Wysocki (1989) and prairie figures; European rules of the trade press",
    mark: "published",
    address: "http://pnwsteep.wsu.edu/tillagehandbook/chapter3/031289.htm",
  },
  "stubble-share": {
    citation: "Vertical distribution of dry mass in cereals straw and its loss during harvesting (abstract)",
    mark: "published",
    address: "http://agro.icm.edu.pl/agro/element/bwmeta1.element.agro-056c9746-81bb-404f-9b4e-d1cb4e4a8279",
  },
  "allen-1988": {
    citation: "Allen (1988), Straw recovery as affected by wheat harvest method (abstract)",
    mark: "published",
    address: "https://agris.fao.org/search/en/providers/122535/records/65df191263b8185d9caac57a",
  },
  "baler-takes": { citation: "Share of a swath that a baler picks up", mark: "not-checked" },
  "baled-dry-share": { citation: "Dry matter of straw as it is baled, 82 to 90 %", mark: "common-practice" },
  "stroo-1989": {
    citation: "Stroo et al. (1989), Soil Science Society of America Journal 53 (read in quotations)",
    mark: "published",
  },
  "ah703-errata": {
    citation: "Official errata to Agriculture Handbook 703 (2001), equation 5-7: degrees Celsius",
    mark: "published",
    address: "https://ja.scribd.com/document/328070559/",
  },
  "half-month-rain": {
    citation: "Agriculture Handbook 703 (1997), chapter 5: rain of half a month that lets residue rot",
    mark: "not-checked",
  },
  "decay-rates": {
    citation: "Decay per decomposition day and crop, as models of residue decay have it",
    mark: "not-checked",
  },
  "steiner-1994": {
    citation: "Steiner et al. (1994), Agronomy Journal 86: 76-81 (abstract)",
    mark: "published",
    address: "https://dl.sciencesocieties.org/publications/aj/abstracts/86/1/AJ0860010076",
  },
  "stott-1990": {
    citation: "Stott et al. (1990), Soil Science Society of America Journal 54: 92-98 (abstract)",
    mark: "published",
    address: "https://dl.sciencesocieties.org/publications/sssaj/abstracts/54/1/SS0540010092",
  },
  "zou-donner-2008": {
    citation: "Zou & Donner (2008), Statistics in Medicine 27: 1693-1702: limits from limits of the parts",
    mark: "not-checked",
  },
  "scs-emi-1992": {
    citation:
      "Soil Conservation Service & Equipment Manufacturers Institute (1992): cover left by machines and winters",
    mark: "not-checked",
  },
  "mccool-1995": {
    citation: "McCool et al. (1995): cover kept and mass kept by tillage are not the same share",
    mark: "published",
    address: "https://www.ars.usda.gov/research/publications/publication/?seqNo115=63412",
  },
  "renard-1997": {
    citation: "Renard et al. (1997), Agriculture Handbook 703 (RUSLE), chapter 5 (read in quotations)",
    mark: "published",
  },
  "rusle2-training": {
    citation: "RUSLE2 training slides: exponent of surface cover 0.025 (interrill) to over 0.05 (rill)",
    mark: "published",
    address:
      "https://fargo.nserl.purdue.edu/rusle2_dataweb/Training/Slide%20Sets/RUSLE2%20slide%20set2_files/v3_slide0131_notes_pane.htm",
  },
  "fryrear-1985": {
    citation: "Fryrear (1985), Transactions of the ASAE 28: 781-784: soil cover and wind erosion (abstract)",
    mark: "published",
  },
  "wind-flat-residue": {
    citation: "Revised wind erosion equation (1998): flat residue",
    mark: "not-checked",
  },
  "carbon-floor-maize": {
    citation:
      "Wilhelm et al. (2007), Agronomy Journal 99: 1665-1667, which figure is for which system from memory; Karlen, USDA-ARS, 2.3 and 3.5 tons per acre; Johnson et al. (2014), BioEnergy Research (abstract)",
    mark: "published",
    address: "https://scilit.net/publications/a3cac99e843923791fceeef3a2b44e52",
  },
  "carbon-floor-mouldboard": {
    citation: "Johnson et al. (2006), Agronomy Journal 98: 622: stover to keep carbon under the mouldboard",
    mark: "not-checked",
  },
  "pda-2020": {
    citation: "Potash Development Association (2020), Nutrients in crop material",
    mark: "published",
    address: "https://www.pda.org.uk/pda_leaflets/nutrients-in-crop-material/",
  },
  "straw-nutrients-us": {
    citation:
      "Nutrients of wheat straw: Ohio State University and University of Illinois extension; PDA (2020)",
    mark: "published",
    address: "https://www.no-tillfarmer.com/articles/1516-the-nutrient-value-of-wheat-straw",
  },
  "stover-nutrients-us": {
    citation:
      "Nutrients of stover: University of Nebraska-Lincoln; Iowa State University PM 1688; IPCC (2006), Table 11.2",
    mark: "published",
    address: "https://crops.extension.iastate.edu/blog/angie-rieck-hinz/remove-stover-replace-nutrients",
  },
  "atomic-weights": { citation: "Standard atomic weights of P, K and O", mark: "derived" },
  "corak-1993": {
    citation: "Corak, Kaspar & Meek (1993), Journal of Soil and Water Conservation 48: 70: points on photos",
    mark: "published",
    address: "https://www.jswconline.org/content/48/1/70",
  },
  "tape-and-photos-2021": {
    citation:
      "Journal of Soil and Water Conservation 76 (2021): 403: tape in the field against grids on photos",
    mark: "published",
    address: "https://www.jswconline.org/content/76/5/403",
  },
} as const satisfies Readonly<Record<string, Source>>;
