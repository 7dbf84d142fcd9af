import { METHODS } from "../../science/methods/all.ts";
import type { MethodId } from "../../science/methods.ts";
import type { CommonSymbol } from "./symbols.ts";

const COMMON: Readonly<Record<CommonSymbol, RegExp>> = {
  Σ: /Σ/u,
  "√": /√/u,
  "±": /±/u,
  "≤": /≤/u,
  "≥": /≥/u,
  ln: /\bln\b/u,
  exp: /\bexp\b/u,
  sin: /sin/u,
  cos: /\bcos\b/u,
  max: /\bmax\b/u,
  frac: /\bfrac\b/u,
  round: /\bround\b/u,
};

/** The signs and functions that stand in the formulas of these methods, each once. */
export const commonSymbolsIn = (methods: readonly MethodId[]): readonly CommonSymbol[] => {
  const text = methods.flatMap((id) => METHODS[id].formulas).join("\n");
  return (Object.keys(COMMON) as CommonSymbol[]).filter((symbol) => COMMON[symbol].test(text));
};
