/**
 * The sources behind the methods of ground cover, of the statistics that it rests on, and of standing still. They
 * stand apart from the methods: what is said beside a line that is being counted must not wait for formulas.
 */
import type { SourceId } from "../../sources.ts";

export const GROUND_COVER_BEHIND = {
  "marks-share": ["missouri-g1570", "nebraska-254"],
  "whole-percent": ["largest-remainder"],
  "wilson-one-line": ["wilson-1927"],
  "strip-ratio": ["lohr-1999", "missouri-g1570"],
  "logit-t": ["lohr-1999", "korn-graubard-1999"],
  "logit-t-planned": ["laflen-1981", "korn-graubard-1999", "own-rule"],
  "one-sided-exact": ["clopper-pearson-1934", "laflen-1981", "own-rule"],
  "lines-needed": ["laflen-1981", "nist-handbook", "own-rule"],
  "chance-logit-t": ["lohr-1999", "korn-graubard-1999", "own-rule"],
  "in-step": ["rickman-1996", "geometry", "own-rule"],
  "across-pass": ["geometry", "own-rule"],
  "mean-t": ["nist-handbook"],
  "line-mean-t": ["lohr-1999", "nist-handbook"],
  "standing-still": ["w3c-geolocation", "nima-tr8350-2", "geometry", "own-rule"],
  "short-distance": ["nima-tr8350-2", "geometry"],
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;

export type GroundCoverMethodId = keyof typeof GROUND_COVER_BEHIND;

/**
 * The sources of several of these methods, each once, in the order of the methods.
 *
 * @example
 * sourcesOfCover(["wilson-one-line"]); // ["wilson-1927"]
 */
export const sourcesOfCover = (methods: readonly GroundCoverMethodId[]): readonly SourceId[] => [
  ...new Set(methods.flatMap((id) => GROUND_COVER_BEHIND[id])),
];
