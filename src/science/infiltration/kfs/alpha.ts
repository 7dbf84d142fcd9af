/** The macroscopic capillary length of soil, chosen by what the soil is like. */

/** Kinds of soil that α* goes by. */
export const SOIL_KINDS = [
  "compacted-clay",
  "fine-without-structure",
  "structured-or-medium-sand",
  "coarse-or-cracked",
] as const;
export type SoilKind = (typeof SOIL_KINDS)[number];

/**
 * α* per millimetre by kind of soil: 0.01, 0.04, 0.12 and 0.36 per centimetre. The third is the first choice for
 * farm soil. A wrong neighbour changes a conductivity by up to about two times, which no reading shows.
 *
 * Source: Elrick, Reynolds & Tan 1989 (from memory).
 */
export const ALPHA_PER_MM: Readonly<Record<SoilKind, number>> = {
  /** Compacted clays without structure: liners, marine or lake clays. */
  "compacted-clay": 0.001,
  /** Clayey soil without structure. */
  "fine-without-structure": 0.004,
  /** Most structured soil from clay to loam; medium and fine sand without structure. */
  "structured-or-medium-sand": 0.012,
  /** Coarse and gravelly sand; strongly structured soil with large cracks or many burrows. */
  "coarse-or-cracked": 0.036,
};
