/** Stages the photos of a volume that are not here yet. */
import type { Photo } from "../../record/kinds/photo.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import { list } from "../../store/list.ts";
import { missingPhotos } from "../../store/photos.ts";
import { photoDigest } from "../format/names.ts";
import type { OpenVolume } from "./open.ts";
import type { Staging } from "./staging.ts";

/** Digests of the photos that stored records speak of, deleted ones too. */
const storedDigests = async (connection: Connection): Promise<Result<ReadonlySet<string>>> => {
  const digests = new Set<string>();
  for (const deleted of [false, true]) {
    const headers = await list(connection, { kind: "photo" }, { deleted });
    if (!headers.ok) return headers;
    for (const { revs } of headers.value) for (const { body } of revs) digests.add((body as Photo).sha256);
  }
  return ok(digests);
};

/**
 * Reads every photo of a volume, checks that its bytes are the ones its name claims, and stages those
 * that are missing here. Photos that no record speaks of stay out: nobody would ever see or delete them.
 *
 * @param named digests that the records of this file speak of
 */
export const stagePhotos = async (
  { manifest, files, read }: OpenVolume,
  { connection, tally, watch, put }: Staging,
  named: ReadonlySet<string>,
): Promise<Result<undefined>> => {
  const photos = files.flatMap((listed) => {
    const sha256 = photoDigest(listed.name);
    return sha256 === undefined ? [] : [{ listed, sha256 }];
  });
  if (photos.length === 0) return ok(undefined);
  const stored = await storedDigests(connection);
  if (!stored.ok) return stored;
  const isNamed = (sha256: string): boolean => named.has(sha256) || stored.value.has(sha256);
  if (manifest.volume.number > 1 && !photos.some(({ sha256 }) => isNamed(sha256)))
    return failed("exchange/volume-1-first", { number: manifest.volume.number });
  const missing = await missingPhotos(
    connection,
    photos.map(({ sha256 }) => sha256),
  );
  if (!missing.ok) return missing;
  const wanted = new Set(missing.value);
  for (const [index, { listed, sha256 }] of photos.entries()) {
    if (watch.signal.aborted) return failed("exchange/stopped");
    const pieces: Uint8Array<ArrayBuffer>[] = [];
    // The name is the digest, so the manifest cannot pass other bytes off under it.
    const done = await read({ ...listed, sha256 }, (piece) => void pieces.push(piece));
    if (!done.ok) return done;
    if (!isNamed(sha256)) tally.refuse(listed.name, { code: "exchange/photo-without-record", facts: {} });
    else if (!wanted.has(sha256)) tally.photo("same");
    else {
      const bytes = await new Blob(pieces).arrayBuffer();
      const staged = await put({ type: "photo", photo: { sha256, type: "image/jpeg", bytes } });
      if (!staged.ok) return staged;
      tally.photo("new");
    }
    watch.onProgress({ step: "reading", done: index + 1, of: photos.length });
  }
  return ok(undefined);
};
