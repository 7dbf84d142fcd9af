/** Words of the rings: setting one out, the board of the day, one ring, its sheet, the big figures. */
import type { MulchInside, RingWay } from "../../../record/kinds/observation.ts";
import type { Happening, RulerReads, StopEntry } from "../../../record/ring/entries.ts";
import type { UnitHabits } from "../../../record/units.ts";
import type { LevelStatus } from "../../../science/infiltration/levelling.ts";
import type { LeftOut } from "../../../science/infiltration/pieces.ts";
import type { WaterUsed } from "../../../science/infiltration/water.ts";
import { plural, writeNumber } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";

const number = (value: number): string => writeNumber(value, TONGUE);
const minutes = (count: number): string =>
  `${number(count)} ${plural(count, TONGUE, { one: "minute", other: "minutes" })}`;
/** A ring that nobody stopped is not said to be a million minutes late. */
const span = (count: number): string => {
  if (count < 120) return `${number(count)} min`;
  const hours = Math.floor(count / 60);
  return hours < 48 ? `${number(hours)} h` : `${number(Math.floor(hours / 24))} days`;
};
const numbers = (count: number): string =>
  `${number(count)} ${plural(count, TONGUE, { one: "number", other: "numbers" })}`;

type Lost = Extract<Happening, StopEntry["why"]>;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const english = ({ levelledOff }: TradeWords) => ({
  mulch: {
    kept: "mulch kept",
    parted: "mulch parted at the edge",
    removed: "mulch removed",
    replaced: "mulch replaced",
  } satisfies Record<MulchInside, string>,
  ways: {
    "measured-pour": "one measured pour",
    ruler: "ruler in the ring",
    "kept-at-one-level": "kept at one level",
  } satisfies Record<RingWay, string>,
  happenings: {
    leaked: "Leaked outside",
    burrow: "Burrow in the ring",
    crack: "Crack in the ring",
    bumped: "Bumped",
    "rain-began": "Rain began",
    "rain-ended": "Rain ended",
    "ran-dry": "Ring ran dry",
    "no-water-left": "No water left",
    "topped-up-late": "Topped up late",
    "missed-reading": "Missed a reading",
    moved: "Moved to a new spot",
  } satisfies Record<Happening, string>,
  stops: {
    done: "finished",
    leaked: "it leaked",
    "no-water-left": "no water left",
    moved: "moved to a new spot",
    other: "stopped early",
  } satisfies Record<StopEntry["why"], string>,
  stopKeys: {
    done: "The test is finished",
    leaked: "It leaked",
    "no-water-left": "No water left",
    moved: "It was moved",
    other: "Something else",
  } satisfies Record<StopEntry["why"], string>,
  when: {
    legend: "When was it?",
    now: "now",
    ago: (count: number) => `${number(count)} min ago`,
    typed: "a time",
    clock: "The clock said",
    clockExample: "14:05",
  },
  next: {
    in: (clock: string, count: number) => `Next reading ${clock}, in ${number(count)}\u00a0min`,
    soon: (clock: string) => `Next reading ${clock}, in less than a minute`,
    now: (clock: string) => `Read now: it was due at ${clock}`,
    late: (clock: string, count: number) => `${span(count)} late: it was due at ${clock}`,
    none: "No more readings are planned",
  },
  ring: {
    notHere: "This ring is not on this device.",
    deleted: "This ring was deleted. It lies under Deleted records.",
    ready: "Water in? Then start the clock.",
    stopped: (clock: string, ran: string | null, why: string) =>
      ran === null ? `Stopped at ${clock}: ${why}.` : `Stopped at ${clock} after ${ran}: ${why}.`,
    start: "Start",
    startEarlier: "It started earlier",
    startEarlierQuestion: (letter: string) => `When did ring ${letter} start?`,
    readNow: "Read now",
    readAgain: "Read now once more",
    readInner: "Read inner ring",
    readOuter: "Read outer ring",
    readEarlier: "Read some minutes ago",
    refill: "Refill",
    gone: "Water gone now",
    goneEarlier: "Water gone earlier",
    poured: "Poured",
    toppedUp: "Topped up",
    happened: "Something happened",
    stop: "Stop",
    allReadings: "All readings",
    sheet: "Sheet",
    toBoard: "Rings of the day",
    toSheet: "The sheet of this ring",
    another: "Set out the next ring",
    writeNumbers: (count: number) =>
      count === 1 ? "Write the missing number" : `Write ${numbers(count)} that are missing`,
    levelQuestion: (letter: string, clock: string, which: string, reads: RulerReads) =>
      reads === "water-depth"
        ? `Ring ${letter}${which}: how deep was the water at ${clock}?`
        : `Ring ${letter}${which}: how far down from the rim was the water at ${clock}?`,
    topUpQuestion: (letter: string, clock: string, which: string) =>
      `Ring ${letter}${which}: how much water brought it back to its mark at ${clock}?`,
    outerRing: ", outer ring",
    waiting: (count: number) => `${numbers(count)} wait, the oldest first. Each moment is kept.`,
    momentKept: "The moment is kept. Take your time with the number.",
    couldNotRead: "Could not be read",
    later: "Later",
    allGone: "All gone",
    afterRefill: "Water was added before this reading",
    fullBottle: (volume: string) => `Bottle: ${volume}`,
    earlierQuestion: (letter: string, reads: RulerReads) =>
      reads === "water-depth"
        ? `Ring ${letter}: how deep was the water?`
        : `Ring ${letter}: how far down from the rim was the water?`,
    pourQuestion: (letter: string) => `Ring ${letter}: how much water was poured in?`,
    firstPourQuestion: (letter: string) => `Ring ${letter} runs. How much water was poured in?`,
    fillQuestion: (letter: string) => `Ring ${letter} runs. How much water filled it to its mark?`,
    atStart: "It is kept with the moment of the start.",
    notMeasured: "Not measured",
    refillMayStayOpen: "Pour it in now. If it is not measured, the next level alone will do.",
    refillAfterQuestion: (letter: string) => `Ring ${letter}: water in? Read the level right away.`,
    refillAfterHint: "The moment is kept at the touch, the number follows.",
    goneQuestion: (letter: string) => `Ring ${letter}: when was the last of the water gone?`,
    goneHint: "Gone means that the ground only glistens.",
    happenedQuestion: (letter: string) => `Ring ${letter}: what happened?`,
    inYourWords: "In your own words (may stay empty)",
    stopQuestion: (letter: string) => `Stop ring ${letter}?`,
    stopHint: "Undo starts it again. Nothing that was read is lost.",
    whichRing: "Which ring?",
    inner: "inner ring",
    outer: "outer ring",
  },
  lost: {
    question: {
      leaked: (letter: string) => `Ring ${letter} leaked. What now?`,
      moved: (letter: string) => `Ring ${letter} was moved. What now?`,
      "no-water-left": (letter: string) => `No water left for ring ${letter}. What now?`,
    } satisfies Record<Lost, (letter: string) => string>,
    hint: {
      leaked: "What came before the leak counts, what comes after it does not.",
      moved: "What was read before the move counts for the old spot.",
      "no-water-left": "What was read so far counts.",
    } satisfies Record<Lost, string>,
    notice: {
      leaked: "It leaked: end it, or start again",
      moved: "It was moved: end it, or set it out anew",
      "no-water-left": "No water left: end it, or go on",
    } satisfies Record<Lost, string>,
    again: {
      leaked: "Start again one pace away",
      moved: "Set it out at the new spot",
      "no-water-left": "Start again",
    } satisfies Record<Lost, string>,
    end: "End this ring",
    goOn: "Go on reading",
  },
  rose: {
    notice: "The water rose without a refill",
    question: {
      "down-from-rim": "The water rose without a refill: did you read down from the rim?",
      "water-depth": "The water rose without a refill: did you read the depth of the water?",
    } satisfies Record<RulerReads, string>,
    hint: (before: string, now: string) => `Before: ${before}. Now: ${now}.`,
    all: {
      "down-from-rim": "Yes, always down from the rim",
      "water-depth": "Yes, always the depth of the water",
    } satisfies Record<RulerReads, string>,
    only: {
      "down-from-rim": "Only this time down from the rim",
      "water-depth": "Only this time the depth of the water",
    } satisfies Record<RulerReads, string>,
    refilled: "No, water was added before it",
    asRead: "Leave it as it was read",
    settled: "This is settled.",
  },
  doubts: {
    title: "Two people, two answers",
    none: "Nothing is open any more.",
    open: (count: number) =>
      `${number(count)} ${plural(count, TONGUE, { one: "question has", other: "questions have" })} two answers: choose`,
    starts: "Two answers for the start: which one?",
    look: (clock: string) => `Two answers for ${clock}: which one?`,
  },
  readings: {
    title: "Touch a reading to correct it",
    none: "Nothing was read yet.",
    question: (what: string) => `Correct: ${what}`,
    oldStays: "What stood there stays on record, struck through.",
    anotherTime: (clock: string) => `It was not at ${clock}`,
    takeOut: "Take it out",
    takenOut: "taken out",
  },
  flags: {
    outer: "outer ring",
    afterRefill: "after a refill",
    enteredLater: "entered later",
    unusual: "unusual, confirmed",
    clocksApart: "clock was set",
    corrected: "corrected",
  },
  say: {
    deep: (value: string) => `${value} deep`,
    downFromRim: (value: string) => `${value} down from the rim`,
    poured: (value: string) => `${value} poured in`,
    gone: "water gone",
    look: "number still missing",
    readNow: "read now",
    start: "started",
    stop: (why: string) => `stopped: ${why}`,
    wetness: "how wet the ground was",
    waterWarm: (value: string) => `water of ${value}`,
    at: (what: string, clock: string) => `${what}, ${clock}`,
    took: (what: string) => `Taken: ${what}`,
    undone: (what: string) => `Undone: ${what}`,
    redone: (what: string) => `Redone: ${what}`,
  },
  result: {
    nothingYet: "soaked in so far: not known yet",
    soFar: (count: number) => `soaked in after ${number(count)} min`,
    afterMin: (count: number) => `${number(count)} min`,
    guessed: (depth: string) => `guessed ${depth}`,
    leaked: "It leaked: nothing after that counts.",
    wetting: "The first pour only wets the ground: it is kept, and not compared.",
    burrow: "The burrow counts and is named.",
    crack: "The crack counts and is named.",
    lastHalfHour: "last ½ h",
    standsStill: (why: string) => `Depth stands still: ${why}.`,
    levelledOff: (rate: string) => `${capital(levelledOff)} at ${rate}.`,
    stillSlowing: (rate: string) => `Still slowing, ${rate} just now.`,
    moreMin: (count: number) => `About ${minutes(count)} more at the least.`,
    cannotTell: (rate: string, each: number | null) =>
      `About ${rate}; cannot tell with this ruler whether it has ${levelledOff}. It takes ${
        each === null ? "" : `three intervals of ${number(each)} min, or `
      }a top-up from a measured bottle.`,
    short: {
      "levelled-off": levelledOff,
      "still-slowing": "still slowing",
      "cannot-tell": "cannot tell with this ruler",
    } satisfies Record<LevelStatus, string>,
  },
  curve: {
    empty: "No curve yet: it begins with the second reading.",
    says: (points: number, depth: string, min: string) =>
      `Depth soaked in against time: ${number(points)} points, ${depth} after ${min} minutes.`,
    asTable: "Show as table",
    minutes: "minutes",
    soaked: (unit: string) => `soaked in, ${unit}`,
  },
  board: {
    title: "Rings today",
    titleThen: (day: string) => `Rings on ${day}`,
    none: "No ring is set out yet.",
    readNow: "Read now",
    start: "Start",
    stop: "Stop",
    ringOf: (letter: string) => `Ring ${letter}`,
    inTime: (unit: string, count: number) => `${unit} in ${number(count)} min`,
    in: (count: number) => `in ${number(count)} min`,
    soon: "in under 1 min",
    now: "read now",
    late: (count: number) => `${span(count)} late`,
    noneLeft: "no more planned",
    next: "next",
    over: "stopped",
    waiting: "waiting to start",
    waitingShort: "waiting",
    startAt: (clock: string) => `waiting: start at ${clock}`,
    startNow: "waiting: can start now",
    running: (count: number) => `runs for ${number(count)} min`,
    stopped: (why: string) => `stopped: ${why}`,
    leaked: "leaked",
    moved: "moved to a new spot",
    rose: "water rose: look at it",
    standsStill: "depth stands still: look why",
    doubts: "two answers: choose",
    missing: (count: number) => `${numbers(count)} missing`,
    readBy: (name: string) => `read by ${name}`,
    follows: "starts again after a leak",
    add: "Set out a ring",
    big: "Big figures",
    map: "Map of this day",
    stopMode: "Stop a ring",
    readMode: "Back to reading",
    writeNumbers: (count: number) => `Write down ${numbers(count)}`,
    locked: "a locked phone cannot ring",
    whoReads: "Who is reading?",
    nobody: "not said",
    gapsHint: "Starts are spread so that no two readings come within a minute.",
    others: "Read now",
  },
  water: {
    line: (left: string) => `Water left: ${left}`,
    ask: "Water at hand?",
    usedLine: (used: string) => `Poured: ${used}`,
    used: (text: string, { value, reckoned, more }: Pick<WaterUsed, "value" | "reckoned" | "more">) =>
      more ? (value > 0 ? `more than ${text}` : "not known") : reckoned ? `about ${text}` : text,
    left: (text: string, { reckoned, more }: Pick<WaterUsed, "reckoned" | "more">) =>
      more ? `less than ${text}` : reckoned ? `about ${text}` : text,
    question: (unit: string) => `How much water stands ready now, in ${unit}?`,
    weighs: { L: "1 L weighs 1 kg", gal: "1 US gallon weighs about 8.3 lb" } satisfies Record<
      UnitHabits["waterCarried"],
      string
    >,
    hint: (weighs: string, weight: string) =>
      `${weighs}: that is ${weight} to lift. Carry it in several goes.`,
    hintPlain: (weighs: string) => `${weighs}. Carry it in several goes, with a straight back.`,
    short: "Water runs short: finish these rings first",
    unknown: "need not known yet",
    needs: (litres: string) => `needs ${litres}`,
    notEnough: "not enough",
    reaches: "enough",
    tooLittle: "Not enough water for any ring to run as planned",
    keep: "Keep it",
  },
  setOut: {
    title: "Set out a ring",
    titleAgain: "Set out again, one pace away",
    titleMoved: "Set out at the new spot",
    moved: (letter: string) =>
      `What was read of ring ${letter} stays with its old spot. At the new one it begins anew: say where it stands now.`,
    follows: (letter: string) =>
      `The ring that leaked (${letter}) is kept and tied to this one. Go one pace away, on ground of the same kind.`,
    asBefore: "As before",
    asBeforeHint: (letter: string) => `everything as at ring ${letter}, but the next ring`,
    ring: "Which ring?",
    addRing: "Add a ring",
    ringSize: (size: string) => `${size} across`,
    taken: "stands in the ground already",
    double: "Single ring or double ring?",
    single: "single ring",
    outerOf: (letter: string) => `with ring ${letter} around it`,
    strip: "Which strip?",
    place: "Where does it stand?",
    mulch: "What was done with the mulch inside?",
    mulchUnsaid: "not said",
    way: "How will you read it?",
    wayHints: {
      "measured-pour": "pour a measured amount, wait until it is gone, pour again",
      ruler: "read the falling level, refill when it is low",
      "kept-at-one-level": "top up to one mark and write down how much",
    } satisfies Record<RingWay, string>,
    reads: "What does the ruler show?",
    readsWords: {
      "water-depth": "depth of the water",
      "down-from-rim": "down from the rim",
    } satisfies Record<RulerReads, string>,
    ruler: "Which ruler?",
    addRuler: "Add a ruler",
    rulerStep: (step: string) => `steps of ${step}`,
    bottle: "Which bottle?",
    noBottle: "none",
    addBottle: "Add a bottle",
    rim: "From the rim down to the ground, at four places",
    rimHints: {
      "down-from-rim":
        "Before the water goes in: hold the ruler on the rim and read down to the ground, at four places round. It says how deep the ring stands and whether it is level. Without it what soaked in still counts, but nobody knows how deep the water stood.",
      "water-depth":
        "Before the water goes in: hold the ruler on the rim and read down to the ground, at four places round. It says how deep the ring stands and whether it is level, and ties depths to readings down from the rim. May stay empty.",
    } satisfies Record<RulerReads, string>,
    rimAt: (place: number, unit: string) => `Place ${number(place)}, in ${unit}`,
    rimWrong: "A ring cannot stand so far out of the ground.",
    outOfLevel: (by: string) => `Highest and lowest differ by ${by}.`,
    standsIn: (by: string) => `The ring stands ${by} in the ground.`,
    plan: "When is it to be read?",
    planLabel: "Minutes after the start",
    planHint: "Numbers with a space between them. It can be read at any other time as well.",
    planWrong: "Write minutes as numbers with a space between them, like 5 10 20 30.",
    planUsual: "Usual plan",
    wetness: "How wet is the ground?",
    wetnesses: { dry: "dry", moist: "moist", wet: "wet" },
    unsaid: "not said",
    stand: "Stand still beside the ring",
    guess: "Guess first: how much soaks in within an hour?",
    guessLabel: (unit: string) => `Your guess, in ${unit}`,
    guessHint: "It is kept beside the result. Leave it empty to skip it.",
    guessWrong: "No ground takes that much.",
    keep: "Set it out",
    needs: "Choose a ring and a strip first.",
    more: "More about this ring",
    startAt: (clock: string) =>
      `A good time to start it: ${clock}. No two readings then come within a minute.`,
    startNow: "It can start right away: no two readings come within a minute.",
    notHere: "This visit is not on this device.",
  },
  sheet: {
    title: "This ring",
    readings: "Readings",
    since: "since start",
    read: "as read",
    soaked: "soaked in",
    rate: "rate",
    inUnit: (what: string, unit: string) => `${what}, ${unit}`,
    flags: "said beside it",
    notCounted: (why: string) => `not counted: ${why}`,
    leftOut: {
      leaked: "after the leak",
      moved: "after the move",
      rain: "it rained",
      "ran-dry": "the ring ran dry",
      bumped: "it was bumped",
      "no-water-left": "no water left",
      "topped-up-late": "topped up late",
      "level-rose": "the water rose",
      "refill-unseen": "nobody saw what soaked in during the refill",
      "levels-unlike": "read in two ways that cannot be compared",
      dry: "no water in the ring",
    } satisfies Record<LeftOut, string>,
    headline: "Soaked in",
    after: (count: number) => `after ${number(count)} min`,
    lastHalfHour: "last half hour",
    levelling: "the last three intervals",
    rate3: (text: string) => `rates: ${text}`,
    meanRate: "the rate of this ring in its strip",
    conditions: "How it stood",
    area: "area inside",
    areaBy: (first: string, second: string | null) =>
      second === null
        ? `from inside edge to inside edge ${first}, measured once`
        : `from inside edge to inside edge ${first} and ${second}, at right angles`,
    insertion: "in the ground",
    outOfLevel: "rim out of level",
    spot: "marked spot",
    rim: "from the rim to the ground",
    rimMean: (each: string, mean: string) => `${each}; ${mean} in the middle`,
    rimMissing: "not measured: drops count, but not how deep the water stood",
    correct: "Correct how it stood",
    correctKeep: "Correct it",
    correctHint: "What was read stays as it was read. Results go by what is said here from now on.",
    corrected: (when: string, by: string | null) =>
      by === null ? `Last corrected ${when}` : `Last corrected ${when} by ${by}`,
    place: "place",
    mulch: "mulch inside",
    way: "read by",
    ruler: "ruler",
    bottle: "bottle",
    outer: "outer ring",
    sideFlow: "between the rings against inside",
    times: (ratio: string) => `${ratio} times`,
    position: "Position",
    who: "set out by",
    wetness: "ground",
    waterWarm: "water",
    follows: "goes on from",
    followedBy: "goes on at",
    olderRing: (letter: string) => `ring ${letter}, one pace away`,
    guess: "guessed before",
    pours: "Pours",
    pour: "pour",
    wettingPour: "wetting",
    poured: "poured",
    took: "took",
    notGone: "not gone",
    cautions: "To bear in mind",
    noCautions: "Nothing stands against these readings.",
    oneRing: "One ring is one point: a range needs three rings of a strip.",
    comparing: "Ring figures are for comparing places, not for sizing drains or structures.",
    workedOut: "How this was worked out",
    toRing: "Back to this ring",
    board: "Rings of the day",
    delete: "Delete this ring",
    deleteAsk: "Delete this ring with all its readings? It can be brought back for 30 days.",
    unknown: "not known",
  },
  big: {
    title: "Big figures",
    leave: "Touch anywhere to leave",
    none: "No ring is set out yet.",
  },
});

/** What every language says of rings. */
export type RingWords = ReturnType<typeof english>;

/** The words by language. */
export const RING_WORDS: WordsOf<RingWords> = { en: english };
