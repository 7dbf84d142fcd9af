/** view/rings.csv and view/ring-readings.csv. Raw readings only: rates belong to the app, which knows their range. */
import type { GoneEntry, LevelEntry, PourEntry } from "../../../record/ring/entries.ts";
import type { RingMoment } from "../../../record/ring/events.ts";
import { stoodCells, yesNo } from "./cells.ts";
import { type Cell, csvHead, csvRow } from "./csv.ts";
import type { RingView } from "./test-view.ts";
import { utcText } from "./utc.ts";

const PLACES_ROUND = [0, 1, 2, 3] as const;

/** First row of view/rings.csv. */
export const ringsHead = csvHead([
  "ring test",
  "field",
  "strip",
  "marked spot",
  "old grass",
  "example",
  "visit day",
  "set out (UTC)",
  "clock began (UTC)",
  "clock ended (UTC)",
  "why it ended",
  "ring",
  "inside 1 (m)",
  "inside 2 (m)",
  "outside (m)",
  "height 1 (m)",
  "height 2 (m)",
  "height 3 (m)",
  "height 4 (m)",
  "outer ring",
  "outer inside 1 (m)",
  "outer inside 2 (m)",
  "way of reading",
  "the ruler shows",
  "ruler",
  "ruler step (m)",
  "bottle",
  "bottle holds (m3)",
  "mulch in the ring",
  "place against the row",
  "rim to ground 1 (m)",
  "rim to ground 2 (m)",
  "rim to ground 3 (m)",
  "rim to ground 4 (m)",
  "readings due after (min)",
  "goes on from",
  "readings",
  "looks without a number",
  "two answers",
  "latitude (deg)",
  "longitude (deg)",
  "accuracy (m)",
  "accuracy means",
]);

/** The row of one ring test. */
export const ringsRow = (view: RingView): string => {
  const { id, field, strip, day, ring, outer, ruler, bottle, header, reading } = view;
  const { start, stop } = reading;
  return csvRow([
    id,
    field,
    strip,
    view.spot,
    yesNo(view.oldGrass),
    yesNo(view.example),
    day,
    utcText(header.startedAtMs),
    start === null ? null : utcText(start.moment.lookedAtMs),
    stop === null ? null : utcText(stop.moment.lookedAtMs),
    stop?.entry.why ?? null,
    ring?.name ?? "",
    ring?.insideM[0] ?? null,
    ring?.insideM[1] ?? null,
    ring?.outsideM ?? null,
    ...PLACES_ROUND.map((at) => ring?.heightsM[at] ?? null),
    outer?.name ?? null,
    outer?.insideM[0] ?? null,
    outer?.insideM[1] ?? null,
    header.way,
    header.rulerReads,
    ruler?.name ?? null,
    ruler?.stepM ?? null,
    bottle?.name ?? null,
    bottle?.volumeM3 ?? null,
    header.mulch,
    header.place,
    ...PLACES_ROUND.map((at) => header.rimToSoilM[at] ?? null),
    header.planMin.join(" "),
    header.follows,
    reading.events.length,
    reading.openLooks.length,
    reading.inDoubt.length,
    ...stoodCells(header.at),
  ]);
};

/** First row of view/ring-readings.csv. */
export const ringReadingsHead = csvHead([
  "ring test",
  "field",
  "strip",
  "example",
  "visit day",
  "ring",
  "what",
  "inner or outer ring",
  "looked at (UTC)",
  "since the start (s)",
  "entered later",
  "value",
  "unit",
  "the ruler shows",
  "first after a refill",
  "words",
  "corrected",
  "two answers",
]);

/** What a row says besides where and when. */
interface Said {
  readonly what: string;
  readonly moment: RingMoment;
  readonly ring?: string;
  readonly value?: Cell;
  readonly unit?: string;
  readonly reads?: string;
  readonly afterRefill?: boolean;
  readonly words?: string;
  readonly corrected?: boolean;
  readonly twoAnswers?: boolean;
}

const answer = (entry: PourEntry | LevelEntry | GoneEntry): Omit<Said, "moment"> => {
  if (entry.type === "gone") return { what: "gone", ring: entry.ring };
  const read = { what: entry.type, ring: entry.ring, value: entry.value, unit: entry.unit };
  return entry.type === "pour"
    ? read
    : { ...read, reads: entry.reads, afterRefill: entry.afterRefill === true };
};

const saidIn = ({ reading }: RingView): readonly Said[] => {
  const { start, stop } = reading;
  return [
    ...(start === null
      ? []
      : [{ what: "start", moment: start.moment, twoAnswers: reading.startsInDoubt.length > 0 }]),
    ...reading.events.map(({ entry, moment, corrected }) => ({ ...answer(entry), moment, corrected })),
    ...reading.inDoubt.flatMap(({ answers, moment }) =>
      answers.map((entry) => ({ ...answer(entry), moment, twoAnswers: true })),
    ),
    ...reading.openLooks.map(({ look, moment }) => ({ what: "look", moment, ring: look.ring })),
    ...reading.happenings.map(({ what, words, moment, corrected }) => ({ what, words, moment, corrected })),
    ...(stop === null ? [] : [{ what: "stop", moment: stop.moment }]),
  ].sort((a, b) => a.moment.sinceStartMs - b.moment.sinceStartMs);
};

const maybe = (is: boolean | undefined): Cell => (is === undefined ? null : yesNo(is));

/** The rows of one ring test, in the order in which things were looked at. */
export const ringReadingsRows = (view: RingView): string =>
  saidIn(view)
    .map((said) =>
      csvRow([
        view.id,
        view.field,
        view.strip,
        yesNo(view.example),
        view.day,
        view.ring?.name ?? "",
        said.what,
        said.ring ?? null,
        utcText(said.moment.lookedAtMs),
        // Without a start there is nothing to count from.
        view.reading.start === null ? null : said.moment.sinceStartMs / 1000,
        yesNo(said.moment.enteredLater),
        said.value ?? null,
        said.unit ?? null,
        said.reads ?? null,
        maybe(said.afterRefill),
        said.words ?? null,
        yesNo(said.corrected === true),
        yesNo(said.twoAnswers === true),
      ]),
    )
    .join("");
