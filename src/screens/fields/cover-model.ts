/** Ground cover of a field: the newest finding of each strip. */
import { kindOf, type RecordId } from "../../record/ids.ts";
import type { FieldCover, StripOnDay } from "../../science/ground-cover/field-cover.ts";
import type { Catalogue } from "../catalogue.ts";
import { groundName } from "../parts/ground-name.ts";
import type { House } from "../parts/house.ts";
import type { Listed } from "../parts/reader.ts";
import { wantedBy, whileItLasts } from "../parts/results-desk.ts";
import { sameStrip } from "../parts/same-field.ts";
import type { Settings } from "../parts/settings.ts";
import { besides, stripsOf } from "./strips-by-id.ts";

export interface CoverNow {
  readonly cover: FieldCover;
  /** False: these are results from before the last changes, and the new ones are being worked out. */
  readonly upToDate: boolean;
  /** The newest finding of each strip. */
  readonly newest: ReadonlyMap<RecordId<"strip">, StripOnDay>;
  /** Strips by id, deleted ones too: their lines stay in the results. */
  readonly strips: ReadonlyMap<RecordId<"strip">, Listed<"strip">>;
}

const isStrip = (id: RecordId): id is RecordId<"strip"> => kindOf(id) === "strip";

/**
 * Reads the ground cover of a field.
 *
 * @param meanwhile gets what was found before the last changes while the new results are worked out
 */
export const readCover = async (
  { records, results }: House,
  settings: Settings,
  ids: readonly RecordId<"field">[],
  meanwhile: (before: CoverNow) => void,
): Promise<CoverNow> => {
  const around = Promise.all([records.joins(), stripsOf(records, ids)]);
  const now = async (cover: FieldCover, upToDate: boolean): Promise<CoverNow> => {
    const [joins, living] = await around;
    const newest = new Map<RecordId<"strip">, StripOnDay>();
    for (const one of cover.onDays) if (one.cover.ok && !newest.has(one.strip)) newest.set(one.strip, one);
    // Results stand under the strip that others were joined to; when that one is deleted, another is listed.
    const stripOf = sameStrip(joins);
    for (const id of joins.flatMap(({ from, to }) => [from, to]).filter(isStrip)) {
      const found = newest.get(stripOf(id));
      if (found !== undefined) newest.set(id, found);
    }
    const strips = await besides(
      records,
      living,
      cover.onDays.map(({ strip }) => strip),
    );
    return { cover, upToDate, newest, strips };
  };
  const cover = results.field(
    ids,
    wantedBy(settings),
    whileItLasts((before) => now(before, false), meanwhile),
  );
  const [, found] = await Promise.all([around, cover]);
  return now(found, true);
};

/** The name of the ground of a test: of its strip, with the word that it was deleted, or of the old-grass spot. */
export const groundWithFate = (
  words: Catalogue,
  strip: Listed<"strip"> | undefined,
  spot: Listed<"spot"> | undefined,
): string => {
  const name = groundName(words, strip, spot);
  const of = spot?.body.oldGrass === true ? spot : strip;
  return of?.deleted === true ? words.fields.stripDeleted(name) : name;
};

/** The name of a strip, with the word that it was deleted. */
export const nameWithFate = (words: Catalogue, strip: Listed<"strip"> | undefined): string =>
  groundWithFate(words, strip, undefined);
