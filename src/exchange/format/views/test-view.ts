/** A line, a ring test, a hole or a note with the names that a person knows it by, for tables and maps. */

import type { Entry } from "../../../record/entry.ts";
import { type HoleReading, readHole } from "../../../record/hole/reading.ts";
import { kindOf, type RecordId } from "../../../record/ids.ts";
import type { BodyOf } from "../../../record/kinds/all.ts";
import type { Bottle, HoleTemplate, Ring, Ruler } from "../../../record/kinds/kit.ts";
import type { HoleHeader, LineHeader, NoteHeader, RingHeader } from "../../../record/kinds/observation.ts";
import { type LineReading, readLine } from "../../../record/line/reading.ts";
import { type RecordState, shown } from "../../../record/record.ts";
import type { RingReading } from "../../../record/ring/events.ts";
import { readRing } from "../../../record/ring/reading.ts";
import { beginNames, type Names, type Whereabouts } from "./names.ts";

/** One line as the views show it. */
export interface LineView extends Whereabouts {
  readonly type: "line";
  readonly id: RecordId;
  readonly rope: string;
  readonly ropeMarks: number | null;
  readonly spacingM: number | null;
  readonly header: LineHeader;
  readonly reading: LineReading;
}

/** One ring test as the views show it. */
export interface RingView extends Whereabouts {
  readonly type: "ring";
  readonly id: RecordId;
  readonly ring: Ring | undefined;
  readonly outer: Ring | undefined;
  readonly ruler: Ruler | undefined;
  readonly bottle: Bottle | undefined;
  readonly header: RingHeader;
  readonly reading: RingReading;
}

/** One hole as the views show it. */
export interface HoleView extends Whereabouts {
  readonly type: "hole";
  readonly id: RecordId;
  readonly template: HoleTemplate | undefined;
  readonly header: HoleHeader;
  readonly reading: HoleReading;
  readonly entries: readonly Entry[];
}

/** One note as the views show it. */
export interface NoteView extends Whereabouts {
  readonly type: "note";
  readonly id: RecordId;
  readonly header: NoteHeader;
}

export type TestView = LineView | RingView | HoleView | NoteView;

/** Puts tests together with names that came before them in the order of the archive. */
export interface TestViews {
  /**
   * Takes the next record.
   *
   * @returns the test or note, or undefined for any other record and for one that is deleted or erased
   */
  next(record: RecordState): TestView | undefined;
}

/** Longest rope that a kit record allows: what is counted when the rope of a line is not known. */
const LONGEST_ROPE_MARKS = 10_000;

const lineView = (names: Names, { id, entries }: RecordState, header: LineHeader): LineView => {
  const rope = names.kit("rope", header.rope);
  const ropeMarks = rope?.marks ?? null;
  return {
    type: "line",
    id,
    ...names.where(id, header),
    rope: rope?.name ?? "",
    ropeMarks,
    spacingM: rope?.spacingM ?? null,
    header,
    reading: readLine(entries, { way: header.way, ropeMarks: ropeMarks ?? LONGEST_ROPE_MARKS }),
  };
};

const ringView = (names: Names, { id, entries }: RecordState, header: RingHeader): RingView => ({
  type: "ring",
  id,
  ...names.where(id, header),
  ring: names.kit("ring", header.ring),
  outer: names.kit("ring", header.outer),
  ruler: names.kit("ruler", header.ruler),
  bottle: names.kit("bottle", header.bottle),
  header,
  reading: readRing(entries),
});

const holeView = (names: Names, { id, entries }: RecordState, header: HoleHeader): HoleView => ({
  type: "hole",
  id,
  ...names.where(id, header),
  template: names.kit("hole-template", header.template),
  header,
  reading: readHole(entries),
  entries,
});

const noteView = (names: Names, { id }: RecordState, header: NoteHeader): NoteView => ({
  type: "note",
  id,
  ...names.where(id, header),
  header,
});

/** Begins at the first record of an archive. */
export const testViews = (): TestViews => {
  const names = beginNames();
  return {
    next(record) {
      const revision = shown(record);
      if (revision === undefined) return undefined;
      names.remember(record, revision);
      if (kindOf(record.id) !== "observation" || revision.deleted === true) return undefined;
      const header = revision.body as BodyOf["observation"];
      switch (header.type) {
        case "note":
          return noteView(names, record, header);
        case "line":
          return lineView(names, record, header);
        case "ring":
          return ringView(names, record, header);
        case "hole":
          return holeView(names, record, header);
      }
    },
  };
};
