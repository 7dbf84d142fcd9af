/** Records with a kit, as lists show them. */
import type { Kind } from "../../../src/record/ids.ts";
import type { HoleHeader, RingHeader } from "../../../src/record/kinds/observation.ts";
import { shown } from "../../../src/record/record.ts";
import type { Listed } from "../../../src/screens/parts/reader.ts";
import { type Rows, sampleStartMs } from "../../bench/seed.ts";

export { beginSample, fieldOf, lineOf } from "../../bench/seed.ts";

const nowhere = { position: null, why: "not-asked" } as const;

type On = Pick<RingHeader, "visit" | "field" | "strip">;

/** The header of a ring test; what a sample does not care about stands as usual. */
export const ringOf = (on: On & Pick<RingHeader, "ring"> & Partial<RingHeader>): RingHeader => ({
  type: "ring",
  place: "between-rows",
  person: null,
  startedAtMs: sampleStartMs,
  outer: null,
  ruler: null,
  bottle: null,
  way: "ruler",
  rulerReads: "water-depth",
  mulch: "kept",
  rimToSoilM: [],
  planMin: [1, 5, 10],
  at: nowhere,
  follows: null,
  ...on,
});

/** The header of a hole. */
export const holeOf = (on: On & Pick<HoleHeader, "template"> & Partial<HoleHeader>): HoleHeader => ({
  type: "hole",
  place: "between-rows",
  person: null,
  startedAtMs: sampleStartMs,
  sidesM: null,
  depthM: 0.2,
  method: null,
  landUse: null,
  minutes: null,
  mustardMin: null,
  at: nowhere,
  number: 1,
  ...on,
});

const listed = (row: Rows["records"][number]): Listed => {
  const revision = shown(row);
  if (revision === undefined) throw new Error("a sample without a version");
  return {
    id: row.id,
    revision,
    body: revision.body,
    deleted: revision.deleted === true,
    versions: row.revs.length,
    row,
  };
};

/** The rows of a sample by kind. */
export const listedOf = (rows: Rows) => {
  const of = <K extends Kind>(kind: K): Listed<K>[] =>
    rows.records.map(listed).filter(({ id }) => id.startsWith(`${kind}-`)) as Listed<K>[];
  return { kit: of("kit"), observation: of("observation") };
};
