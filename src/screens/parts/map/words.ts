/** Words of the map and of the list beside it. */
import { plural, writeNumber } from "../numbers.ts";
import { TONGUE } from "../words.common.ts";
import type { WordsOf } from "../words-of.ts";
import type { Sign } from "./drawing.ts";
import type { Wind } from "./way.ts";

const MINUTE_S = 60;

/** A time that went by: seconds below two minutes, then whole minutes. */
export const goneBy = (ms: number): string => {
  const seconds = ms / 1000;
  const [count, one] =
    seconds < 2 * MINUTE_S ? [Math.round(seconds), "second"] : [Math.floor(seconds / MINUTE_S), "minute"];
  return `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one, other: `${one}s` })}`;
};

/** Where what lies on a map stands as a list, for whoever cannot see it. */
export type ListAt = "follows" | "behind-key" | "nowhere";

const LARGER = "Open the map";

const LIST_AT = {
  follows: " The list that follows holds the same.",
  "behind-key": ` “${LARGER}” leads to the same as a list.`,
  nowhere: "",
} satisfies Record<ListAt, string>;

const english = () => ({
  title: "Map",
  label: (field: string, count: number, list: ListAt) =>
    `Map of ${field}: ${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "thing", other: "things" })} on it.${LIST_AT[list]}`,
  hint: "Arrow keys move the map, plus and minus bring it closer or farther.",
  closer: "Closer",
  farther: "Farther",
  fit: "Whole field",
  whereAmI: "Where am I?",
  larger: LARGER,
  north: "north is up",
  onIt: "What lies on it",
  cannotDraw: "The map cannot be drawn just now.",
  noPlace:
    "Nothing here has a position yet. A boundary, a marked spot, or the next test with a position shows up here.",
  you: "you",
  hereAt: (accuracy: string) => `You stand within about ${accuracy} of the middle of the circle.`,
  hereOld: (ago: string) =>
    `No new position. The dashed circle is where you stood ${ago} ago, not where you are now.`,
  looking: "Looking for your position…",
  distancesFrom: {
    you: "Distances are from where you stand.",
    middle: "Distances are from the middle of the field.",
  },
  away: (distance: string, wind: string | null) => (wind === null ? "right here" : `${distance} ${wind}`),
  winds: {
    north: "north",
    "north-east": "north-east",
    east: "east",
    "south-east": "south-east",
    south: "south",
    "south-west": "south-west",
    west: "west",
    "north-west": "north-west",
  } satisfies Record<Wind, string>,
  signs: {
    spot: "Marked spot",
    "old-grass": "Old-grass spot",
    edge: "Visible edge",
    line: "Line",
    ring: "Ring",
    hole: "Hole",
    note: "Note",
  } satisfies Record<Sign, string>,
  hole: (number: number) => `Hole ${writeNumber(number, TONGUE)}`,
  ring: (letter: string) => `Ring ${letter}`,
  between: (one: string, other: string) => `between ${one} and ${other}`,
  byHand: "moved by hand",
  newestOnly: (shown: number) => `Only the newest ${writeNumber(shown, TONGUE)} tests are drawn.`,
  without: (count: number) =>
    `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "test has", other: "tests have" })} no position.`,
  boundary: "Boundary",
  noBoundary: "none yet",
  strip: "strip",
  more: (count: number) => `Show ${writeNumber(count, TONGUE)} more`,
  open: "Open",
});

export const MAP_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
