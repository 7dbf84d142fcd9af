import type { TradeWords } from "../parts/trade.ts";
import type { TestHelp } from "./test-words.ts";

/** Words of the help for a ring. Rules without a source are common practice. */
export const ringHelp = (trade: TradeWords): TestHelp => {
  const { levelledOff } = trade;
  return {
    title: "How to run a ring",
    lead: "Water is put into a ring that stands in the ground, and its way into the soil is read against the clock.",
    pictures: [
      "Wear eye protection and gloves. Lay a board across the ring and drive it in evenly and level, without rocking it. Firm the soil along the inside edge with a finger.",
      "Pour gently onto leaves, a sheet of plastic or your hand, so that the ground is not washed. Start the clock when the water is in.",
      "Read when the phone says so, or at any other time. Water is gone when the ground only glistens and nothing stands on it any more.",
    ],
    rules: [
      {
        title: "Before the water",
        says: [
          "Measure the ring from inside edge to inside edge, twice at right angles, and keep it in the kit. A correction there corrects every test made with it.",
          "Say where it stands against the row and what was done with the mulch inside: kept, parted at the edge, removed or replaced. Mulch kept against mulch removed are two different things.",
          "Measure from the rim down to the ground at four places: that says how deep it stands and whether it is level.",
          "Do not stamp the ground inside, and do not choose a place because it has or lacks holes.",
        ],
      },
      {
        title: "Reading",
        says: [
          "Touch “Read now” at the moment you look. The number may follow later: the moment is kept.",
          "A ruler stays at one place. Read at the flat of the water, not where it climbs up the ruler, and always the same way: depth of water, or down from the rim.",
          "One measured pour: the same amount every time, and again as soon as only a glistening is left.",
          "Kept at one level: top up to the mark from a measured bottle, and write down how much.",
          "The first pour on dry ground is the wetting. It is kept, and not compared.",
          "Go on until three intervals show the same rate. The app says “still slowing” or “" +
            levelledOff +
            "”, and when it cannot tell.",
        ],
      },
      {
        title: "Something happened",
        says: [
          "Water comes out beside the ring: it leaked. What came before counts, what comes after does not. Start again one pace away; the old ring stays tied to the new one.",
          "A burrow in the ring counts. It is part of the ground and is named, not avoided.",
          "A crack, a bump, rain, or water that ran dry: say it when you see it. No reading is lost by it; what it touched is left out of the result, and the sheet says so.",
        ],
      },
      {
        title: "What it is good for",
        says: [
          "For comparing places: strip beside strip, this year beside last, with the same ring, the same mulch and the same water.",
          "Not for sizing drains, ponds, septic fields or structures. That needs licensed advice and its own tests.",
          "One ring is one point, and two rings a pace apart can differ several times over. A strip has a range from three rings on.",
        ],
      },
    ],
  };
};
