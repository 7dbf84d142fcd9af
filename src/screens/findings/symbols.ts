/**
 * The symbols that stand in a formula, taken from its text by the compiler: a symbol of a method that has no
 * words in a language does not compile.
 */
import type { METHODS } from "../../science/methods/all.ts";
import type { MethodId } from "../../science/methods.ts";

type Blank =
  | " "
  | "/"
  | "("
  | ")"
  | "{"
  | "}"
  | "|"
  | "·"
  | "="
  | "+"
  | "−"
  | "²"
  | "^"
  | "<"
  | ">"
  | ","
  | ";";

/** Signs that mean the same in every formula. */
type Sign = "Σ" | "√" | "±" | "≤" | "≥";

type Digit = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9";

/** The pieces of a formula: walks through its characters and collects what stands between blanks. */
type Pieces<
  Text extends string,
  Word extends string = "",
  Found extends string = never,
> = Text extends `${infer First}${infer Rest}`
  ? First extends Blank
    ? Pieces<Rest, "", Word extends "" ? Found : Found | Word>
    : First extends Sign
      ? Pieces<Rest, "", (Word extends "" ? Found : Found | Word) | First>
      : `${Word extends "" ? "at the start" : ""}${First}` extends `at the start${Digit | "_"}`
        ? Pieces<Rest, "", Found>
        : Pieces<Rest, `${Word}${First}`, Found>
  : Word extends ""
    ? Found
    : Found | Word;

type FormulasOf<M extends MethodId> = (typeof METHODS)[M]["formulas"][number];
/** Of a method without constants the element is `never`; inferred from, it would let every text pass. */
type ConstantsOf<M extends MethodId> = [(typeof METHODS)[M]["constants"][number]] extends [never]
  ? never
  : (typeof METHODS)[M]["constants"][number]["symbol"];

/** Names of functions, which mean the same in every formula. */
export type CommonSymbol = Sign | "ln" | "exp" | "sin" | "cos" | "max" | "frac" | "round";

/** What has to be explained beside a method's formulas. */
export type SymbolOf<M extends MethodId> = Exclude<Pieces<FormulasOf<M>> | ConstantsOf<M>, CommonSymbol>;

/** Words for every symbol of every method. */
export type SymbolWords = { readonly [M in MethodId]: Readonly<Record<SymbolOf<M>, string>> };
