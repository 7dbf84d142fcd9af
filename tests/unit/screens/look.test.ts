import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { contrast, tokensOf } from "./look-tokens.ts";

const root = resolve(import.meta.dirname, "../../..");
const screens = join(root, "src/screens");
const look = join(screens, "parts/look.css");
const css = readFileSync(look, "utf8");
const themes = tokensOf(css);

/**
 * Text or a figure, and what lies behind it. What the screens really show is measured on them
 * (tests/browser/accessibility); these keep a token from falling below its bound while it is tuned.
 */
const texts: readonly (readonly [text: string, behind: string])[] = [
  ["ink", "paper"],
  ["ink", "soft"],
  ["straw-ink", "straw"],
  ["moss", "paper"],
  ["rain", "paper"],
  ["clay", "paper"],
  ["moss", "soft"],
  ["rain", "soft"],
  ["clay", "soft"],
  ["on-solid", "ink"],
  ["paper", "ink"],
];

/** Edges of controls, rules and the outline of what has the focus. */
const edges: readonly (readonly [edge: string, behind: string])[] = [
  ["ink", "paper"],
  ["ink", "soft"],
  ["ink", "straw"],
  ["rule", "paper"],
  ["clay", "paper"],
  ["rain", "paper"],
];

it("measures contrast as WCAG 2.2 defines it", () => {
  // W3C, WCAG 2.2, definition of contrast ratio: from 1 to 21.
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
  expect(contrast("#ffffff", "#ffffff")).toBe(1);
  // W3C, Understanding SC 1.4.3: #767676 is the lightest grey on white that reaches 4.5 (from memory).
  expect(contrast("#767676", "#ffffff")).toBeGreaterThanOrEqual(4.5);
  expect(contrast("#777777", "#ffffff")).toBeLessThan(4.5);
});

it("has the same tokens in both themes", () => {
  const { daylight, dusk } = themes;
  expect([...dusk.keys()].sort()).toEqual([...daylight.keys()].sort());
  expect(daylight.size).toBeGreaterThanOrEqual(14);
});

describe.each(Object.entries(themes))("%s", (_theme, tokens) => {
  const ratio = (front: string, behind: string): number =>
    contrast(tokens.get(front) ?? "", tokens.get(behind) ?? "");

  it.each(texts)("%s on %s can be read in the sun", (text, behind) => {
    // W3C, WCAG 2.2, SC 1.4.6 Contrast (Enhanced): 7:1.
    expect(ratio(text, behind)).toBeGreaterThanOrEqual(7);
  });

  it("has ink on paper at 15:1", () => {
    expect(ratio("ink", "paper")).toBeGreaterThanOrEqual(15);
  });

  it.each(edges)("%s on %s can be seen as an edge", (edge, behind) => {
    // W3C, WCAG 2.2, SC 1.4.11 Non-text Contrast: 3:1.
    expect(ratio(edge, behind)).toBeGreaterThanOrEqual(3);
  });

  it.each(["series-1", "series-2", "series-3", "series-4"])("%s stands out from the paper", (series) => {
    // SC 1.4.11 again: a colour below 3:1 would need an outline of ink, and none is drawn.
    expect(ratio(series, "paper")).toBeGreaterThanOrEqual(3);
  });
});

it("takes its series from the palette of Okabe and Ito", () => {
  // M. Okabe, K. Ito, "Color Universal Design", 2002 (revised 2008), the eight colours; from memory.
  const palette = new Set([
    "#000000",
    "#e69f00",
    "#56b4e9",
    "#009e73",
    "#f0e442",
    "#0072b2",
    "#d55e00",
    "#cc79a7",
  ]);
  // Black does not show on dusk; its place is taken by ink.
  for (const [theme, tokens] of Object.entries(themes))
    for (const [name, colour] of tokens)
      if (name.startsWith("series-") && !(theme === "dusk" && colour === tokens.get("ink")))
        expect(palette, `${name} in ${theme}`).toContain(colour);
});

it("has the browser's own bars in the colour of the paper", () => {
  const page = readFileSync(join(root, "src/index.html"), "utf8");
  const bars = [...page.matchAll(/name="theme-color" content="(#\w+)"/g)].map(([, colour]) =>
    colour?.toLowerCase(),
  );
  expect(bars).toEqual([themes.daylight.get("paper"), themes.dusk.get("paper")]);
  const manifest = readFileSync(join(root, "public/manifest.webmanifest"), "utf8");
  const { theme_color, background_color }: Record<string, string> = JSON.parse(manifest);
  expect(theme_color?.toLowerCase()).toBe(themes.daylight.get("paper"));
  expect(background_color?.toLowerCase()).toBe(themes.daylight.get("paper"));
});

/** A colour that is written out instead of taken from a token. */
const colours =
  /#[0-9a-f]{3,8}\b(?!-)|\b(?:rgb|hsl|hwb|lab|lch|oklab|oklch|color|color-mix)a?\(|[:\s"'](?:white|black|red|green|blue|gr[ae]y|silver|yellow|orange|brown|purple)\s*(?:;|!|$)/im;

/** What makes one colour out of two, so that no contrast can be promised. */
// A library's own transparency is taken back by writing it as 1.
const mixing = /\b(?:opacity(?!\s*:\s*1;)|filter|backdrop-filter|mix-blend-mode)\s*:|-gradient\(/i;

const files = readdirSync(screens, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.(?:css|tsx)$/.test(name))
  .map((name) => join(screens, name));

it("finds a colour that was written out", () => {
  for (const text of ["a { color: #1e1912; }", "fill: rgb(0 0 0)", "b { color: white; }", 'fill="#ABC"'])
    expect(text).toMatch(colours);
  for (const text of [
    "var(--straw)",
    'to="#/fields"',
    "currentColor",
    "transparent",
    '"green",',
    "url(#a-b)",
  ])
    expect(text).not.toMatch(colours);
});

it("has every colour in look.css and nowhere else", () => {
  expect(files.length).toBeGreaterThan(10);
  const found = files
    .filter((file) => file !== look)
    .flatMap((file) => {
      const lines = readFileSync(file, "utf8").split("\n");
      return lines.flatMap((line, at) =>
        colours.test(line) ? [`${relative(root, file)}:${at + 1} ${line.trim()}`] : [],
      );
    });
  expect(found).toEqual([]);
  // Within look.css, in the two blocks of tokens only.
  const rules = css.replace(/:root(\[[^\]]*\])?\s*\{[^}]*\}/g, "");
  expect(rules.split("\n").filter((line) => colours.test(line))).toEqual([]);
});

it("mixes no colours", () => {
  const found = files
    .filter((file) => file.endsWith(".css"))
    .flatMap((file) => {
      const lines = readFileSync(file, "utf8").split("\n");
      return lines.flatMap((line, at) =>
        mixing.test(line) ? [`${relative(root, file)}:${at + 1} ${line.trim()}`] : [],
      );
    });
  expect(found).toEqual([]);
});
