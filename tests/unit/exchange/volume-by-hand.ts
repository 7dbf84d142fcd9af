/** A volume of the archive format put together by hand, after archive-format.md and not by the writer. */
import { createHash } from "node:crypto";
import { type HandFile, zipByHand } from "./zip-by-hand.ts";

export const sha256 = (content: string | Uint8Array): string =>
  createHash("sha256").update(content).digest("hex");

/** The record of section 4 of the format's page. */
export const FARM_LINE =
  '{"entries":[],"erased":false,"id":"farm-00000000000000000000000000000001","revs":[{"author":null,"body":{"name":"Hill"},"dot":["00000000000000aa",1],"rev":"00000000000000bb","seen":[],"stamp":{"counter":0,"device":"00000000000000cc","wallMs":1700000000000},"v":1}]}\n';

const KIND_ORDER =
  "person farm field strip spot kit visit observation photo event rain guess earlier join".split(" ");

export type ManifestChange = (manifest: Record<string, unknown>) => unknown;

/** The files of a volume whose manifest is right, before anything is changed. */
export const filesOf = (
  lines: string = FARM_LINE,
  change: ManifestChange = (manifest) => manifest,
  more: readonly HandFile[] = [],
): HandFile[] => {
  const contents: HandFile[] = [
    { name: "README.txt", content: "For a person.\r\n" },
    { name: "records.ndjson", content: lines, deflate: true },
    ...more,
  ];
  const manifest = {
    name: "mulchmark-archive",
    formatVersion: 1,
    appVersion: "0.1.0",
    archive: "5f0c8e2b7a914d36",
    device: "00c0ffee00c0ffee",
    madeAtMs: 1_700_000_000_000,
    volume: { number: 1, of: 1 },
    recordsDigest: sha256(lines),
    entryVersion: 1,
    entryCount: 0,
    kinds: KIND_ORDER.map((kind) => ({ kind, version: 1, count: kind === "farm" ? 1 : 0 })),
    files: contents.map(({ name, content }) => ({
      name,
      byteCount: Buffer.byteLength(content as string),
      sha256: sha256(content),
      volume: 1,
    })),
  };
  return [{ name: "manifest.json", content: JSON.stringify(change(manifest)) }, ...contents];
};

/** The volume as a file. */
export const volumeByHand = (lines?: string, change?: ManifestChange, more?: readonly HandFile[]): Blob =>
  zipByHand({ files: filesOf(lines, change, more) });
