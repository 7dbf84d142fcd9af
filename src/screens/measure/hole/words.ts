import type { Layer, WormGroup } from "../../../record/hole/entries.ts";
import type { Wetness } from "../../../record/hole/reading.ts";
import { plural } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";
import type { Counted } from "./stand.ts";
import { holes, number, people, worms } from "./words.counts.ts";
import { digWords } from "./words.dig.ts";
import { sheetWords } from "./words.sheet.ts";
import { stripWords } from "./words.strip.ts";

const LAYER = { mulch: "mulch", soil: "soil", "mustard-water": "mustard water" } satisfies Record<
  Layer,
  string
>;

const english = (trade: TradeWords) => {
  const { saddle } = trade;
  const group = {
    young: "young",
    surface: "surface",
    topsoil: "topsoil",
    deep: "deep burrower",
  } satisfies Record<WormGroup, string>;
  const groups = { ...group, deep: "deep burrowers" } satisfies Record<WormGroup, string>;
  const what = (count: Counted): string =>
    count in LAYER ? LAYER[count as Layer] : groups[count as WormGroup];
  return {
    title: (index: number) => `hole ${number(index)}`,
    capitalTitle: (index: number) => `Hole ${number(index)}`,
    gone: "This hole is not on this device.",
    deleted: "This hole was deleted. It lies under Deleted records.",
    worms,
    holes,
    unit: { worms: "worms", people: "people" },
    size: (sides: string, depth: string) => `${sides}, ${depth} deep`,
    sides: (a: string, b: string, unit: string) => `${a} × ${b} ${unit}`,
    layer: LAYER,
    layerLabel: "Where the worms are found",
    group,
    groupHint: {
      young: `no ${saddle}`,
      surface: "dark red, lively, in the mulch",
      topsoil: `pale ${trade.grey}, green or pink`,
      deep: "long, dark head, pale tail",
    } satisfies Record<WormGroup, string>,
    question: {
      mulch: "Sort the mulch first",
      soil: "Sort the soil of the hole",
      "mustard-water": "Which worms come up?",
    } satisfies Record<Layer, string>,
    headsOnly: "One touch for each worm with a head; a tail alone is no worm.",
    placeQuestion: "Which worm is it?",
    placeHint: `Only grown worms, those with a ${saddle}, are told apart.`,
    closedQuestion: (index: number) => `Hole ${number(index)} is closed.`,
    closedHint: "Fill it up in the order of its layers, and put the worms back on top.",
    worm: "Worm",
    soFar: "found in this hole so far",
    found: "found in this hole",
    left: "left in the pot",
    allPlaced: "in the pot: all are placed",
    tally: (found: number, placed: number, left: number) =>
      `${number(found)} found, ${number(placed)} placed, ${number(left)} left`,
    toPlace: "Place the worms",
    toFind: "Find more",
    atOnce: "Count at once",
    numbers: "Type the numbers",
    correct: "Correct",
    close: "Close the hole",
    reopen: "Go on with this hole",
    sheet: "See this hole",
    next: "Next hole",
    openHoles: "Open holes",
    waiting: (count: number, minutes: number) => `${number(count)} · mustard ${number(minutes)} min`,
    lookNow: (count: number) => `${number(count)} · mustard: look now`,
    sorters: (count: number) => people(count),
    sorting: {
      question: "How many people sort?",
      nobody: "Nobody is timed",
      paused: (time: string) => `Pause · ${time} so far`,
      going: (count: number, time: string) =>
        count === 1 ? `1 person sorts · ${time}` : `${number(count)} people sort · ${time}`,
      of: (minutes: string) => ` of ${minutes} min`,
      up: "The time of the method is up.",
      pause: "Pause",
      key: (count: number) => `${people(count)} sorting`,
      more: "More",
      apart: "The clock of this phone was set meanwhile; the minutes go by what ran on.",
    },
    mustard: {
      pour: "Poured now",
      again: "Poured again",
      before: "Level the bottom, then pour.",
      eyes: "Mustard burns eyes and skin: gloves on. Rinse each worm in clean water.",
      poured: (minutes: number, clock: string, litres: string | null) =>
        `Poured ${minutes === 0 ? "just now" : `${number(minutes)} min ago`} (${clock})${litres === null ? "" : `, ${litres}`}.`,
      lookUntil: (clock: string) => `Look for worms until ${clock}.`,
      over: (clock: string) => `The wait ended at ${clock}: have a last look.`,
      litres: "How much?",
      litresQuestion: "How much mustard water was poured?",
      apart: "The clock of this phone was set meanwhile; how long ago goes by what ran on.",
      tooMuch: "That is too little or too much for one hole.",
    },
    conditions: {
      ask: "Few worms: was the soil cold or dry?",
      open: "Soil: temperature and wetness",
      title: "How was the soil?",
      why: "Cold or dry soil drives worms down. The count stays as it is; this stands beside it.",
      wetness: { dry: "dry", moist: "moist", wet: "wet" } satisfies Record<Wetness, string>,
      wetnessQuestion: "By hand, it is",
      temperature: "Type the temperature",
      temperatureQuestion: "How warm is the soil, a hand deep?",
      temperatureIs: (value: string) => `Temperature: ${value}`,
      notSaid: "Temperature: not said",
      asBefore: (said: string) => `As before: ${said}`,
      tooFar: "Soil is not that cold or hot. Look at the number again.",
    },
    count: {
      question: (of: Counted) =>
        of in LAYER ? `How many worms from the ${what(of)}?` : `How many are ${what(of)}?`,
      instead: (count: number) =>
        `It stands in the place of the ${number(count)} counted so far; they stay on record.`,
      total: "A total alone is a full result.",
      notWhole: "That is not a count. Write whole worms.",
    },
    list: {
      title: "Touch a number to correct it",
      found: "Found",
      placed: "Placed",
      corrected: "corrected",
      other: "Besides",
      notLooked: "not looked at",
      poured: (clock: string) => `Mustard water, ${clock}`,
      noLitres: "how much is not said",
      soil: "The soil",
      unsaid: "not said",
    },
    doubts: (count: number) =>
      `${number(count)} ${plural(count, TONGUE, { one: "question has", other: "questions have" })} two answers: choose`,
    doubtsTitle: "Two phones, two answers",
    doubtsNone: "Nothing is open any more.",
    two: {
      count: (of: Counted) =>
        `Two answers for the worms ${of in LAYER ? "from the" : "that are"} ${what(of)}: which one?`,
      since: (count: number) => `with the ${number(count)} counted since`,
      temperature: "Two answers for the temperature: which one?",
      wetness: "Two answers for how wet the soil is: which one?",
    },
    took: (did: string) => `Taken: ${did}`,
    undone: (did: string) => `Undone: ${did}`,
    redone: (did: string) => `Redone: ${did}`,
    did: {
      worm: (layer: Layer) => `worm from the ${LAYER[layer]}`,
      found: (layer: Layer, count: number) => `${worms(count)} from the ${LAYER[layer]}, counted at once`,
      placed: (of: WormGroup) => `${group[of]}${of === "deep" ? "" : " worm"}`,
      sorted: (of: WormGroup, count: number) => `${number(count)} ${groups[of]}, counted at once`,
      sorting: (layer: Layer, count: number) =>
        count === 0 ? `pause at the ${LAYER[layer]}` : `${people(count)} at the ${LAYER[layer]}`,
      mustard: (litres: string | null) => `mustard water poured${litres === null ? "" : `, ${litres}`}`,
      temperature: (value: string) => `soil at ${value}`,
      wetness: (is: Wetness) => `soil is ${is}`,
      closed: "hole closed",
    },
    mustardEyes:
      "This method uses mustard water. It burns eyes and skin: wear gloves and eye protection, and have clean water at hand.",
    sheetTitle: "This hole",
    ...digWords(trade),
    ...sheetWords(saddle),
    ...stripWords(),
  };
};

/** Words of the spade hole: digging, sorting, placing, its sheet, and its strip. */
export type HoleWords = ReturnType<typeof english>;
export const HOLE_WORDS: WordsOf<HoleWords> = { en: english };
