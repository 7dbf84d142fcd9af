import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";

/** Spelled or called otherwise in the United States: such a word comes from the trade words, or is avoided. */
const OF_ONE_REGION =
  /\b(?:colours?|greys?|litres?|(?:milli|centi|kilo)?metres?|neighbour\w*|levelled|centres?|ploughs?|spades?|headlands?|tramlines?|maize)\b(?!-)/iu;

/** Symbols and methods have one English for all, that of their sources; these two files choose by region. */
const LEFT_OUT = /specialist|symbols|methods\.ts$|parts\/trade\.ts$|words\.units\.ts$|chart-words\.ts$/u;

const screens = resolve(import.meta.dirname, "../../../src/screens");

/** What a file puts on screens: its texts, without comments, gaps and addresses of other files. */
const textsOf = (source: string): readonly string[] =>
  source
    .replaceAll(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$|^import .*$/gmu, "")
    .replaceAll(/\$\{(?:[^{}]|\{[^{}]*\})*\}/gu, "")
    .match(/"[^"\n]*"|`[^`]*`/gu) ?? [];

it("holds no word of one region alone outside the trade words", () => {
  const found = readdirSync(screens, { recursive: true, encoding: "utf8" })
    .filter((path) => /words|sentences/u.test(path) && path.endsWith(".ts") && !LEFT_OUT.test(path))
    .flatMap((path) =>
      textsOf(readFileSync(join(screens, path), "utf8"))
        .filter((text) => OF_ONE_REGION.test(text.replaceAll(/\{\w+\}/gu, "")))
        .map((text) => `${path}: ${text}`),
    );
  expect(found).toEqual([]);
});

it("sees such a word", () => {
  expect(
    textsOf('a: "pale grey", // the colour\nb: (x: string) => `in $' + "{x} litres`").filter((text) =>
      OF_ONE_REGION.test(text),
    ),
  ).toEqual(['"pale grey"', "`in  litres`"]);
});
