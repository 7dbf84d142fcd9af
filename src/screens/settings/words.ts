import type { Quantity } from "../../record/units.ts";
import type { Purpose, TARGETS } from "../../science/ground-cover/targets.ts";
import { writeNumber } from "../parts/numbers.ts";
import type { LineAnswer, Theme } from "../parts/settings.ts";
import type { TradeWords } from "../parts/trade.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";

const number = (value: number, decimals = 0): string => writeNumber(value, TONGUE, decimals);

/** A size of stored data in words. */
const size = (bytes: number): string =>
  bytes < 1e9 ? `${number(bytes / 1e6, bytes < 1e7 ? 1 : 0)} MB` : `${number(bytes / 1e9, 1)} GB`;

const english = (trade: TradeWords) => ({
  title: "Settings",
  languageUnits: "Words and units",
  eachUnit: "Each on its own",
  quantities: {
    spacing: "from mark to mark on a rope",
    ropeLength: "length of a rope",
    mulchThickness: "thickness of the mulch",
    distance: "distances",
    area: "areas",
    depthSoaked: "water soaked in",
    rate: "how fast it soaks in, per hour",
    ringSize: "sizes of a ring",
    level: "water level in a ring",
    volume: "water poured into a ring",
    waterCarried: "water carried",
    share: "shares",
  } satisfies Record<Quantity, string>,
  unitsNote: "What was read keeps the unit it was read in. Only what is shown changes.",
  themeQuestion: "Which light?",
  themes: { auto: "Automatic", daylight: "Daylight", dusk: "Dusk" } satisfies Record<Theme, string>,
  themeHints: {
    auto: "as this device has it",
    daylight: "dark ink on light paper, for the sun",
    dusk: "light ink on dark paper",
  } satisfies Record<Theme, string>,
  whoQuestion: "Who is measuring now?",
  nobody: "nobody named",
  addPerson: "Add a name",
  correctPerson: "Correct this name",
  forgetPerson: "Forget this person",
  personName: "Name",
  personKeep: "Keep this name",
  personNeedsName: "Write a name first.",
  forgetTitle: (name: string) => `Forget ${name}?`,
  forgetAsk:
    "The name goes for good, here and on every device that a later copy reaches. Only the number of the record stays. What was counted stays, without a name. Copies that left this device before still hold the name.",
  forgetYes: "Forget for good",
  forgotten: "Forgotten. Only the number of the record stayed.",
  counting: "Counting",
  stones: `Count ${trade.stone}s as ground cover`,
  stonesHint: `Off, ${trade.stone}s are shown beside the result and not added to it.`,
  margin: "Give or take how many points of ground cover?",
  marginHint: "Every strip then says how many more lines that takes.",
  marginUnit: "points",
  marginRefused: "Give or take more than 0 and at most 50 points.",
  target: "Which ground cover is aimed at?",
  targetNote:
    "An aim of residue is set against residue alone, any other against ground cover: residue and living green together. Local rules, conservation plans and licensed advice come first.",
  targets: {
    "conservation-tillage": "30 % residue after planting",
    protection: "75 % ground cover at any time",
  } satisfies Record<(typeof TARGETS)[number]["id"], string>,
  targetHint: (purposes: string, mark: string) => `for ${purposes} (${mark})`,
  purposes: {
    rules: "rules on conservation tillage",
    rain: "beating rain",
    wind: "wind",
    drying: "drying out",
    weeds: "weeds",
  } satisfies Record<Purpose, string>,
  marks: {
    published: "published",
    "common-practice": "common practice",
    "not-checked": "not yet checked",
    derived: "own rule",
  },
  targetNone: "None",
  targetOwn: "My own",
  targetOwnLabel: "Ground cover aimed at",
  targetRefused: "Aim at more than 0 and less than 100 %.",
  keepNumber: "Keep this number",
  felt: "Felt and heard",
  vibrate: "Vibrate at every answer",
  vibrateHint: "Each answer feels different.",
  sound: "A tone at every answer",
  soundHint: "Each answer has its own.",
  alarm: "Bell when a ring is to be read",
  alarmHint: "Rings while Mulchmark is open and the phone is not locked.",
  noneFelt: "This browser can neither vibrate nor sound.",
  keyboard: "Keyboard and clicker",
  keyboardNote:
    "A Bluetooth clicker is a keyboard with few keys. Connect it to this device, then teach each answer its key.",
  answers: {
    residue: "Residue",
    bare: "Bare",
    green: "Green",
    stone: trade.stone.charAt(0).toUpperCase() + trade.stone.slice(1),
    own: "Own (fifth key)",
    undo: "Undo",
  } satisfies Record<LineAnswer, string>,
  keyNames: {
    " ": "Space",
    ArrowUp: "Arrow up",
    ArrowDown: "Arrow down",
    ArrowLeft: "Arrow left",
    ArrowRight: "Arrow right",
    PageUp: "Page up",
    PageDown: "Page down",
    AudioVolumeUp: "Volume up",
    AudioVolumeDown: "Volume down",
    MediaPlayPause: "Play or pause",
  } as Readonly<Record<string, string>>,
  noKey: "no key",
  teach: "Teach",
  teachFor: (answer: string) => `Teach a key for ${answer}`,
  waiting: (answer: string) => `Press the key for ${answer} …`,
  stopWaiting: "Stop waiting",
  taught: (answer: string, key: string) => `${answer}: ${key}`,
  lost: (answers: string) => `${answers}: no key now`,
  firstLetters: "Back to first letters",
  thisDevice: "This device",
  keeping: {
    kept: "This browser keeps the records: it will not clear them away by itself.",
    "not-kept":
      "This browser may clear the records away when the device runs short of room. Copies under Send & back up are the only safety.",
    "not-here":
      "This browser makes no promise to keep records. Copies under Send & back up are the only safety.",
  },
  askAgain: "Ask the browser to keep them",
  askedInVain: "It was asked and does not promise yet. Often it does once Mulchmark is on the home screen.",
  room: (used: number, of: number) => `${size(used)} used of about ${size(of)}.`,
  roomUnknown: "This browser does not say how much room there is.",
  install: "On the home screen",
  installNote: "There it opens without signal like any app, and its records are safest.",
  installKey: "Put Mulchmark on the home screen",
  installed: "Mulchmark runs from the home screen.",
  installFailed:
    "The browser would not do it just now. Its own menu has the same under Install or Add to home screen.",
});

/** Words of Settings. */
export const SETTINGS_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
