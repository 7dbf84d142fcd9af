/** Numbers as people type them with a thumb: one reader for every hand-typed reading. */
import { failed, ok, type Result } from "./result.ts";

/** Plausible values of one quantity, ends excluded: `{ min: 0, max: 300 }` makes 0 and 300 unusual. */
export interface PlausibleBounds {
  readonly min: number;
  readonly max: number;
}

/** Why a number is kept only after "yes, I read that". */
export type UnusualReason = "zero" | "negative" | "below" | "above" | "maybe-thousands";

/** A number that was understood, with the text it came from. */
export interface ReadNumber {
  readonly value: number;
  /** The text exactly as it was typed; the raw reading. */
  readonly typed: string;
  /** Empty when nothing is odd. Otherwise the screen asks, and flags what it keeps. */
  readonly unusual: readonly UnusualReason[];
  /** What was meant if the separator parts thousands ("1,234" as 1234); null when it cannot. */
  readonly asThousands: number | null;
}

/** Longest text that is read; a record keeps no longer one. In UTF-16 code units. */
export const MAX_TYPED_LENGTH = 200;

// Compatibility normalisation (NFKC) would be shorter, but it turns "5²" into 52 and "½" into 1/2.
const ZEROS = [0x0660, 0x06f0, 0x0966, 0xff10]; // Arabic-Indic, extended Arabic-Indic, Devanagari, full-width
const INVISIBLE = /[\u061c\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/gu; // direction marks of right-to-left keyboards
const MINUS = /[\u2212\u2013\ufe63\uff0d]/gu;
const PLUS = /\uff0b/gu;
const SEPARATOR = /[,\u066b\u060c\uff0c\uff0e]/gu;
const DIGIT = /[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\uff10-\uff19]/gu;
const GAP = /[\s'\u2019\u066c_]/u;

const plainDigit = (digit: string): string => {
  const point = digit.codePointAt(0) ?? 0;
  const zero = ZEROS.find((start) => point >= start && point < start + 10) ?? point;
  return String(point - zero);
};

/** One spelling for all keyboards: digits 0-9, "-", "+" and "." as the only separator. */
const plainSpelling = (typed: string): string =>
  typed
    .replace(INVISIBLE, "")
    .trim()
    .replace(DIGIT, plainDigit)
    .replace(MINUS, "-")
    .replace(PLUS, "+")
    .replace(SEPARATOR, ".")
    .replace(/^([+-])\s+/u, "$1");

/** The reason why a spelling is not one number, or null when it is. */
const whatIsWrong = (plain: string): `record/number-${string}` | null => {
  if (plain === "") return "record/number-empty";
  if (/^[+-]?[\d.]+e[+-]?\d+$/iu.test(plain)) return "record/number-exponent";
  if (!/^[+-]?[\d.\s'\u2019\u066c_]*$/u.test(plain)) return "record/number-not-a-number";
  if (GAP.test(plain)) return "record/number-grouped";
  if (plain.split(".").length > 2) return "record/number-two-separators";
  if (!/\d$/u.test(plain)) return "record/number-unfinished";
  return null;
};

const oddities = (value: number, bounds: PlausibleBounds, asThousands: number | null): UnusualReason[] => {
  const reasons: UnusualReason[] = [];
  // Written as "not inside", so that a bound that is not a number asks too instead of waving all through.
  if (!(value > bounds.min)) reasons.push(value === 0 ? "zero" : value < 0 ? "negative" : "below");
  if (!(value < bounds.max)) reasons.push("above");
  if (asThousands !== null) reasons.push("maybe-thousands");
  return reasons;
};

/**
 * Reads one hand-typed number. "12,5" and "12.5" are both 12.5: a single separator is always a decimal
 * one. Blanks around it, a leading sign, a Unicode minus, full-width, Arabic-Indic and Devanagari digits
 * are understood.
 *
 * A number is unusual, and wants a "yes, I read that", when it is zero, negative or otherwise not inside
 * the bounds (bounds that begin below zero say that zero and negative values are plausible), and when
 * exactly three digits follow a separator after one to three digits that are not zero: "1,234" may be
 * 1.234 or 1234, and only the person knows.
 *
 * When it cannot: `record/number-empty`, `record/number-not-a-number`, `record/number-exponent` ("1e5"),
 * `record/number-grouped` ("1 234", "1'234"), `record/number-two-separators` ("1,234.5"),
 * `record/number-unfinished` ("12,"), `record/number-too-long` (over 200 characters). The fact `typed` is
 * the beginning of the text, for the sentence on the screen.
 *
 * @param typed the text as it stands in the box
 * @param bounds plausible values in the unit that was typed, ends excluded
 * @example
 * readNumber("12,5", { min: 0, max: 300 }) // => { ok: true, value: { value: 12.5, unusual: [] } }
 * readNumber("0", { min: 0, max: 300 }) // => { ok: true, value: { value: 0, unusual: ["zero"] } }
 * readNumber("1,234.5", { min: 0, max: 300 }) // => { ok: false, problem: { code: "record/number-two-separators" } }
 */
export const readNumber = (typed: string, bounds: PlausibleBounds): Result<ReadNumber> => {
  if (typed.length > MAX_TYPED_LENGTH) return failed("record/number-too-long", { max: MAX_TYPED_LENGTH });
  const plain = plainSpelling(typed);
  const wrong = whatIsWrong(plain);
  if (wrong !== null) return failed(wrong, { typed: [...typed.trim()].slice(0, 24).join("") });
  // Negative zero is added away: a record that held it would change by going through a file.
  const value = Number(plain) + 0;
  const grouped = /^[+-]?(?=\d*[1-9])\d{1,3}\.\d{3}$/u.test(plain);
  const asThousands = grouped ? Number(plain.replace(".", "")) : null;
  return ok({ value, typed, unusual: oddities(value, bounds, asThousands), asThousands });
};
