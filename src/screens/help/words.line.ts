import type { TradeWords } from "../parts/trade.ts";
import type { TestHelp } from "./test-words.ts";

/** Words of the help for a line. Rules without a source are common practice. */
export const lineHelp = (trade: TradeWords): TestHelp => ({
  title: "How to count a line",
  lead: "A rope with marks is laid across a strip. At each mark one question is answered: what would a raindrop meet first?",
  pictures: [
    "Lay the rope straight and tight across the rows, straight over or diagonally. Peg both ends. It does not move until the last mark is read.",
    "Stand over a mark and look straight down along one edge of it, always the same edge. The point counts, not the width of the mark.",
    "Say what lies at that point and touch the key. One person looks and calls, another touches, or one does both.",
  ],
  rules: [
    {
      title: "What the raindrop meets first counts",
      says: [
        "A green leaf over straw counts as green. A weed is green too.",
        "Straw, stalks, leaves and chaff that are dead count as residue, whether they lie or stand. Set flat or standing as it is at the mark.",
        `Straw on a ${trade.stone} is residue. A ${trade.stone} with nothing on it is ${trade.stone}: it is reported by itself, and counts as ground cover only when the settings say so.`,
        "Dust and crumbs too small to stop a drop are bare ground.",
        "Dung, moss or whatever else matters on this ground can have a fifth key of its own.",
        "If you waver between two, take what lies under the edge of the mark and go on. Do not look for a hit.",
      ],
    },
    {
      title: "Where the rope lies",
      says: [
        `Stay clear of the ${trade.headland}, gateways and ${trade.tramline}s, unless they are what you want to know: then say so as the place of the line.`,
        "The rope should cross one full pass of the machine that spread the residue: residue is thrown unevenly across it.",
        "Straight across rows of one spacing, marks and rows can fall in step. With the row spacing written down the app warns; lay the rope at another angle then.",
        "Choose the place before you look at the ground: so many paces from the edge, not where it looks good.",
        "Come back to the same places every season.",
      ],
    },
    {
      title: "How many",
      says: [
        "A strip has a range from three lines on. Lines at different places of the strip say more than more marks on one line.",
        "After each line the app says about how many more make it give or take a few points.",
      ],
    },
    {
      title: "When something goes wrong",
      says: [
        "The rope slipped or you lost count: “Set mark number” puts it right. Marks that nobody saw become not read; they are never guessed.",
        "The line may end at any mark. What was read until there counts.",
        "Every mark can be corrected, and every touch undone, back to the first.",
      ],
    },
  ],
});
