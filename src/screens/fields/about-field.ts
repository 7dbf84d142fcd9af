/** What tells a field from another one of its name: its area, and when somebody was there last. */
import { useHouse } from "../parts/house.ts";
import { lengthWords } from "../parts/lengths.ts";
import { writeDay } from "../parts/numbers.ts";
import { useWordsWith } from "../parts/words-of.ts";
import { sizeOf } from "./boundary-model.ts";
import type { FieldOfFarm } from "./model.ts";
import { FIELD_WORDS } from "./words.ts";

/** The words for a field. */
export const useAboutField = (): ((field: FieldOfFarm) => string) => {
  const { habits } = useHouse().settings.value;
  const words = useWordsWith(FIELD_WORDS);
  return ({ same, lastDay }) => {
    const { boundary } = same.field.body;
    const size = boundary === null ? null : sizeOf(boundary);
    return [
      ...(size === null ? [] : [lengthWords("area", size.areaM2, habits)]),
      lastDay === null
        ? words.fields.neverVisited
        : words.fields.lastVisit(writeDay(lastDay, words.common.tongue)),
    ].join(" · ");
  };
};
