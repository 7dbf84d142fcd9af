/** Charts as they are drawn: the colours of their series, and what else tells one series from another. */
import type { ChromiumDriver } from "../drivers/chromium.ts";
import { canvasesOn, type Drawn } from "./canvases.ts";

/**
 * M. Okabe, K. Ito, "Color Universal Design", 2002 (revised 2008), the eight colours; from memory. The first
 * four, in this order, are told from white paper at 3:1; the others are not.
 */
const ON_PAPER = ["#000000", "#0072b2", "#d55e00", "#009e73"] as const;
const PALETTE: ReadonlySet<string> = new Set([...ON_PAPER, "#e69f00", "#56b4e9", "#f0e442", "#cc79a7"]);

/** One series of a chart. */
interface Series {
  readonly colour: string;
  readonly dash: string;
  readonly marker: string;
  /** Its name, as it stands on its line. */
  readonly label: string;
}

const bars = (chromium: ChromiumDriver): Promise<Series[][]> =>
  chromium.run(() => {
    const hex = (css: string): string =>
      `#${(css.match(/\d+/g) ?? [])
        .slice(0, 3)
        .map((one) => Number(one).toString(16).padStart(2, "0"))
        .join("")}`;
    return [...document.querySelectorAll(".drawing ul")].map((chart) =>
      [...chart.children].flatMap((line) => {
        const drawing = line.querySelector(".bar-drawing");
        if (drawing === null) return [];
        return [
          {
            colour: hex(getComputedStyle(drawing).color),
            dash: drawing.querySelector(".bar-range")?.getAttribute("stroke-dasharray") ?? "",
            marker: drawing.querySelector(".bar-value")?.getAttribute("d") ?? "",
            label: line.querySelector(".drawn-label b")?.textContent ?? "",
          },
        ];
      }),
    );
  });

/** The series of a canvas, in the order of their first markers; a hollow one is filled with the ground. */
const seriesOf = (ground: string, drawn: readonly Drawn[]): Series[] => {
  const colours = new Set(
    drawn.flatMap(({ how, colour }) => (how === "fill" && colour !== ground ? [colour] : [])),
  );
  return [...colours].map((colour) => {
    const strokes = drawn.filter((one) => one.how === "stroke" && one.colour === colour);
    // Right behind the line that leads from the series to its name.
    const named = drawn.find(({ how }, at) => {
      const lead = drawn[at - 1];
      return how === "text" && lead?.how === "stroke" && lead.colour === colour;
    });
    return {
      colour,
      dash: [...new Set(strokes.map(({ dash }) => dash.join(" ")))].sort().join(", "),
      marker: "",
      label: named?.text ?? "",
    };
  });
};

/**
 * What is wrong with the charts on the screen.
 *
 * @param ink the colour that stands in for black where black cannot be seen
 */
export const chartFaults = async (
  chromium: ChromiumDriver,
  theme: "daylight" | "dusk",
  ink: string,
): Promise<string[]> => {
  const canvases = (await canvasesOn(chromium)).map(({ ground, drawn }) => seriesOf(ground, drawn));
  return [...(await bars(chromium)), ...canvases].flatMap((chart) =>
    chart.flatMap(({ colour, dash, marker, label }, at) => {
      const right =
        theme === "daylight"
          ? colour === ON_PAPER[at % ON_PAPER.length]
          : PALETTE.has(colour) || colour === ink;
      const near = chart.slice(Math.max(0, at - ON_PAPER.length + 1), at);
      const alike = near.some((one) => one.dash === dash && one.marker === marker);
      return [
        ...(right ? [] : [`series ${at + 1} is ${colour}`]),
        ...(alike ? [`series ${at + 1} is drawn as another one`] : []),
        ...(near.some((one) => one.colour === colour)
          ? [`series ${at + 1} has the colour of another one`]
          : []),
        ...(label === "" ? [`series ${at + 1} has no name on its line`] : []),
      ];
    }),
  );
};
