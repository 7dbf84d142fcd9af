/** view/holes.csv and view/hole-entries.csv. Counts only: worms per m² belong to the app, which knows their range. */
import { type Entry, fatesOf, inOrder } from "../../../record/entry.ts";
import { LAYERS, WORM_GROUPS } from "../../../record/hole/entries.ts";
import type { FoundRead, HoleReading } from "../../../record/hole/reading.ts";
import { stoodCells, yesNo } from "./cells.ts";
import { type Cell, csvHead, csvRow } from "./csv.ts";
import type { HoleView } from "./test-view.ts";
import { utcText } from "./utc.ts";

/** First row of view/holes.csv. */
export const holesHead = csvHead([
  "hole",
  "field",
  "strip",
  "marked spot",
  "old grass",
  "example",
  "visit day",
  "begun (UTC)",
  "number",
  "worm method",
  "land use",
  "hole template",
  "side 1 (m)",
  "side 2 (m)",
  "depth (m)",
  "minutes of sorting meant",
  "minutes of mustard water meant",
  "place against the row",
  "worms in the mulch",
  "worms in the soil",
  "worms from mustard water",
  "placed: young",
  "placed: surface",
  "placed: topsoil",
  "placed: deep",
  "left in the pot",
  "numbers with two answers",
  "finished",
  "soil temperature (degC)",
  "how wet",
  "latitude (deg)",
  "longitude (deg)",
  "accuracy (m)",
  "accuracy means",
]);

/** A layer that nobody looked at has no count; neither has one with two answers. */
const foundCell = ({ count, looked, inDoubt }: FoundRead): Cell =>
  looked && inDoubt.length === 0 ? count : null;

const doubtsIn = ({ found, placed, temperaturesInDoubt, wetnessInDoubt }: HoleReading) =>
  [
    ...LAYERS.map((layer) => found[layer].inDoubt),
    ...WORM_GROUPS.map((group) => placed[group].inDoubt),
    temperaturesInDoubt,
    wetnessInDoubt,
  ].filter((answers) => answers.length > 0);

/** The row of one hole. */
export const holesRow = ({
  id,
  field,
  strip,
  spot,
  oldGrass,
  example,
  day,
  template,
  header,
  reading,
}: HoleView): string =>
  csvRow([
    id,
    field,
    strip,
    spot,
    yesNo(oldGrass),
    yesNo(example),
    day,
    utcText(header.startedAtMs),
    header.number,
    header.method,
    header.landUse,
    template?.name ?? null,
    (template?.sidesM ?? header.sidesM)?.[0] ?? null,
    (template?.sidesM ?? header.sidesM)?.[1] ?? null,
    header.depthM,
    header.minutes,
    header.mustardMin,
    header.place,
    ...LAYERS.map((layer) => foundCell(reading.found[layer])),
    ...WORM_GROUPS.map((group) =>
      reading.placed[group].inDoubt.length > 0 ? null : reading.placed[group].count,
    ),
    reading.settled ? reading.left : null,
    doubtsIn(reading).length,
    yesNo(reading.finished),
    reading.soilTemperature?.value ?? null,
    reading.wetness?.value ?? null,
    ...stoodCells(header.at),
  ]);

/** First row of view/hole-entries.csv. */
export const holeEntriesHead = csvHead([
  "hole",
  "field",
  "strip",
  "example",
  "visit day",
  "number",
  "what",
  "layer",
  "group",
  "worms",
  "people sorting",
  "litres",
  "value",
  "unit",
  "how wet",
  "looked at (UTC)",
  "entered at (UTC)",
  "corrected",
  "two answers",
]);

/** What a row says besides where and when. */
interface Said {
  readonly layer?: string;
  readonly group?: string;
  readonly worms?: number;
  readonly people?: number;
  readonly litres?: number | null;
  readonly value?: number;
  readonly unit?: string;
  readonly wet?: string;
}

/** What an entry says; undefined for what belongs to no hole. */
const saidBy = (entry: Entry): Said | undefined => {
  switch (entry.type) {
    case "worm":
      return { layer: entry.from, worms: 1 };
    case "found":
      return { layer: entry.from, worms: entry.count };
    case "placed":
      return { group: entry.group, worms: 1 };
    case "sorted":
      return { group: entry.group, worms: entry.count };
    case "sorting":
      return { layer: entry.from, people: entry.people };
    case "mustard":
      return { litres: entry.litres };
    case "temperature":
      return { value: entry.value, unit: entry.unit };
    case "wetness":
      return { wet: entry.is };
    case "closed":
      return {};
    default:
      return undefined;
  }
};

const whatOf = (entry: Entry): string =>
  entry.type === "temperature" ? `temperature of the ${entry.of}` : entry.type;

/** The rows of one hole: one an entry that counts, in the order in which they were made. */
export const holeEntriesRows = (view: HoleView): string => {
  const { id, field, strip, example, day, header, reading, entries } = view;
  const ordered = inOrder(entries);
  const fates = fatesOf(ordered);
  const inDoubt = new Set(doubtsIn(reading).flatMap((answers) => answers.map((answer) => answer.id)));
  return ordered
    .flatMap((entry, at) => {
      const said = fates[at] === "counts" ? saidBy(entry) : undefined;
      if (said === undefined) return [];
      const corrected = "replaces" in entry && entry.replaces !== undefined;
      return [
        csvRow([
          id,
          field,
          strip,
          yesNo(example),
          day,
          header.number,
          whatOf(entry),
          said.layer ?? null,
          said.group ?? null,
          said.worms ?? null,
          said.people ?? null,
          said.litres ?? null,
          said.value ?? null,
          said.unit ?? null,
          said.wet ?? null,
          utcText(entry.lookedAtMs),
          utcText(entry.enteredAtMs),
          yesNo(corrected),
          yesNo(inDoubt.has(entry.id)),
        ]),
      ];
    })
    .join("");
};
