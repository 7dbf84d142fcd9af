/** The sources behind the methods of residue and straw. */
import type { SourceId } from "../../sources.ts";

export const STRAW_BEHIND = {
  "photo-points": ["lohr-1999", "corak-1993", "tape-and-photos-2021"],
  "cover-mass": ["gregory-1982"],
  "thickness-mass": ["geometry"],
  "straw-harvest-index": ["harvest-index-table-s3"],
  "straw-per-grain": ["straw-per-bushel", "own-rule"],
  "straw-line": ["ipcc-2006-table-11-2", "own-rule"],
  "cutting-height": ["stubble-share", "allen-1988", "own-rule"],
  "two-day-loss": ["gregory-1982", "zou-donner-2008", "nist-handbook"],
  "residue-decay": ["stroo-1989", "ah703-errata", "stott-1990"],
  "stems-standing": ["steiner-1994", "own-rule"],
  "mass-left": ["geometry"],
  passes: ["scs-emi-1992", "mccool-1995"],
  "rain-erosion": ["renard-1997", "rusle2-training"],
  "wind-erosion": ["fryrear-1985", "wind-flat-residue"],
  "straw-ledger": ["own-rule"],
  "could-leave": ["own-rule"],
  "leave-as": ["allen-1988", "own-rule"],
  "straw-nutrients": ["pda-2020", "straw-nutrients-us", "stover-nutrients-us", "own-rule"],
  "break-even": ["own-rule"],
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;
