/** Made-up holes. */
import type { HoleCount } from "../../../../src/science/earthworms/hole-count.ts";

/** A finished hole of 20 × 20 × 20 cm with so many worms in its soil, none of them placed. */
export const hole = (worms: number, but: Partial<HoleCount> = {}): HoleCount => ({
  sidesM: [0.2, 0.2],
  depthM: 0.2,
  found: { mulch: null, soil: worms, "mustard-water": null },
  placed: { young: 0, surface: 0, topsoil: 0, deep: 0 },
  left: worms,
  settled: true,
  finished: true,
  soilTemperatureC: null,
  wetness: null,
  personMinutes: null,
  workedDaysAgo: null,
  place: null,
  ...but,
});

/** A hole whose worms were all placed. */
export const placed = (young: number, surface: number, topsoil: number, deep: number): HoleCount =>
  hole(young + surface + topsoil + deep, { placed: { young, surface, topsoil, deep }, left: 0 });

export const holes = (...counts: readonly number[]): HoleCount[] => counts.map((count) => hole(count));

/** The codes of what is said beside a number. */
export const codes = (cautions: readonly { readonly code: string }[]): string[] =>
  cautions.map(({ code }) => code);
