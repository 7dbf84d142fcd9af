import type { RecordId } from "../../../record/ids.ts";
import type { Changed } from "../../../store/changes.ts";
import type { House } from "../../parts/house.ts";
import { fieldName, stripName } from "../../parts/names.ts";
import type { Listed, Reader } from "../../parts/reader.ts";

/** What stands in the head of a line's screens. */
export interface LineHeading {
  readonly title: string;
  readonly under: string;
  /** Which line of its strip on this visit, from 1. */
  readonly index: number;
}

/** The lines of one strip on one visit, oldest first. */
export const linesOfStrip = async (
  records: Reader,
  visit: RecordId<"visit">,
  strip: RecordId<"strip">,
): Promise<readonly Listed<"observation">[]> => {
  const all = await records.list<"observation">({ visit });
  return all.filter((line) => line.body.type === "line" && line.body.strip === strip);
};

/** The heading of a line. */
export const lineHeading = async (
  house: House,
  id: RecordId<"observation">,
): Promise<LineHeading | undefined> => {
  const { records } = house;
  const line = await records.one(id);
  if (line?.body.type !== "line") return undefined;
  const [field, strip, rope, lines] = await Promise.all([
    records.one(line.body.field),
    records.one(line.body.strip),
    records.one(line.body.rope),
    linesOfStrip(records, line.body.visit, line.body.strip),
  ]);
  const words = house.words.value;
  const place = line.body.place === null ? [] : [words.place[line.body.place]];
  return {
    title: `${fieldName(words, field)} · ${stripName(words, strip)}`,
    under: [
      ...(rope === undefined || rope.body.name === "" ? [] : [words.setOut.ropeNamed(rope.body.name)]),
      ...place,
    ].join(" · "),
    index: lines.findIndex((one) => one.id === id) + 1,
  };
};

/** The line's own touches change neither its heading nor, before it is finished, its strip. */
export const changesBeside =
  (line: RecordId<"observation">) =>
  (changed: Changed): boolean =>
    changed === "everything" || changed.some((id) => id !== line);
