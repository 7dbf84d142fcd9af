/** The sizes of one thing of the kit, in a few words. */

import type { Kit } from "../../record/kinds/kit.ts";
import type { UnitHabits } from "../../record/units.ts";
import { outOfRoundShare } from "../../science/infiltration/ring-set.ts";
import { lengthWords } from "../parts/lengths.ts";
import { ringSizeWords, stepWords } from "./fine-lengths.ts";

import type { KitWords } from "./words.ts";

/** The sizes of one thing, most important first. */
export const sizeWords = (words: KitWords, body: Kit, habits: UnitHabits): readonly string[] => {
  switch (body.type) {
    case "rope": {
      const lengthM = body.spacingM * body.marks;
      return [
        words.ropes.size(body.marks, lengthWords("spacing", body.spacingM, habits)),
        ...(lengthM < 1 ? [] : [words.ropes.length(lengthWords("ropeLength", lengthM, habits))]),
      ];
    }
    case "ring": {
      const [first, second] = body.insideM;
      const firstWords = ringSizeWords(first, habits);
      const secondWords = second === null ? firstWords : ringSizeWords(second, habits);
      const heightM = body.heightsM.reduce((sum, one) => sum + one, 0) / body.heightsM.length;
      return [
        secondWords === firstWords
          ? words.rings.inside(firstWords)
          : words.rings.insideBoth(firstWords, secondWords),
        ...(outOfRoundShare([first, second]) === null ? [] : [words.rings.round]),
        ...(body.heightsM.length === 0 ? [] : [words.rings.high(ringSizeWords(heightM, habits))]),
        ...(body.outsideM === null ? [] : [words.rings.outsideSize(ringSizeWords(body.outsideM, habits))]),
      ];
    }
    case "hole-template": {
      const [first, second] = body.sidesM;
      return [words.templates.size(ringSizeWords(first, habits), ringSizeWords(second, habits))];
    }
    case "bottle":
      return [words.bottles.size(lengthWords("volume", body.volumeM3, habits))];
    case "ruler":
      return [words.rulers.size(stepWords(body.stepM, habits))];
  }
};
