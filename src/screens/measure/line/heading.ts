import type { RecordId } from "../../../record/ids.ts";
import type { Changed } from "../../../store/changes.ts";
import type { House } from "../../parts/house.ts";
import { linesOfGround } from "../../parts/lines-of-ground.ts";
import { fieldName } from "../../parts/names.ts";

/** What stands in the head of a line's screens. */
export interface LineHeading {
  readonly title: string;
  readonly under: string;
  /** Which line of its strip, or of the old grass, on this visit, from 1. */
  readonly index: number;
  readonly oldGrass: boolean;
}

/** The heading of a line. */
export const lineHeading = async (
  house: House,
  id: RecordId<"observation">,
): Promise<LineHeading | undefined> => {
  const { records } = house;
  const line = await records.one(id);
  if (line?.body.type !== "line") return undefined;
  const [field, strip, rope, { lines, oldGrass, nameOf }] = await Promise.all([
    records.one(line.body.field),
    records.one(line.body.strip),
    records.one(line.body.rope),
    linesOfGround(records, line.body),
  ]);
  const words = house.words.value;
  const place = line.body.place === null ? [] : [words.place[line.body.place]];
  return {
    title: `${fieldName(words, field)} · ${nameOf(words, strip)}`,
    under: [
      ...(rope === undefined || rope.body.name === "" ? [] : [words.setOut.ropeNamed(rope.body.name)]),
      ...place,
    ].join(" · "),
    index: lines.findIndex((one) => one.id === id) + 1,
    oldGrass,
  };
};

/** The line's own touches change neither its heading nor, before it is finished, its strip. */
export const changesBeside =
  (line: RecordId<"observation">) =>
  (changed: Changed): boolean =>
    changed === "everything" || changed.some((id) => id !== line);
