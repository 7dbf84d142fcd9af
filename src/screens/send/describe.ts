/** A record in a few plain words: what kind it is, what it is called, where it belongs. */
import { type Kind, kindOf, type RecordId } from "../../record/ids.ts";
import { groundName } from "../parts/ground-name.ts";
import { fieldName, stripName } from "../parts/names.ts";
import { dayOf, writeDay } from "../parts/numbers.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import type { Spoken } from "./words.records.ts";

/** Records by id, for names. */
export type Known = ReadonlyMap<RecordId, Listed>;

/** Every record id that a body holds on its first level. */
export const idsIn = (body: object): readonly RecordId[] =>
  Object.entries(body).flatMap(([key, value]: [string, unknown]) =>
    typeof value === "string" && ID_KEYS.has(key) && value !== "" ? [value as RecordId] : [],
  );

const ID_KEYS: ReadonlySet<string> = new Set([
  "farm",
  "field",
  "strip",
  "spot",
  "visit",
  "rope",
  "ring",
  "outer",
  "ruler",
  "bottle",
  "template",
  "follows",
  "person",
  "of",
  "from",
  "to",
]);

/** The records that these speak of, and what those speak of, for their names. */
export const readKnown = async (records: Reader, rows: readonly Listed[]): Promise<Known> => {
  const known = new Map<RecordId, Listed>(rows.map((row) => [row.id, row]));
  let wanted = rows.flatMap(({ row }) => row.revs.flatMap(({ body }) => idsIn(body)));
  // A line names its strip and a visit its field: two steps reach every name.
  for (let step = 0; step < 2; step += 1) {
    const missing = [...new Set(wanted)].filter((id) => !known.has(id));
    const found = await records.many(missing);
    for (const one of found) known.set(one.id, one);
    wanted = found.flatMap(({ body }) => idsIn(body));
  }
  return known;
};

const of = <K extends Kind>(known: Known, id: RecordId<K> | null): Listed<K> | undefined =>
  id === null ? undefined : (known.get(id) as Listed<K> | undefined);

/** Letters of a note that tell it from the others. */
const BEGINNING = 40;

const beginning = (text: string): string => {
  const letters = [...text.trim().replaceAll(/\s+/gu, " ")];
  return letters.length <= BEGINNING ? letters.join("") : `${letters.slice(0, BEGINNING - 1).join("")}…`;
};

const stripAmong = (known: Known, id: RecordId): Listed<"strip"> | undefined =>
  kindOf(id) === "strip" ? of(known, id as RecordId<"strip">) : undefined;

type Naming = { readonly [K in Kind]: (words: Spoken, known: Known, one: Listed<K>) => readonly string[] };

const NAMES: Naming = {
  person: (words, _known, { body }) => [body.name || words.common.noName],
  farm: (words, _known, { body }) => [body.name || words.common.noName],
  field: (words, known, one) => [fieldName(words, one), of(known, one.body.farm)?.body.name ?? ""],
  strip: (words, known, one) => [stripName(words, one), fieldName(words, of(known, one.body.field))],
  spot: (words, known, { body }) => [
    body.name || words.common.noName,
    fieldName(words, of(known, body.field)),
  ],
  kit: (words, _known, { body }) => [body.name || words.common.noName],
  visit: (words, known, { body }) => [
    fieldName(words, of(known, body.field)),
    writeDay(body.day, words.common.tongue),
  ],
  observation: (words, known, { body }) => [
    fieldName(words, of(known, body.field)),
    ...(body.type === "note" ? [beginning(body.text)] : []),
    ...(body.strip === null ? [] : [groundName(words, of(known, body.strip), of(known, body.spot ?? null))]),
    writeDay(dayOf(body.startedAtMs), words.common.tongue),
  ],
  photo: (words, _known, { body }) => [writeDay(dayOf(body.takenAtMs), words.common.tongue)],
  event: (words, known, { body }) => [
    words.records.events[body.what],
    fieldName(words, of(known, body.field)),
    writeDay(body.day, words.common.tongue),
  ],
  rain: (words, known, { body }) => [
    fieldName(words, of(known, body.field)),
    writeDay(body.day, words.common.tongue),
  ],
  guess: (words, known, { body }) => [
    words.records.measures[body.what],
    fieldName(words, of(known, body.field)),
  ],
  earlier: (words, known, { body }) => [
    words.records.measures[body.what],
    fieldName(words, of(known, body.field)),
    writeDay(body.day, words.common.tongue),
  ],
  join: (words, known, { body }) => {
    const from = stripAmong(known, body.from);
    const to = stripAmong(known, body.to);
    return from === undefined || to === undefined
      ? [words.fields.sameAs(nameById(words, known, body.from), nameById(words, known, body.to))]
      : [
          words.fields.sameAs(stripName(words, from), stripName(words, to)),
          fieldName(words, of(known, from.body.field)),
        ];
  },
};

/** What a record is called, without its kind. */
export const nameOf = <K extends Kind>(words: Spoken, known: Known, one: Listed<K>): string =>
  NAMES[kindOf(one.id)](words, known, one)
    .filter((part) => part !== "")
    .join(" · ");

/** The name of what an id stands for, or its kind when it is not on this device. */
export const nameById = (words: Spoken, known: Known, id: RecordId): string => {
  const one = known.get(id);
  return one === undefined || kindOf(id) === "join"
    ? words.records.kinds[kindOf(id)]
    : nameOf(words, known, one);
};

/** What kind of record an id names, in a word; all that is known of one that is not on this device. */
export const kindById = (words: Spoken, id: RecordId): string => words.records.kinds[kindOf(id)];

const ringLetter = (known: Known, id: RecordId<"kit">): string => of(known, id)?.body.name ?? "";

/** What kind of record it is, in a word or two: line, ring A, hole 3; and of the kit: rope, ring, bottle … */
export const kindWord = (words: Spoken, known: Known, one: Listed): string => {
  const { tests, kit } = words.records;
  if (isKind("kit", one)) return kit[one.body.type];
  if (!isKind("observation", one)) return kindById(words, one.id);
  const { body } = one;
  if (body.type === "line") return tests.line;
  if (body.type === "note") return tests.note;
  return body.type === "ring" ? tests.ring(ringLetter(known, body.ring)) : tests.hole(body.number);
};

const isKind = <K extends Kind>(kind: K, one: Listed): one is Listed & Listed<K> => kindOf(one.id) === kind;

/** Who made a revision, by name; null when nobody was named or the person was forgotten. */
export const authorName = (known: Known, author: string | null): string | null => {
  const person = author === null ? undefined : of(known, author as RecordId<"person">);
  return person === undefined || person.body.name === "" ? null : person.body.name;
};
