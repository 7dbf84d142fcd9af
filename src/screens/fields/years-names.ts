/** What strips are called among the results. */
import { useHouse } from "../parts/house.ts";
import { stripName } from "../parts/names.ts";
import { useWordsOf } from "../parts/words-of.ts";
import type { StripKey, YearsNow } from "./years-model.ts";
import { YEARS_WORDS } from "./years-words.ts";

/** Names by strip; deleted ones are said to be, and so is the field as a whole where paper names no strip. */
export const useStripNames = ({ strips }: Pick<YearsNow, "strips">): ((strip: StripKey) => string) => {
  const words = useHouse().words.value;
  const says = useWordsOf(YEARS_WORDS);
  return (key) => {
    if (key === null) return says.wholeField;
    const strip = strips.get(key);
    const name = stripName(words, strip);
    return strip?.deleted === true ? says.deleted(name) : name;
  };
};
