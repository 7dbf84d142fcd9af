import type { TradeWords } from "../parts/trade.ts";
import type { RuleGroup } from "./test-words.ts";

/** Words of the page about comparing: what makes it fair, what a range is, and how sure the three words are. */
export const compareHelp = ({ tramline }: TradeWords) => ({
  lead: "Two strips always differ a little. The question is whether other lines, holes or rings on them would say the same.",
  groups: [
    {
      title: "Like with like",
      says: [
        "Measure all strips on one day, in the same way, with the same kit and, if you can, the same people.",
        `Put the tests at the same place against the row on every strip. A wheel track or a ${tramline} set against the row compares traffic, and not what was done to the strip.`,
        "Rings: the same mulch inside, ground as wet on both sides, and never a first pour against a later one. Holes: the same size, depth and minutes.",
        "Choose the places before you look at the ground: so many paces in, not where it looks good or bad.",
        "Side by side says first what is unlike. It shows no number of such strips until you ask for it, and what it said stays there.",
        "One strip of each compares two places: ground and treatment cannot be told apart. Several strips of each, side by side in reps, can tell.",
        "The old-grass spot is a yardstick: it shows what this soil does under old grass. It is no strip to compare with.",
      ],
    },
    {
      title: "What a range means",
      says: [
        "The range says where the true value of the strip lies, as far as the samples can say. Of 20 such ranges about 19 hold it.",
        "It takes three lines, holes or rings on a strip. More of them make it narrower, at first quickly and then slowly.",
        "“Give or take 5 points”: the range reaches about 5 points to either side.",
        "It speaks of which places were measured. It knows nothing of misreading, of a rope or ring that was measured wrong, or of another day.",
        "Ranges of two strips may overlap and the strips still differ clearly. Side by side works it out; the eye cannot.",
      ],
    },
    {
      title: "Clearly, probably, cannot tell yet",
      says: [
        "Clearly different: the 95 % range of the difference leaves out no difference. Where there is none, chance alone says so about once in 20 times.",
        "Probably different: only its 80 % range does. Where there is no difference, chance alone says “probably” or “clearly” about once in 5 times.",
        "Cannot tell yet: it could still be chance. That does not mean that they are the same. Where it can, the app says about how many more would tell.",
        "The more you compare, the more often chance alone looks like a difference.",
        "A clear difference can be small. Look at how large it is, and whether that matters on this farm.",
      ],
    },
    {
      title: "What a guess is for",
      says: [
        "Before the first line, hole or ring of a strip on a day you may write down what you expect. It can stay empty.",
        "It is kept beside the result and never counted in it. The two together show how far the eye was off.",
        "Let the grower guess, and before anything is counted: after that it is no guess, and is not asked for.",
      ],
    },
  ] satisfies readonly RuleGroup[],
});
