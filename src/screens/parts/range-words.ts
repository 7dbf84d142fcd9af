import type { Result } from "../../record/result.ts";
import type { Bounds } from "../../science/estimate.ts";
import type { Catalogue } from "../catalogue.ts";
import { writePercent } from "./numbers.ts";
import { TONGUE } from "./words.common.ts";

/** The range of a share in percent, or that there are too few lines to give one. */
export const rangeWords = (words: Catalogue, { range }: { readonly range: Result<Bounds> }): string =>
  range.ok
    ? words.common.range(writePercent(range.value.lower, TONGUE), writePercent(range.value.upper, TONGUE))
    : words.common.tooFew;
