/** A line with the names that a person knows it by, for tables and maps. */
import { kindOf, type RecordId } from "../../../record/ids.ts";
import type { BodyOf } from "../../../record/kinds/all.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import { type LineReading, readLine } from "../../../record/line/reading.ts";
import { type RecordState, type Revision, shown } from "../../../record/record.ts";

/** One line as the views show it. */
export interface LineView {
  readonly id: RecordId;
  readonly field: string;
  readonly strip: string;
  /** Calendar day of the visit; empty when the visit is not known. */
  readonly day: string;
  readonly rope: string;
  readonly ropeMarks: number | null;
  readonly spacingM: number | null;
  readonly header: LineHeader;
  readonly reading: LineReading;
}

/** Puts lines together with names that came before them in the order of the archive. */
export interface LineViews {
  /**
   * Takes the next record.
   *
   * @returns the line, or undefined for any other record and for one that is deleted or erased
   */
  next(record: RecordState): LineView | undefined;
}

/** Longest rope that a kit record allows: what is counted when the rope of a line is not known. */
const LONGEST_ROPE_MARKS = 10_000;

/** Begins at the first record of an archive. */
export const lineViews = (): LineViews => {
  const fields = new Map<string, string>();
  const strips = new Map<string, string>();
  const days = new Map<string, string>();
  const ropes = new Map<string, BodyOf["kit"]>();

  const remember = ({ id }: RecordState, { body }: Revision): void => {
    switch (kindOf(id)) {
      case "field":
        fields.set(id, (body as BodyOf["field"]).name);
        break;
      case "strip":
        strips.set(id, (body as BodyOf["strip"]).name);
        break;
      case "visit":
        days.set(id, (body as BodyOf["visit"]).day);
        break;
      case "kit":
        ropes.set(id, body as BodyOf["kit"]);
        break;
    }
  };

  return {
    next(record) {
      const revision = shown(record);
      if (revision === undefined) return undefined;
      remember(record, revision);
      if (kindOf(record.id) !== "observation" || revision.deleted === true) return undefined;
      const header = revision.body as BodyOf["observation"];
      if (header.type !== "line") return undefined;
      const rope = ropes.get(header.rope);
      const ropeMarks = rope?.type === "rope" ? rope.marks : null;
      return {
        id: record.id,
        field: fields.get(header.field) ?? "",
        strip: strips.get(header.strip) ?? "",
        day: days.get(header.visit) ?? "",
        rope: rope?.name ?? "",
        ropeMarks,
        spacingM: rope?.type === "rope" ? rope.spacingM : null,
        header,
        reading: readLine(record.entries, {
          way: header.way,
          ropeMarks: ropeMarks ?? LONGEST_ROPE_MARKS,
        }),
      };
    },
  };
};
