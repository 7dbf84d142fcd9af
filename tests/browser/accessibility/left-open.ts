/**
 * What the checker of accessibility cannot judge by itself, and why each may stay. A rule, or a reason of the
 * checker for not judging, that is not named here fails the tests: somebody has to look at it first.
 */
const TOKENS = "every word is measured against what lies behind it, 7:1 at least (looks.ts)";

export const LEFT_OPEN: Readonly<Record<string, string>> = {
  "color-contrast bgOverlap": `text scrolled under the foot or the head, which have a ground of their own; ${TOKENS}`,
  "color-contrast elmPartiallyObscuring": `keys of the foot lie over what is scrolled beneath them, on the foot's own ground; ${TOKENS}`,
  "color-contrast elmPartiallyObscured": `it lies partly under the foot, which has a ground of its own; ${TOKENS}`,
  "color-contrast imgNode": `words in drawings stand on paper, not on a picture; ${TOKENS}`,
  "color-contrast shortTextContent": `one digit or sign is too short for the checker; ${TOKENS}`,
  "color-contrast nonBmp": `signs of formulas (≤ √ Σ) are no letters to the checker; ${TOKENS}`,
  "color-contrast-enhanced nonBmp": `signs of formulas (≤ √ Σ) are no letters to the checker; ${TOKENS}`,
  "color-contrast pseudoContent": `the open hole is marked by a bar at its edge, beside its words; ${TOKENS}`,
  "color-contrast-enhanced pseudoContent": `the open hole is marked by a bar at its edge, beside its words; ${TOKENS}`,
  "color-contrast emptyValue": `a line that nothing was written on yet; ${TOKENS}`,
  "label-content-name-mismatch":
    "the key of the decimal mark shows . or , and is called by its name: a mark alone is spoken by no reader",
  "scrollable-region-focusable":
    "where a ring's words do not fit they are scrolled by a finger; a keyboard reaches all keys without that",
  "th-has-data-cells":
    "versions side by side: the head of each group spans the row of values right under it, which the checker does not follow",
};

/** How a finding is named in the list above. */
export const openAs = ({ rule, why }: { readonly rule: string; readonly why: string }): string =>
  `${rule} ${why}`.trim();
