/** Photos of a record: which there are, and how one is kept. Bytes first, then the record that names them. */

import { makePicture } from "../../../device/camera.ts";
import { readClock } from "../../../device/clock.ts";
import type { RecordId } from "../../../record/ids.ts";
import { ok, type Result } from "../../../record/result.ts";
import { putPhoto } from "../../../store/photos.ts";
import type { House } from "../house.ts";
import type { Listed, Reader } from "../reader.ts";

type PhotoId = RecordId<"photo">;

/** Photos of these records, the first taken first. */
export const readPhotos = async (
  records: Reader,
  of: readonly RecordId[],
): Promise<readonly Listed<"photo">[]> => {
  const wanted = new Set(of);
  const all = await records.list({ kind: "photo" });
  return all.filter(({ body }) => wanted.has(body.of)).sort((a, b) => a.body.takenAtMs - b.body.takenAtMs);
};

/**
 * Photos of fields and of all that was measured or written down on them, the newest first.
 *
 * @param fields the field with all that are the same
 */
export const readFieldPhotos = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
): Promise<readonly Listed<"photo">[]> => {
  const all = await records.list({ kind: "photo" });
  const taken = await records.many([...new Set(all.map(({ body }) => body.of))]);
  const here = new Set<string>(
    taken.flatMap(({ id, deleted, row }) =>
      !deleted && fields.some((field) => field === id || field === row.keys.field) ? [id] : [],
    ),
  );
  return all.filter(({ body }) => here.has(body.of)).sort((a, b) => b.body.takenAtMs - a.body.takenAtMs);
};

/** How many photos each record has; one without any is left out. */
export const countPhotos = async (records: Reader): Promise<ReadonlyMap<RecordId, number>> => {
  const counts = new Map<RecordId, number>();
  for (const { body } of await records.list({ kind: "photo" }))
    counts.set(body.of, (counts.get(body.of) ?? 0) + 1);
  return counts;
};

/** A photo that was kept. */
export interface Kept {
  readonly id: PhotoId;
  /** The same picture of the same thing was here already. */
  readonly again: boolean;
  /** One plain colour all over. */
  readonly plain: boolean;
}

/** A clock of a file that lies in the future, or that nobody set, says nothing. */
const takenAt = (file: File, fromCamera: boolean): number => {
  const { wallMs } = readClock();
  const said = file.lastModified;
  return fromCamera || !(said > 0 && said <= wallMs) ? wallMs : said;
};

const sameBefore = async (
  records: Reader,
  of: RecordId,
  sha256: string,
): Promise<Listed<"photo"> | undefined> => {
  const lists = await Promise.all([
    records.list({ kind: "photo" }),
    records.list({ kind: "photo" }, { deleted: true }),
  ]);
  return lists.flat().find(({ body }) => body.of === of && body.sha256 === sha256);
};

/**
 * Makes a file small and keeps it as a photo of a record. A picture that was deleted there before comes back.
 *
 * @param of asked for once the picture is made: a note may only now begin to exist; null when it could not
 * @returns what was kept, null when there is nothing to hang it on; or why not: see `makePicture` and
 *   `putPhoto`, or what writing reports
 */
export const keepPhoto = async (
  house: House,
  of: () => Promise<RecordId | null>,
  file: File,
  fromCamera: boolean,
): Promise<Result<Kept | null>> => {
  const takenAtMs = takenAt(file, fromCamera);
  const made = await makePicture(file);
  if (!made.ok) return made;
  const { sha256, type, bytes, widthPx, heightPx, plain } = made.value;
  const put = await putPhoto(house.records.connection, { sha256, type, bytes });
  if (!put.ok) return put;
  const to = await of();
  if (to === null) return ok(null);
  const before = await sameBefore(house.records, to, sha256);
  if (before !== undefined && !before.deleted) return ok({ id: before.id, again: true, plain });
  const command =
    before === undefined
      ? house.pen.write("photo", {
          of: to,
          sha256,
          byteCount: bytes.byteLength,
          widthPx,
          heightPx,
          takenAtMs,
        })
      : house.pen.restore(before.id);
  const written = await house.write(command);
  return written.ok ? ok({ id: command.id as PhotoId, again: false, plain }) : written;
};

/** Deletes a photo, or brings it back. False when it could not be written; the reason is shown. */
export const setDeleted = async (house: House, id: PhotoId, deleted: boolean): Promise<boolean> => {
  const written = await house.write(deleted ? house.pen.remove(id) : house.pen.restore(id));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};
