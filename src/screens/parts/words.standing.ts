import { plural, writeNumber } from "./numbers.ts";
import { TONGUE } from "./words.common.ts";

const MINUTE_S = 60;

/** A time that went by: seconds below two minutes, then whole minutes. */
const goneBy = (seconds: number): string => {
  const [count, one] =
    seconds < 2 * MINUTE_S ? [Math.round(seconds), "second"] : [Math.floor(seconds / MINUTE_S), "minute"];
  return `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one, other: `${one}s` })}`;
};

/** Words for a position that is being taken. */
export const standingWords = () => ({
  standing: {
    lost: (seconds: number) =>
      `No new position. The last one is ${goneBy(seconds)} old and will not be taken for this place.`,
    unstated: "Position taken. This device does not say how exact it is.",
    often: { "95-percent": "19 times in 20", "68-percent": "2 times in 3" },
    within: (accuracy: string, often: string) => `${accuracy} (${often})`,
    coarse: "That is coarse; it gets better under open sky.",
  },
});
