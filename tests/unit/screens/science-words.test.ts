import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, expectTypeOf, it } from "vitest";
import { METHODS } from "../../../src/science/methods/all.ts";
import type { MethodId } from "../../../src/science/methods.ts";
import { english, sentenceFor } from "../../../src/screens/catalogue.ts";
import { commonSymbolsIn } from "../../../src/screens/findings/common-symbols.ts";
import { SENTENCES } from "../../../src/screens/findings/sentences.ts";
import { SPECIALIST } from "../../../src/screens/findings/specialist.ts";
import type { SymbolOf, SymbolWords } from "../../../src/screens/findings/symbols.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

const words = english(TRADE_WORDS["uk-ie"]);
const late = SENTENCES.en(TRADE_WORDS["uk-ie"]);
const science = resolve(import.meta.dirname, "../../../src/science");
const texts = readdirSync(science, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts"))
  .map((path) => readFileSync(join(science, path), "utf8"));

it("has a sentence for every reason and caution of science", () => {
  const codes = new Set(texts.flatMap((text) => text.match(/"science\/[a-z-]+"/g) ?? []));
  expect(codes.size).toBeGreaterThan(25);
  const silent = [...codes]
    .map((code) => code.slice(1, -1))
    .filter((code) => words.problems[code] === undefined && late[code] === undefined);
  expect(silent).toEqual([]);
});

it("fills the facts of a caution into its sentence", () => {
  const problem = { code: "science/too-few-lines", facts: { needs: 3, has: 2 } } as const;
  expect(sentenceFor(words, problem, late)).toBe("Too few lines to give a range: it needs 3, there are 2.");
});

it("says every method in words and explains no symbol with nothing", () => {
  for (const id of Object.keys(METHODS) as MethodId[]) {
    expect(SPECIALIST.en.methods[id].title).not.toBe("");
    for (const says of Object.values(SPECIALIST.en.symbols[id])) expect(says.length).toBeGreaterThan(3);
  }
});

/** Methods of which the compiler would take any text for a symbol, so that a missing word compiles. */
type Ungathered = { readonly [M in MethodId]: string extends SymbolOf<M> ? M : never }[MethodId];

it("knows the symbols of every method by name, with constants or without", () => {
  expectTypeOf<Ungathered>().toEqualTypeOf<never>();
  expectTypeOf<SymbolOf<"true-magnetic">>().toEqualTypeOf<"T" | "M" | "D">();
  expectTypeOf<SymbolOf<"ring-depth-after">>().toEqualTypeOf<"F" | "F_1" | "F_2" | "t" | "t_1" | "t_2">();
  // @ts-expect-error: the word of D is missing
  const missing: SymbolWords["true-magnetic"] = { T: "true bearing", M: "what the compass shows" };
  expect(Object.keys(missing)).toHaveLength(2);
});

it("names the signs that a formula holds, and no others", () => {
  expect(commonSymbolsIn(["strip-ratio"])).toEqual(["Σ"]);
  expect(commonSymbolsIn(["logit-t"])).toEqual(["Σ", "±", "ln", "exp"]);
});
