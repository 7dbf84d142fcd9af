/** Writes the records of the example farm: ids, signatures and moments follow from the round alone. */
import type { Json } from "../../record/canonical.ts";
import type { Append, Command, Draft, Write } from "../../record/command/command.ts";
import { type DemoRound, demoId, demoShortId } from "../../record/demo-ids.ts";
import type { Kind, RecordId } from "../../record/ids.ts";
import type { BodyOf } from "../../record/kinds/all.ts";
import type { LineFrame } from "../../record/line/reading.ts";

/** What was read, and when. */
export interface Said {
  readonly atMs: number;
  readonly draft: Draft;
}

/** Commands in the order in which they were asked for. */
export interface DemoPen {
  /** Writes a record, dated at this moment. */
  readonly write: <K extends Kind>(kind: K, body: BodyOf[K], atMs: number) => RecordId<K>;
  /** Adds readings to a measurement. */
  readonly read: (id: RecordId<"observation">, frame: LineFrame | null, said: readonly Said[]) => void;
  /** Writes the record that is written last of all: where it stands, nothing is missing. */
  readonly seal: (body: BodyOf["earlier"], atMs: number) => void;
  /** What was written since this was asked the last time. */
  readonly take: () => readonly Command[];
}

/** Number of the seal among the records; the others count from 1. */
const SEAL = 0;

/** Id of the record that is written last. */
export const sealOf = (round: DemoRound): RecordId => demoId("earlier", round, SEAL);

/** Id of the record that is written first; it is dated at the moment at which the farm was brought in. */
export const firstOf = (round: DemoRound): RecordId<"farm"> => demoId("farm", round, 1);

const YEAR_MS = 365.25 * 86_400_000;

/**
 * A pen for one round.
 *
 * @param nowMs the moment at which the farm is brought in; everything is dated before it
 */
export const demoPen = (round: DemoRound, nowMs: number): DemoPen => {
  const owner = demoShortId(round, 0);
  // One clock for all readings, begun before the first of them.
  const pageBeganMs = nowMs - 6 * YEAR_MS;
  let records = SEAL;
  let signed = 0;
  let written: Command[] = [];
  const put = (id: RecordId, body: object, atMs: number): void => {
    signed += 1;
    const write: Write = {
      op: "write",
      id,
      by: {
        rev: demoShortId(round, signed),
        actor: owner,
        n: signed,
        stamp: { wallMs: Math.round(atMs), counter: signed, device: owner },
        author: null,
      },
      body: body as { readonly [key: string]: Json },
    };
    written.push(write);
  };
  return {
    write: (kind, body, atMs) => {
      records += 1;
      const id = demoId(kind, round, records);
      put(id as RecordId, body, atMs);
      return id;
    },
    read: (id, frame, said) => {
      for (const { atMs, draft } of said) {
        signed += 1;
        const wallMs = Math.round(atMs);
        const append: Append = {
          op: "append",
          id,
          frame,
          at: {
            id: demoShortId(round, signed),
            lookedAtMs: wallMs,
            enteredAtMs: wallMs,
            monoMs: wallMs - Math.round(pageBeganMs),
            page: owner,
            device: owner,
            by: null,
          },
          draft,
        };
        written.push(append);
      }
    },
    seal: (body, atMs) => put(sealOf(round), body, atMs),
    take: () => {
      const taken = written;
      written = [];
      return taken;
    },
  };
};
