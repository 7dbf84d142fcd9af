/** The sources behind the methods of ring tests. */
import type { SourceId } from "../../sources.ts";

export const INFILTRATION_BEHIND = {
  "ring-area": ["geometry", "astm-d3385"],
  "ring-measured-pour": ["usda-test-kit", "own-rule"],
  "ring-ruler": ["fao-manual-5", "own-rule"],
  "ring-kept-level": ["astm-d3385", "own-rule"],
  "ring-depth-after": ["own-rule"],
  "ring-last-half-hour": ["own-rule"],
  "ring-levelled-off": ["minnesota-percolation", "own-rule"],
  "ring-until-level": ["philip-1957", "own-rule"],
  "ring-side-flow": ["astm-d3385", "own-rule"],
  "ring-water": ["geometry", "own-rule"],
  "finish-first": ["own-rule"],
  "rings-geometric-mean": ["wuest-2005"],
  "rings-log-t": ["wuest-2005", "nist-handbook"],
  "smallest-ratio": ["nist-sample-sizes", "radinja-2019", "own-rule"],
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;
