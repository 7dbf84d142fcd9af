/** Sources of ring tests. */
import type { Source } from "../source.ts";

export const INFILTRATION_SOURCES = {
  "usda-test-kit": {
    citation:
      "USDA Agricultural Research Service and Natural Resources Conservation Service, Soil Quality Test Kit Guide, chapter 3: infiltration",
    mark: "published",
    address: "https://pdf4pro.com/view/3-infiltration-test-usda-671d1f.html",
  },
  "fao-manual-5": {
    citation: "Brouwer et al. (1988), FAO Irrigation Water Management Training Manual 5, annex 2",
    mark: "not-checked",
    address: "https://www.fao.org/4/s8684e/s8684e0a.htm",
  },
  "fao-basic-rates": {
    citation: "The same manual, annex 2, table 7: basic infiltration rates, read in three quotations",
    mark: "published",
    address: "https://www.fao.org/4/s8684e/s8684e0a.htm",
  },
  "astm-d3385": {
    citation: "ASTM D3385: infiltration rate of soils in field using double-ring infiltrometer",
    mark: "not-checked",
  },
  "minnesota-percolation": {
    citation:
      "Minnesota percolation sheet: three rates in a row that differ by no more than 10 % of the smallest",
    mark: "published",
    address: "https://publicinfo.ci.orono.mn.us/WebLink/0/doc/90702/Page33.aspx",
  },
  "philip-1957": {
    citation: "Philip (1957), Soil Science 84: 257-264, two-term equation of infiltration",
    mark: "not-checked",
  },
  "wuest-2005": {
    citation:
      "Wuest (2005), Vadose Zone Journal: infiltration of rings is lognormal and rises with their size",
    mark: "published",
  },
  "radinja-2019": {
    citation: "Radinja et al. (2019): conductivity within one small plot varies by 73 to 89 %",
    mark: "published",
    address: "https://www.scribd.com/document/422090285/w",
  },
  "nist-sample-sizes": {
    citation: "NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.2.2: sample sizes required",
    mark: "not-checked",
    address: "https://www.itl.nist.gov/div898/handbook/",
  },
} as const satisfies Readonly<Record<string, Source>>;
