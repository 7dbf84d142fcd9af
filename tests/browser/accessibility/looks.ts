/** Looks at what stands on the screen with every check there is, in both themes and on every size of phone. */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect } from "vitest";
import { contrast, tokensOf } from "../../unit/screens/look-tokens.ts";
import { canvasesOn } from "./canvases.ts";
import { chartFaults } from "./charts.ts";
import { type ColourOf, coloursOn, focusOn, type Shown } from "./colours.ts";
import { LEFT_OPEN, openAs } from "./left-open.ts";
import { audit, covered, type OnFarm, overflowing, targets } from "./screens.ts";

const css = resolve(import.meta.dirname, "../../../src/screens/parts/look.css");
const tokens = tokensOf(readFileSync(css, "utf8"));
type Theme = keyof typeof tokens;

/**
 * Smallest target in CSS pixels. Own rule, above W3C WCAG 2.2 SC 2.5.5 Target Size (Enhanced), 44 px: gloves
 * and cold hands.
 */
const LEAST_PX = 48;
/** Smallest key that counts: own rule for gloves, no source. */
const LEAST_COUNTING_PX = 96;

/** Largest part of the height that may lie over the page while it is scrolled. Own rule, no source. */
const MOST_COVERED = 0.5;

/** W3C, WCAG 2.2: SC 1.4.6 Contrast (Enhanced) for words, SC 1.4.11 Non-text Contrast for everything else. */
const LEAST: Readonly<Record<ColourOf, number>> = { text: 7, edge: 3, mark: 3, focus: 3 };

/** Rules of the checker that a theme can change; all others see the same page in both. */
const OF_COLOUR = ["color-contrast", "color-contrast-enhanced", "link-in-text-block"];

/** What all looks together came upon. */
export interface Met {
  /** What the checker could not judge, and in which states. */
  readonly open: ReadonlyMap<string, ReadonlySet<string>>;
  /** Every combination of colours with its contrast, and where it was met first. */
  readonly pairs: ReadonlyMap<string, string>;
  /** Names of classes that stood on something. */
  readonly classes: ReadonlySet<string>;
}

export interface Eyes {
  readonly met: Met;
  /** Looks at the screen; everything that is wrong fails the test that calls it. */
  readonly look: (state: string) => Promise<void>;
  /** The same on the large screen that stands there already. */
  readonly lookWide: (state: string) => Promise<void>;
}

/** The strongest contrast between what is seen and what lies beside it. */
const best = ({ fronts, grounds }: Shown): number =>
  Math.max(0, ...fronts.flatMap((front) => grounds.map((ground) => contrast(front, ground))));

/** Colours by the names of their tokens. */
const named = (theme: Theme, colours: readonly string[]): string =>
  colours.map((colour) => [...tokens[theme]].find(([, value]) => value === colour)?.[0] ?? colour).join("+");

/** Puts the other theme on, and says what else that changed: a theme is colours and nothing else. */
const dress = ({ chromium }: OnFarm, theme: Theme): Promise<string[]> =>
  chromium.run((name) => {
    const places = (): string[] =>
      [...document.querySelectorAll("#app *")].map((one) => {
        const { x, y, width, height } = one.getBoundingClientRect();
        return `${one.tagName} ${one.getAttribute("class")} ${x} ${y} ${width} ${height}`;
      });
    const before = places();
    document.documentElement.dataset["theme"] = name;
    return places().filter((place, at) => place !== before[at]);
  }, theme);

const allColours = async ({ chromium }: OnFarm): Promise<Shown[]> => {
  const drawn = (await canvasesOn(chromium)).flatMap(({ ground, drawn }) =>
    drawn.flatMap(({ how, colour, text }): Shown[] =>
      // What is filled has an outline of its own.
      how === "fill" || how === "area"
        ? []
        : [
            {
              of: how === "text" ? "text" : "mark",
              fronts: [colour],
              grounds: [ground],
              what: `drawn ${text}`,
            },
          ],
    ),
  );
  return [...(await coloursOn(chromium)), ...drawn];
};

/** Makes the looks of one run. */
export const eyesOn = (farm: OnFarm): Eyes => {
  const { chromium } = farm;
  const open = new Map<string, Set<string>>();
  const pairs = new Map<string, string>();
  const classes = new Set<string>();

  const checkColours = (theme: Theme, state: string, shown: readonly Shown[]): void => {
    const known = new Set(tokens[theme].values());
    const faults = shown.flatMap((one) => {
      const ratio = best(one);
      const name = `${theme} ${one.of} ${named(theme, one.fronts)} on ${named(theme, one.grounds)} ${ratio.toFixed(1)}`;
      if (!pairs.has(name)) pairs.set(name, `${state}: ${one.what}`);
      const strange = [...one.fronts, ...one.grounds].filter((colour) => !known.has(colour));
      return ratio < LEAST[one.of] || strange.length > 0 ? [`${name}: ${one.what}`] : [];
    });
    expect.soft([...new Set(faults)], "colours").toEqual([]);
  };

  const checkTheme = async (theme: Theme, state: string): Promise<void> => {
    const { faults, open: left } = await audit(chromium, theme === "dusk" ? OF_COLOUR : []);
    expect.soft(faults, theme).toEqual([]);
    for (const one of left) open.set(openAs(one), (open.get(openAs(one)) ?? new Set()).add(state));
    expect.soft(left.filter((one) => !(openAs(one) in LEFT_OPEN))).toEqual([]);
    checkColours(theme, state, await allColours(farm));
    const ink = tokens[theme].get("ink") ?? "";
    expect.soft(await chartFaults(chromium, theme, ink), `charts in ${theme}`).toEqual([]);
  };

  const checkSizes = async (width: number, height: number): Promise<void> => {
    await chromium.page.setViewportSize({ width, height });
    const at = `at ${width} by ${height}`;
    const found = await targets(chromium);
    const small = found.filter(({ counts, widthPx, heightPx }) => {
      const least = counts ? LEAST_COUNTING_PX : LEAST_PX;
      return widthPx < least || heightPx < least;
    });
    expect.soft(found.length).toBeGreaterThan(0);
    expect.soft(small, `targets ${at}`).toEqual([]);
    // A chart finds its new size a moment after the window.
    await expect.poll(() => overflowing(chromium), { message: `beyond the edge ${at}` }).toEqual([]);
  };

  /** On its side, and with letters twice as large: what stays on the screen leaves room to read. */
  const checkRoom = async (width: number, height: number): Promise<void> => {
    await chromium.page.setViewportSize({ width, height });
    const at = `at ${width} by ${height}`;
    expect.soft(await covered(chromium), `covered ${at}`).toBeLessThanOrEqual(MOST_COVERED);
    if (width > 320)
      await expect.poll(() => overflowing(chromium), { message: `beyond the edge ${at}` }).toEqual([]);
  };

  const checkBoth = async (state: string): Promise<void> => {
    const standing = await chromium.run(() => [
      ...new Set([...document.querySelectorAll("[class]")].flatMap((one) => [...one.classList])),
    ]);
    for (const one of standing) classes.add(one);
    await checkTheme("daylight", state);
    expect.soft(await dress(farm, "dusk"), "what the theme moves").toEqual([]);
    // Drawings on canvases are drawn anew in the other colours.
    await chromium.run(() => new Promise<null>((resolve) => setTimeout(() => resolve(null), 50)));
    await checkTheme("dusk", state);
    // Keys light a dark screen: what they show is looked at last.
    checkColours("dusk", state, await focusOn(chromium));
    await dress(farm, "daylight");
    checkColours("daylight", state, await focusOn(chromium));
  };

  return {
    met: { open, pairs, classes },
    look: async (state) => {
      await checkBoth(state);
      await checkSizes(390, 844);
      await checkSizes(360, 640);
      await checkRoom(844, 390);
      await checkRoom(195, 422);
      await chromium.page.setViewportSize({ width: 390, height: 844 });
    },
    lookWide: async (state) => {
      await checkBoth(state);
      await checkSizes(1280, 800);
    },
  };
};
