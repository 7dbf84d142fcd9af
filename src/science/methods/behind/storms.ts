/** The sources behind the methods of infiltration models and storms. */
import type { SourceId } from "../../sources.ts";

export const STORMS_BEHIND = {
  "fit-kostiakov": ["kostiakov-1932"],
  "fit-kostiakov-lewis": ["lewis-1937"],
  "fit-philip": ["philip-1957"],
  "fit-horton": ["horton-1940", "de-laat-savenije"],
  "fit-green-ampt": ["green-ampt-1911", "chow-1988"],
  "variable-projection": ["golub-pereyra-1973", "lawson-hanson-1974", "brent-1973"],
  "curve-errors": ["seber-wild-1989"],
  "curve-aicc": ["hurvich-tsai-1989"],
  "kfs-falling-head": ["bagarello-2004", "elrick-1989"],
  "kfs-steady-ring": ["reynolds-elrick-1990", "elrick-1989"],
  "kfs-two-heads": ["reynolds-elrick-1990"],
  "kfs-beerkan-steady": ["ssbi-2017", "elrick-1989"],
  "kfs-beerkan-transient": ["sbi-2014", "elrick-1989"],
  "kfs-at-20": ["iapws-2008"],
  "permeability-class": ["epa-1981"],
  "time-compression": ["chow-1988", "cheng-2019"],
  "green-ampt-ponding": ["mein-larson-1973", "chow-1988", "rawls-1983"],
  "storm-triangular": ["chow-1988", "own-rule"],
  "storm-24-h-shape": ["scs-shapes"],
  "storm-rings-mean": ["nist-handbook", "own-rule"],
  "storm-order": ["own-rule"],
  "curve-number": ["neh-630-10", "tr-55"],
  "curve-number-of-ground": ["tr-55", "chow-1988"],
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;
