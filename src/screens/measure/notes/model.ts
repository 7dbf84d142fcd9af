/** A note with what it stands on, and the notes of a day. */
import type { RecordId } from "../../../record/ids.ts";
import type { NoteHeader } from "../../../record/kinds/observation.ts";
import type { House } from "../../parts/house.ts";
import { newestOf } from "../../parts/newest-of.ts";
import { spotsOf } from "../../parts/old-grass.ts";
import { countPhotos } from "../../parts/photos/model.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { onceEach, type SameField, sameField, sameStrip } from "../../parts/same-field.ts";

/** A note as it is on record. */
export interface Noted {
  readonly id: RecordId<"observation">;
  readonly header: NoteHeader;
  readonly deleted: boolean;
  readonly versions: number;
}

/** What the screen of a note needs to know. */
export interface NotePlace {
  readonly visit: Listed<"visit">;
  readonly same: SameField;
  readonly strips: readonly Listed<"strip">[];
  readonly stripOf: (id: RecordId<"strip">) => RecordId<"strip">;
  /** The marked spot that the note is written at; null when at none. */
  readonly spot: Listed<"spot"> | null;
  /** Null before the note exists. */
  readonly note: Noted | null;
}

const notedOf = (one: Listed<"observation"> | undefined): Noted | null => {
  if (one === undefined || one.body.type !== "note") return null;
  return { id: one.id, header: one.body, deleted: one.deleted, versions: one.versions };
};

/** Where a note is, or where a new one is going to be. */
export type NoteAt =
  | { readonly visit: RecordId<"visit">; readonly spot: RecordId<"spot"> | null }
  | { readonly note: RecordId<"observation"> };

/** Reads the place of a note; null when the note, its visit or its field is not on this device. */
export const readNotePlace = async (records: Reader, at: NoteAt): Promise<NotePlace | null> => {
  const note = "note" in at ? notedOf(await records.one(at.note)) : null;
  if ("note" in at && note === null) return null;
  const visitId = "visit" in at ? at.visit : note?.header.visit;
  const visit = visitId === undefined ? undefined : await records.one(visitId);
  const same = visit === undefined ? undefined : await sameField(records, visit.body.field);
  if (visit === undefined || same === undefined) return null;
  const spotId = "visit" in at ? at.spot : (note?.header.spot ?? null);
  const [joins, spot, ...strips] = await Promise.all([
    records.joins(),
    spotId === null ? undefined : records.one(spotId),
    ...same.ids.map((field) => records.list({ field, kind: "strip" })),
  ]);
  const stripOf = sameStrip(joins);
  return { visit, same, strips: onceEach(strips.flat(), stripOf), stripOf, spot: spot ?? null, note };
};

/** A note in a list. */
export interface NoteRow extends Noted {
  readonly photos: number;
  /** The marked spot that it is written at, a deleted one too. */
  readonly spot: Listed<"spot"> | undefined;
}

/** Notes as lists show them, the first written first. */
const rowsOf = async (
  records: Reader,
  tests: readonly Listed<"observation">[],
): Promise<readonly NoteRow[]> => {
  const notes = tests.flatMap((one) => {
    const noted = notedOf(one);
    return noted === null ? [] : [noted];
  });
  if (notes.length === 0) return [];
  const [photos, spots] = await Promise.all([
    countPhotos(records),
    spotsOf(
      records,
      notes.map(({ header }) => ({ body: header })),
    ),
  ]);
  return notes
    .map((note) => ({
      ...note,
      photos: photos.get(note.id) ?? 0,
      spot: note.header.spot === undefined ? undefined : spots.get(note.header.spot),
    }))
    .sort((a, b) => a.header.startedAtMs - b.header.startedAtMs);
};

/** The notes of these visits, the first written first. */
export const readNotes = async (
  records: Reader,
  visits: readonly RecordId<"visit">[],
): Promise<readonly NoteRow[]> => {
  const lists = await Promise.all(visits.map((visit) => records.list({ visit, kind: "observation" })));
  return rowsOf(records, lists.flat());
};

/** How many of a field's newest notes are looked through for those of one spot, and among how many headers. */
const NEWEST_NOTES = { most: 200, among: 2000 } as const;

/**
 * The notes written at a marked spot, the newest first.
 *
 * @param fields the field with all that are the same
 */
export const readNotesAt = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
  spot: RecordId<"spot">,
): Promise<readonly NoteRow[]> => {
  const lists = await Promise.all(fields.map((field) => newestOf(records, field, "note", NEWEST_NOTES)));
  const there = lists.flatMap(({ tests }) => tests.filter(({ body }) => body.spot === spot));
  return [...(await rowsOf(records, there))].reverse();
};

/** Deletes a note, or brings it back. False when it could not be written; the reason is shown. */
export const setNoteDeleted = async (
  house: House,
  id: RecordId<"observation">,
  deleted: boolean,
): Promise<boolean> => {
  const written = await house.write(deleted ? house.pen.remove(id) : house.pen.restore(id));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};

/** The first words of a text, for a list. */
export const firstWords = (text: string, most = 80): string => {
  const line = text.trim().split(/\r?\n/u)[0] ?? "";
  const letters = [...line];
  return letters.length <= most ? line : `${letters.slice(0, most - 1).join("")}…`;
};
