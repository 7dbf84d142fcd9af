/** The sources behind the methods of spade holes. */
import type { SourceId } from "../../sources.ts";

export const EARTHWORMS_BEHIND = {
  "hole-density": ["iso-23611-1", "geometry"],
  "holes-mean-log-t": ["nist-handbook", "own-rule"],
  "holes-mean-alike": ["nist-handbook", "own-rule"],
  "none-found-exact": ["garwood-1936"],
  "hole-conditions": ["worm-conditions", "farm-conservation-worms", "hodson-2021", "own-rule"],
  "share-of-holes": ["clopper-pearson-1934"],
  "counts-dispersion": ["krebs"],
  "negative-binomial-k": ["bliss-fisher-1953"],
  "empty-share": ["krebs"],
  "count-range-exact": ["garwood-1936", "krebs", "own-rule"],
  "holes-to-see": ["clopper-pearson-1934", "own-rule"],
  "guide-level": [],
  "holes-needed": ["krebs", "stroud-2019", "nist-handbook", "own-rule"],
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;
