/** What strips are called among the results. */
import { useHouse } from "../parts/house.ts";
import { stripName } from "../parts/names.ts";
import { grassNames } from "../parts/old-grass.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { OLD_GRASS, type StripKey, type YearsNow } from "./years-model.ts";
import { YEARS_WORDS } from "./years-words.ts";

/** Names by strip; deleted ones are said to be, and so is the field as a whole where paper names no strip. */
export const useStripNames = ({
  strips,
  spots,
}: Pick<YearsNow, "strips" | "spots">): ((strip: StripKey) => string) => {
  const words = useHouse().words.value;
  const says = useWordsOf(YEARS_WORDS);
  return (key) => {
    if (key === null) return says.wholeField;
    if (key === OLD_GRASS) return says.oldGrass(grassNames(spots));
    const strip = strips.get(key);
    const name = stripName(words, strip);
    return strip?.deleted === true ? says.deleted(name) : name;
  };
};
