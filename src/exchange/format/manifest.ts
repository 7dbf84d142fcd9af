/** The manifest: what an archive holds, said before anything else in it. */
import { canonicalJson } from "../../record/canonical.ts";
import { ENTRY_VERSION } from "../../record/entry.ts";
import { KINDS } from "../../record/ids.ts";
import { KIND } from "../../record/kinds/all.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import { name, shortId, wallMs, whole } from "../../record/shapes.ts";
import * as z from "../../record/zod.ts";
import { LIMITS } from "./limits.ts";
import { isListedName, RECORDS } from "./names.ts";

/** Version of the archive format that this app writes, and the highest that it reads. */
export const FORMAT_VERSION = 1;
export const ARCHIVE_NAME = "mulchmark-archive";
/** Most volumes of one archive. */
export const MAX_VOLUMES = 1000;

const sha256 = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const volumeNumber = whole(1, MAX_VOLUMES);
const count = whole(0, 1_000_000_000);

const file = z.strictObject({
  name: z.string().check(z.refine((text) => isListedName(text), { error: "not a name of this format" })),
  byteCount: whole(0, LIMITS.volumeBytes),
  sha256,
  volume: volumeNumber,
});
/** One file of the archive. */
export type ListedFile = z.Infer<typeof file>;

export const manifest = z
  .strictObject({
    name: z.literal(ARCHIVE_NAME),
    formatVersion: z.literal(FORMAT_VERSION),
    appVersion: name,
    archive: shortId,
    device: shortId,
    madeBy: z.exactOptional(name),
    madeAtMs: wallMs,
    volume: z.strictObject({ number: volumeNumber, of: volumeNumber }),
    recordsDigest: sha256,
    entryVersion: whole(1, ENTRY_VERSION),
    entryCount: count,
    kinds: z
      .array(z.strictObject({ kind: z.oneOf(KINDS), version: whole(1, 1_000_000), count }))
      .check(z.maxLength(KINDS.length)),
    missingPhotos: z.exactOptional(count),
    files: z.array(file).check(z.maxLength(MAX_VOLUMES * LIMITS.files)),
  })
  .check(
    z.refine(({ volume }) => volume.number <= volume.of, { error: "no such volume" }),
    z.refine(({ files }) => new Set(files.map((one) => one.name)).size === files.length, {
      error: "a file is named twice",
    }),
    z.refine(
      ({ files, recordsDigest }) =>
        files.filter((one) => one.name === RECORDS && one.volume === 1 && one.sha256 === recordsDigest)
          .length === 1,
      { error: "the records are not in volume 1" },
    ),
  );
/** What an archive holds. */
export type Manifest = z.Infer<typeof manifest>;

const KNOWN: ReadonlyMap<unknown, number> = new Map(KINDS.map((kind) => [kind, KIND[kind].version]));

const property = (value: unknown, key: string): unknown =>
  typeof value === "object" && value !== null && Object.hasOwn(value, key)
    ? Reflect.get(value, key)
    : undefined;

const textOf = (value: unknown): string => (typeof value === "string" ? value.slice(0, 40) : "");

/** What the manifest names that this app is too old for. Looked at before anything else is checked. */
const newest = (value: unknown): { what: string; needs: number; knows: number } | undefined => {
  const exceeds = (what: string, found: unknown, knows: number) =>
    typeof found === "number" && found > knows ? { what, needs: found, knows } : undefined;
  const kinds = property(value, "kinds");
  const newer = (Array.isArray(kinds) ? kinds : [])
    .map((item: unknown) => {
      const kind = property(item, "kind");
      return exceeds(textOf(kind), property(item, "version"), KNOWN.get(kind) ?? 0);
    })
    .find((found) => found !== undefined);
  return (
    exceeds("format", property(value, "formatVersion"), FORMAT_VERSION) ??
    exceeds("entry", property(value, "entryVersion"), ENTRY_VERSION) ??
    newer
  );
};

/**
 * Reads a manifest.
 *
 * @param text content of manifest.json
 * @returns the manifest; `exchange/not-ours` for any other JSON, `exchange/from-the-future` (what, needs,
 * knows, and the app that wrote it), `exchange/manifest-not-valid` (where, what)
 */
export const parseManifest = (text: string): Result<Manifest> => {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return failed("exchange/not-ours");
  }
  if (property(value, "name") !== ARCHIVE_NAME) return failed("exchange/not-ours");
  const future = newest(value);
  if (future !== undefined)
    return failed("exchange/from-the-future", { ...future, app: textOf(property(value, "appVersion")) });
  const checked = z.safeParse(manifest, value);
  if (checked.success) return ok(checked.data);
  const issue = checked.error.issues[0];
  return failed("exchange/manifest-not-valid", {
    where: issue?.path.join(".") ?? "",
    what: issue?.message ?? "",
  });
};

/** The text of manifest.json. */
export const manifestText = (content: Manifest): string => `${canonicalJson(content)}\n`;
