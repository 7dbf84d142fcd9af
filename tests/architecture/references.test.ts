/**
 * Values that are checked against the world outside say where they are from. A file of `tests/reference` that names no
 * source, two sources or no mark would let a number in that nobody can look up.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { projectRoot } from "../run/steps.mjs";

const FOLDER = join(projectRoot, "tests/reference");
const files = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".test.ts"))
  .map((name) => {
    const text = readFileSync(join(FOLDER, name), "utf8");
    const opening = /^\/\*\*\n([\s\S]*?)\n \*\/\n/.exec(text)?.[1] ?? "";
    const paragraph = (word: string): readonly string[] =>
      [...opening.matchAll(new RegExp(`^ \\* ${word}: ((?:.|\\n \\* (?!\\w+: ))+)$`, "gm"))].map(
        ([, said = ""]) => said.replaceAll("\n * ", " "),
      );
    return { name, text, sources: paragraph("Source"), marks: paragraph("Mark") };
  });

const MARK = /^(published|from memory|computed here|common practice, no source)\b/;

const withoutBrackets = (text: string): string => {
  const inner = text.replaceAll(/\([^()]*\)/g, "");
  return inner === text ? text : withoutBrackets(inner);
};

describe.each(files)("$name", ({ name, sources, marks }) => {
  it("opens with exactly one source and its mark", () => {
    expect(sources).toHaveLength(1);
    expect(marks).toHaveLength(1);
    const [source = "", mark = ""] = [...sources, ...marks];
    // Two years or a semicolon are two works.
    expect(source).not.toContain(";");
    expect(new Set(source.match(/\b(?:1[89]|20)\d\d\b(?!-)/g)).size).toBeLessThan(2);
    // Brackets say which values a mark is for; what stands outside of them are marks.
    for (const one of withoutBrackets(mark).split("; ")) expect(one).toMatch(MARK);
  });

  it("is named for a definition exactly when nobody published its values", () => {
    const [mark = ""] = marks;
    expect(name.startsWith("by-")).toBe(
      /^(?:the definition|the closed forms|counting out|the standard)/.test(sources[0] ?? ""),
    );
    if (name.startsWith("by-")) expect(withoutBrackets(mark)).not.toMatch(/(?:^|; )published/);
  });
});

it("no source stands in two files", () => {
  // The first two parts: an institution's name alone is not the work.
  const named = files.map(({ sources }) => (sources[0] ?? "").split(/, |: /).slice(0, 2).join(", "));
  expect(named.filter((one, at) => named.indexOf(one) !== at)).toEqual([]);
});

it("holds at least 150 values of others, written out as numbers", () => {
  // Literals that an answer is held against; the rows of tables come on top, tolerances do not count.
  const literals = files
    .filter(({ name }) => !name.startsWith("by-"))
    .flatMap(({ text }) => text.match(/\.to(?:Be|Equal|BeCloseTo)\(-?\d[\d_.e-]*[,)]/g) ?? []);
  expect(literals.length).toBeGreaterThan(350);
});
