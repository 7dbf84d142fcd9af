import type { TradeWords } from "../parts/trade.ts";
import type { TestHelp } from "./test-words.ts";

/** Words of the help for a spade hole. Rules without a source are common practice. */
export const holeHelp = (trade: TradeWords): TestHelp => {
  const { spade, saddle } = trade;
  return {
    title: "How to count worms in a hole",
    lead: "A hole of known size is dug, its soil is sorted by hand, and every worm with a head is counted.",
    pictures: [
      "Mark the square. Take the mulch off it first and sort it: its worms have a count of their own.",
      `Cut all four sides straight down with the ${spade}, then lift the block quickly onto a sheet. Deep burrowers flee from footsteps and from shaking ground.`,
      "Break the soil by hand over the sheet. One touch for each worm with a head, and into the pot with it. At the end the pot is placed by kind.",
    ],
    rules: [
      {
        title: "What counts",
        says: [
          "Heads only. A worm that was cut counts once, by its head; a tail alone is no worm.",
          "Cocoons are not counted.",
          `Young worms have no ${saddle}. Count them all as young: nobody can tell their kind by eye.`,
          `Grown ones have a ${saddle}. Surface: dark red, lively, in the mulch. Topsoil: pale ${trade.grey}, green or pink. Deep burrower: long, dark head, pale tail.`,
          "A total alone is a full result. The kinds are then shown as not determined, which is not the same as absent.",
        ],
      },
      {
        title: "The same every time",
        says: [
          "Choose the worm method first. It sets size, depth, minutes and season; only holes dug the same way may be compared.",
          "Measure the sides of the square: worms per m² follow from the area. Depth is shown and never divided by.",
          "Sort for the minutes of the method. People and pauses are kept beside the count.",
          "Dig all holes of a comparison on one day. Frost, drought and fresh tillage drive worms away from the top.",
          "Cold or dry soil drives worms down. The count stays as it is; write down temperature and wetness beside it.",
          "A strip has a range from three holes on.",
        ],
      },
      {
        title: "Mustard water",
        says: [
          "It burns eyes and skin: gloves, eye protection, and clean water at hand.",
          "It brings up deep burrowers from below the hole. Level the bottom, pour, and look for as long as the method says.",
          "Rinse each worm in clean water at once: mustard burns it.",
          "Other holes can be sorted meanwhile; every hole keeps its own clock.",
        ],
      },
      {
        title: "Afterwards",
        says: [
          "Fill the hole before you leave it, in the order of its layers, and tread it down lightly: people and livestock break legs in open holes.",
          "Put the worms back on top, out of the sun, on the field that they came from.",
        ],
      },
    ],
  };
};
