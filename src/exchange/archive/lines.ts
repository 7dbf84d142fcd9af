/** Parts a stream of bytes into lines, with no more than one line in memory. */
import { type Failed, failed } from "../../record/result.ts";
import { LIMITS } from "../format/limits.ts";

const LINE_FEED = 0x0a;

/** Takes a line without its line feed; a failure it returns ends the reading. */
export type TakeLine = (line: string, number: number) => Failed | undefined | Promise<Failed | undefined>;

/** Takes bytes as they come, and says at the end whether the last line was whole. */
export interface LineParter {
  readonly take: (bytes: Uint8Array) => Promise<Failed | undefined>;
  readonly end: () => Failed | undefined;
}

/**
 * Begins to part bytes into lines.
 *
 * @returns a parter whose functions give `exchange/too-large` for a line beyond the limit,
 * `exchange/damaged` for bytes that are not UTF-8 or a last line without line feed, or what `takeLine` gave
 */
export const partLines = (takeLine: TakeLine, longest: number = LIMITS.lineBytes): LineParter => {
  const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
  let held: Uint8Array[] = [];
  let heldBytes = 0;
  let number = 0;

  const decode = (last: Uint8Array): string | undefined => {
    try {
      const before = held.map((piece) => decoder.decode(piece, { stream: true })).join("");
      return before + decoder.decode(last);
    } catch {
      return undefined;
    } finally {
      held = [];
      heldBytes = 0;
    }
  };

  return {
    take: async (bytes) => {
      let from = 0;
      for (let to = bytes.indexOf(LINE_FEED); to >= 0; to = bytes.indexOf(LINE_FEED, from)) {
        if (heldBytes + to - from > longest) return failed("exchange/too-large", { what: "line" });
        const line = decode(bytes.subarray(from, to));
        if (line === undefined) return failed("exchange/damaged", { what: "text" });
        number += 1;
        const problem = await takeLine(line, number);
        if (problem !== undefined) return problem;
        from = to + 1;
      }
      heldBytes += bytes.byteLength - from;
      if (heldBytes > longest) return failed("exchange/too-large", { what: "line" });
      if (from < bytes.byteLength) held.push(bytes.slice(from));
      return undefined;
    },
    end: () => (heldBytes > 0 ? failed("exchange/damaged", { what: "last line" }) : undefined),
  };
};
