/** Records with several versions, and the command that settles one. */
import type { Command } from "../../record/command/command.ts";
import { byShown, type Revision } from "../../record/record.ts";
import type { House } from "../parts/house.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import { type Known, readKnown } from "./describe.ts";
import { columnsOf, type DoubtfulLine, doubtfulLines } from "./doubts.ts";
import { readLiving } from "./status.ts";

/** A record with its versions, the one that is shown now first. */
export interface Versions {
  readonly record: Listed;
  readonly versions: readonly Revision[];
}

export interface Unsettled {
  readonly records: readonly Versions[];
  readonly lines: readonly DoubtfulLine[];
  readonly known: Known;
}

/** Reads everything that waits to be settled. */
export const readUnsettled = async (records: Reader): Promise<Unsettled> => {
  const [living, lines] = await Promise.all([readLiving(records), records.list({ kind: "observation" })]);
  const several = living.filter(({ versions }) => versions > 1);
  const doubtful = doubtfulLines(lines, await columnsOf(records, lines));
  return {
    records: several.map((record) => ({ record, versions: byShown(record.row) })),
    lines: doubtful,
    known: await readKnown(records, [...several, ...doubtful.map(({ line }) => line)]),
  };
};

/**
 * The command that lets one version stand. It takes the place of every version that stands in the record
 * when it is applied.
 */
export const settle = ({ pen }: Pick<House, "pen">, record: Listed, version: Revision): Command =>
  version.deleted === true ? pen.remove(record.id) : pen.change(record.id, version.body);
