/** The colours of the two themes, read from their style sheet, and the contrast between two of them. */

/** Colours by the name of their token, without its hyphens in front. */
export type Tokens = ReadonlyMap<string, string>;

const colourTokens = (block: string): Tokens =>
  new Map(
    [...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})\s*;/gi)].map(([, name = "", colour = ""]) => [
      name,
      colour.toLowerCase(),
    ]),
  );

/** Reads the tokens of Daylight and Dusk from the text of the style sheet. */
export const tokensOf = (css: string): { readonly daylight: Tokens; readonly dusk: Tokens } => {
  const [daylight] = /:root\s*\{[^}]*\}/.exec(css) ?? [""];
  const [dusk] = /:root\[data-theme="dusk"\]\s*\{[^}]*\}/.exec(css) ?? [""];
  return { daylight: colourTokens(daylight), dusk: colourTokens(dusk) };
};

/** sRGB channel, 0 to 255, to its linear share of light. */
const linear = (channel: number): number => {
  const share = channel / 255;
  return share <= 0.040_45 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};

const luminance = (colour: string): number => {
  const [, red = "", green = "", blue = ""] = /^#(\w\w)(\w\w)(\w\w)$/.exec(colour) ?? [];
  const [r, g, b] = [red, green, blue].map((hex) => linear(Number.parseInt(hex, 16)));
  return 0.2126 * (r ?? Number.NaN) + 0.7152 * (g ?? Number.NaN) + 0.0722 * (b ?? Number.NaN);
};

/**
 * Contrast between two colours, from 1 to 21.
 *
 * Source: W3C, WCAG 2.2, definitions of *relative luminance* and *contrast ratio*.
 *
 * @param one `#rrggbb`
 * @returns NaN when one of them is no such colour
 * @example
 * contrast("#000000", "#ffffff"); // 21
 */
export const contrast = (one: string, other: string): number => {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
};
