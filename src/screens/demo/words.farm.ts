/** What the people of the example farm wrote down. The farm, its fields and what happened there are invented. */
import type { TradeWords } from "../parts/trade.ts";

export const farmWords = (trade: TradeWords) => ({
  farm: "Hollow Lane (example farm)",
  piece: "Rushmere Piece",
  quarter: "Lantern Quarter",
  strawLeft: "straw left",
  strawOff: "straw carried off",
  coverCrop: "cover crop",
  withCover: (rep: number) => `cover crop ${rep}`,
  withoutCover: (rep: number) => `no cover crop ${rep}`,
  rope: "Hollow Lane rope",
  rings: ["U", "V", "W", "X", "Y", "Z"],
  template: "Hollow Lane template",
  bottle: "Hollow Lane bottle",
  ruler: "Hollow Lane ruler",
  spotOf: (strip: string) => `Peg, ${strip}`,
  oldGrassSpot: "Old grass by the well",
  edge: "Where the straw ends",
  sprayed: "weeds before the cash crop",
  paper: "notebook of an earlier year",
  notes: {
    edge: `You can see the edge from the ${trade.headland}: dark and crumbling where the straw stayed, pale and capped where it went.`,
    wheels: "Most rings of the straw side came to stand in wheel tracks. Look at both places by themselves.",
    crust: "Thin crust after the last rain, cracks as wide as a finger between the rows.",
    casts: "Casts all over the old grass. It is the yardstick of this farm.",
  },
});

export type FarmWords = ReturnType<typeof farmWords>;
