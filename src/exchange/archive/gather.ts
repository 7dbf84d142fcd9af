/** Gathers all that an archive holds, in one pass over the store. */

import { DEMO_BEGINNINGS, restingOnDemo } from "../../record/demo-ids.ts";
import { isDemoId } from "../../record/demo-mark.ts";
import { KINDS, type Kind, kindOf, type RecordId } from "../../record/ids.ts";
import type { Photo } from "../../record/kinds/photo.ts";
import type { RecordState } from "../../record/record.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import { namesBeginning } from "../../store/beginning-with.ts";
import type { Connection } from "../../store/connection.ts";
import { pages } from "../../store/pages.ts";
import { photo } from "../../store/photos.ts";
import { beginDigest } from "../format/digest.ts";
import { LIMITS } from "../format/limits.ts";
import { recordLine } from "../format/line.ts";
import { README, RECORDS, VIEWS } from "../format/names.ts";
import { readmeText } from "../format/readme.ts";
import { testViews } from "../format/views/test-view.ts";
import { piecesOf, VIEW_FEET, VIEW_GLUE, VIEW_HEADS, type ViewName } from "../format/views/views.ts";
import type { Watch } from "./reports.ts";

/** A text file of the archive, ready to be written. */
export interface TextFile {
  readonly name: string;
  readonly content: Blob;
  readonly sha256: string;
}

/** All that an archive holds but the bytes of its photos. */
export interface Gathered {
  readonly texts: readonly TextFile[];
  readonly recordsDigest: string;
  readonly counts: ReadonlyMap<Kind, number>;
  readonly records: number;
  readonly entryCount: number;
  readonly photos: readonly { readonly sha256: string; readonly byteCount: number }[];
  readonly missingPhotos: number;
}

const PAGE_RECORDS = 100;
/** Text is handed to the browser in pieces of about this size, in UTF-16 code units. */
const PIECE = 1_000_000;

/**
 * A text that grows piece by piece into a blob. Blobs are kept by the browser outside the memory of
 * scripts, and capture may go on meanwhile: what was gathered stays as it was, and so do its digests.
 */
const beginText = (name: string) => {
  const parts: Blob[] = [];
  const digest = beginDigest();
  let open = "";
  const flush = (): void => {
    const bytes = new TextEncoder().encode(open);
    digest.add(bytes);
    parts.push(new Blob([bytes]));
    open = "";
  };
  return {
    add: (text: string): void => {
      open += text;
      if (open.length > PIECE) flush();
    },
    end: (): TextFile => {
      flush();
      return { name, content: new Blob(parts), sha256: digest.hex() };
    },
  };
};

/** The views grow beside each other while the records go by once. */
const beginViews = () => {
  const names = Object.keys(VIEWS) as ViewName[];
  const texts = new Map(names.map((name) => [name, beginText(VIEWS[name])]));
  const begun = new Set<ViewName>();
  const tests = testViews();
  for (const [name, text] of texts) text.add(VIEW_HEADS[name]);
  return {
    add: (record: RecordState): void => {
      const view = tests.next(record);
      if (view === undefined) return;
      for (const [name, piece] of piecesOf(view)) {
        texts.get(name)?.add(begun.has(name) ? (VIEW_GLUE[name] ?? "") + piece : piece);
        begun.add(name);
      }
    },
    end: (): TextFile[] =>
      [...texts].map(([name, text]) => {
        text.add(VIEW_FEET[name] ?? "");
        return text.end();
      }),
  };
};

const gatherPhotos = async (connection: Connection, digests: ReadonlySet<string>, watch: Watch) => {
  const photos: { sha256: string; byteCount: number }[] = [];
  for (const sha256 of [...digests].sort()) {
    if (watch.signal.aborted) return failed("exchange/stopped");
    const row = await photo(connection, sha256);
    if (!row.ok) return row;
    const byteCount = row.value?.bytes.byteLength ?? 0;
    if (byteCount > 0 && byteCount <= LIMITS.photoBytes) photos.push({ sha256, byteCount });
  }
  return ok(photos);
};

/**
 * Which records stay out of a copy: the example farm, but for what somebody's own records rest on. Without
 * the rope it was counted with a line would be brought in elsewhere and say nothing.
 */
const leftOut = async (connection: Connection, watch: Watch): Promise<Result<(id: RecordId) => boolean>> => {
  const names = await namesBeginning(connection, DEMO_BEGINNINGS);
  if (!names.ok) return names;
  if (names.value.length === 0) return ok(() => false);
  const resting = restingOnDemo();
  for await (const page of pages(connection, PAGE_RECORDS)) {
    if (watch.signal.aborted) return failed("exchange/stopped");
    if (!page.ok) return page;
    for (const record of page.value) resting.add(record);
  }
  const needed = resting.needed();
  return ok((id) => isDemoId(id) && !needed.has(id));
};

/**
 * Reads the records and makes the text files of an archive. The example farm stays out of it.
 *
 * @param about version of the app and calendar day, for the README
 * @returns what was gathered; `exchange/stopped`, `exchange/record-too-large` (id), or what the store says
 */
export const gather = async (
  connection: Connection,
  about: { readonly appVersion: string; readonly day: string },
  watch: Watch,
): Promise<Result<Gathered>> => {
  const records = beginText(RECORDS);
  const views = beginViews();
  const counts = new Map<Kind, number>(KINDS.map((kind) => [kind, 0]));
  const digests = new Set<string>();
  let entryCount = 0;
  let done = 0;
  let demo = false;
  const out = await leftOut(connection, watch);
  if (!out.ok) return out;

  const addRecord = (record: RecordState): void => {
    const kind = kindOf(record.id);
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
    entryCount += record.entries.length;
    demo ||= isDemoId(record.id);
    if (kind === "photo") for (const { body } of record.revs) digests.add((body as Photo).sha256);
    views.add(record);
  };

  for await (const page of pages(connection, PAGE_RECORDS)) {
    if (watch.signal.aborted) return failed("exchange/stopped");
    if (!page.ok) return page;
    const wanted = page.value.filter(({ id }) => !out.value(id));
    for (const record of wanted) {
      const line = recordLine(record);
      // Three bytes is the most that UTF-8 needs for one UTF-16 code unit.
      if (line.length * 3 > LIMITS.lineBytes) return failed("exchange/record-too-large", { id: record.id });
      records.add(line);
      addRecord(record);
    }
    done += wanted.length;
    watch.onProgress({ step: "gathering", done, of: null });
  }
  const photos = await gatherPhotos(connection, digests, watch);
  if (!photos.ok) return photos;
  const readme = beginText(README);
  readme.add(readmeText(about.appVersion, about.day, demo));
  const recordsFile = records.end();
  if (recordsFile.content.size > LIMITS.recordsBytes) return failed("exchange/too-many-records");
  return ok({
    texts: [readme.end(), recordsFile, ...views.end()],
    recordsDigest: recordsFile.sha256,
    counts,
    records: done,
    entryCount,
    photos: photos.value,
    missingPhotos: digests.size - photos.value.length,
  });
};
