/** Reads a volume back after writing: what was not read back is no backup. */
import { canonicalJson } from "../../record/canonical.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import { parseLine } from "../format/line.ts";
import type { Manifest } from "../format/manifest.ts";
import { photoDigest, RECORDS } from "../format/names.ts";
import { partLines } from "./lines.ts";
import { openVolume } from "./open.ts";
import type { Watch } from "./reports.ts";

/** What was found when a volume was read back. */
export interface ReadBack {
  /** Records that another device can read. */
  readonly records: number;
  readonly photos: number;
}

/**
 * Reads a volume as another device would, and compares it with what was meant. A record that this app
 * can no longer read itself is not counted and does not stand in the way: a backup without it is still
 * worth more than none.
 *
 * @returns `exchange/stopped`; `exchange/not-as-written` with the code of what is wrong
 */
export const verifyVolume = async (
  volume: Blob,
  meant: Manifest,
  watch: Watch,
): Promise<Result<ReadBack>> => {
  const wrong = (why: string) => failed("exchange/not-as-written", { why });
  const opened = await openVolume(volume);
  if (!opened.ok) return wrong(opened.problem.code);
  const { manifest, files, read } = opened.value;
  if (canonicalJson(manifest) !== canonicalJson(meant)) return wrong("manifest");
  let lineCount = 0;
  let records = 0;
  let photos = 0;
  for (const [index, listed] of files.entries()) {
    if (watch.signal.aborted) return failed("exchange/stopped");
    const lines = partLines((line) => {
      lineCount += 1;
      if (parseLine(line).ok) records += 1;
      return undefined;
    });
    const done = await read(listed, listed.name === RECORDS ? lines.take : () => undefined);
    const problem = done.ok ? lines.end() : done;
    if (problem !== undefined) return wrong(problem.problem.code);
    if (photoDigest(listed.name) !== undefined) photos += 1;
    watch.onProgress({ step: "comparing", done: index + 1, of: files.length });
  }
  const meantLines = meant.volume.number > 1 ? 0 : meant.kinds.reduce((sum, { count }) => sum + count, 0);
  return lineCount === meantLines ? ok({ records, photos }) : wrong("counts");
};
