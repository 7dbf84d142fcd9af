import type { WordsOf } from "../parts/words-of.ts";

const english = () => ({
  same: "Same thing?",
  sameStrips: "Two strips are the same",
  sameStripsWhich: "Which strip is the same as another one?",
  sameInto: "Under which one do both stand from now on?",
  sameFields: "This field is the same as another one",
  sameFieldWhich: "Under which field do both stand from now on?",
  sameYes: "Yes, they are the same",
  sameHint: "What was measured on either stands together from now on. It can be taken apart again here.",
  takeApart: "Take apart",
  takeApartWhat: (what: string) => `Take apart: ${what}`,
});

/** Words of the question whether two things are the same. */
export const SAME_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
