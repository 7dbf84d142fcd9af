import type { CautionName } from "./cautions-due.ts";
import type { TradeWords } from "./trade.ts";
import type { WordsOf } from "./words-of.ts";

type Said = { readonly what: string; readonly mind: string };

/** Words of what to mind before a line, a ring or a hole. */
const english = ({ spade }: TradeWords) => ({
  title: "Before you dig or drive a ring in",
  titleLine: "Before you walk in",
  local: "Local codes, the law and licensed practice come first wherever they say more than this.",
  taken: "I have read this",
  all: "All cautions",
  names: {
    services: {
      what: "Buried cables, pipes and drains",
      mind: "Before the first ring or hole on this field, ask the owner and the service that marks buried lines. Keep clear of what is marked. Do not dig or drive where nobody can tell.",
    },
    sprayed: {
      what: "Sprayed",
      mind: "Stay out until the time on the label has run and the spray is dry. The label is the rule: when it may be entered, and what to wear. Ask whoever sprayed.",
    },
    "clean-kit": {
      what: `Clean boots, ${spade} and rings`,
      mind: "You come from another farm. Brush off the soil and wash before you walk on: weeds, pests and diseases travel in soil. Follow what this farm and the plant health rules here ask for.",
    },
    livestock: {
      what: "Livestock",
      mind: "Do not go in with bulls, or with cows that have calves. Know your way out.",
    },
    fences: {
      what: "Electric fences",
      mind: `Take every fence for live. Keep steel rings, ${spade}s and wet ropes off it.`,
    },
    lightning: {
      what: "Lightning",
      mind: "When you hear thunder, stop and go indoors or into a closed car. The test can be begun again.",
    },
    heat: {
      what: "Heat and cold",
      mind: "This takes hours: bring water to drink, shade and a hat, or warm dry clothes.",
    },
    alone: {
      what: "Working alone",
      mind: "Tell somebody where you are and when you will be back.",
    },
    lifting: {
      what: "Lifting water",
      mind: "1\u00a0L weighs 1\u00a0kg, a US gallon about 8.3\u00a0lb. Carry several small cans, close to the body, and bend your knees.",
    },
    mustard: {
      what: "Mustard water",
      mind: "It burns eyes and skin. Wear gloves and eye protection and keep it from children, water and livestock. In the eye: rinse with clean water for many minutes and see a doctor. Rinse the worms in clean water at once. In some places it needs a permit.",
    },
    driving: {
      what: "Driving a ring in",
      mind: "Steel on steel throws chips: wear eye protection. Wear gloves, the rim is sharp, and keep fingers from under the board.",
    },
    "soil-between-farms": {
      what: "Worms and soil stay here",
      mind: "Never carry worms or soil from one farm to another. Put the worms back where they came from. Wash your hands before you eat.",
    },
  } satisfies Record<CautionName, Said>,
  sprayedOn: (day: string) => `Sprayed on ${day}`,
  pouredToday: (volume: string, weight: string) =>
    `Poured today so far: ${volume}. That was ${weight} to carry.`,
});

export const CAUTION_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
