/** Draws a chart over the years on its canvas. The only file that imports the charting library. */
import UPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import { type PlacedPoint, placed, spreadOut, valueAxis, type YearSeries, yearsIn } from "./chart-data.ts";

/** What is drawn. */
export interface Drawn {
  readonly series: readonly YearSeries[];
  readonly unit: string;
  readonly end: number | null;
  /** Under the horizontal axis. */
  readonly yearWord: string;
  readonly writeValue: (value: number) => string;
  readonly onPick: (point: PlacedPoint) => void;
}

/** A chart that stands on the page. */
export interface Standing {
  readonly widen: (widthPx: number) => void;
  readonly clear: () => void;
}

export const HIGH_PX = 260;
const FONT = "15px system-ui, sans-serif";
const BOLD = "600 15px system-ui, sans-serif";
const LINE_PX = 17;
/** Labels on the lines take no more than this share of the width. */
const LABEL_SHARE = 0.32;
/** Dashes by series: told apart without colour. */
const DASHES = [[], [9, 5], [3, 4], [12, 4, 3, 4]] as const;

const token = (name: string): string =>
  getComputedStyle(document.documentElement).getPropertyValue(name).trim();

const colourOf = (series: number): string => token(`--series-${(series % DASHES.length) + 1}`);

/** Cuts a text to a width, with an ellipsis. */
const fitted = (ctx: CanvasRenderingContext2D, text: string, widthPx: number): string => {
  if (ctx.measureText(text).width <= widthPx) return text;
  const letters = [...text];
  while (letters.length > 1 && ctx.measureText(`${letters.join("")}…`).width > widthPx) letters.pop();
  return `${letters.join("").trimEnd()}…`;
};

/** A name in one line, or in two where one is too narrow for it. */
const inLines = (ctx: CanvasRenderingContext2D, text: string, widthPx: number): readonly string[] => {
  if (ctx.measureText(text).width <= widthPx) return [text];
  const words = text.split(" ");
  let taken = words.length;
  while (taken > 0 && ctx.measureText(words.slice(0, taken).join(" ")).width > widthPx) taken--;
  if (taken === 0) return [fitted(ctx, text, widthPx)];
  return [words.slice(0, taken).join(" "), fitted(ctx, words.slice(taken).join(" "), widthPx)];
};

const widthOf = (texts: readonly string[]): number => {
  const ctx = document.createElement("canvas").getContext("2d");
  if (ctx === null) return 0;
  ctx.font = BOLD;
  return Math.max(0, ...texts.map((text) => ctx.measureText(text).width));
};

/** One shape for each series: circle, square, triangle, diamond. */
const shape = (ctx: CanvasRenderingContext2D, series: number, x: number, y: number, r: number): void => {
  ctx.beginPath();
  switch (series % DASHES.length) {
    case 0:
      ctx.arc(x, y, r, 0, 2 * Math.PI);
      break;
    case 1:
      ctx.rect(x - r, y - r, 2 * r, 2 * r);
      break;
    case 2:
      ctx.moveTo(x, y - 1.3 * r);
      ctx.lineTo(x + 1.2 * r, y + r);
      ctx.lineTo(x - 1.2 * r, y + r);
      break;
    default:
      ctx.moveTo(x, y - 1.4 * r);
      ctx.lineTo(x + 1.4 * r, y);
      ctx.lineTo(x, y + 1.4 * r);
      ctx.lineTo(x - 1.4 * r, y);
  }
  ctx.closePath();
};

const bar = (u: UPlot, { point, x }: PlacedPoint, end: number, ratio: number): void => {
  if (point.lower === null || point.upper === null) return;
  const { ctx } = u;
  const at = u.valToPos(x, "x", true);
  const low = u.valToPos(Math.max(0, point.lower), "y", true);
  const beyond = point.upper > end;
  const high = u.valToPos(Math.min(end, point.upper), "y", true);
  const cap = 4 * ratio;
  ctx.beginPath();
  ctx.moveTo(at, low);
  ctx.lineTo(at, high);
  ctx.moveTo(at - cap, low);
  ctx.lineTo(at + cap, low);
  if (beyond) {
    ctx.moveTo(at - cap, high + 1.5 * cap);
    ctx.lineTo(at, high);
    ctx.lineTo(at + cap, high + 1.5 * cap);
  } else {
    ctx.moveTo(at - cap, high);
    ctx.lineTo(at + cap, high);
  }
  ctx.stroke();
};

const marker = (u: UPlot, one: PlacedPoint, picked: boolean, ratio: number): void => {
  const { ctx } = u;
  const [x, y] = [u.valToPos(one.x, "x", true), u.valToPos(one.point.value, "y", true)];
  shape(ctx, one.series, x, y, 5 * ratio);
  ctx.fillStyle = one.paper ? token("--paper") : colourOf(one.series);
  ctx.fill();
  ctx.stroke();
  if (!picked) return;
  ctx.beginPath();
  ctx.arc(x, y, 12 * ratio, 0, 2 * Math.PI);
  ctx.strokeStyle = token("--ink");
  ctx.stroke();
};

/** The name of each strip at the end of its own line. */
const labels = (
  u: UPlot,
  series: readonly YearSeries[],
  points: readonly PlacedPoint[],
  ratio: number,
): void => {
  const { ctx, bbox } = u;
  const last = series.map((_, index) => {
    const own = points.filter((one) => one.series === index);
    const measured = own.filter(({ paper }) => !paper);
    return (measured.length > 0 ? measured : own).reduce<PlacedPoint | null>(
      (newest, one) => (newest === null || one.x > newest.x ? one : newest),
      null,
    );
  });
  ctx.font = BOLD.replace("15px", `${15 * ratio}px`);
  ctx.textAlign = "left";
  ctx.textBaseline = "middle";
  const left = bbox.left + bbox.width + 6 * ratio;
  const room = ctx.canvas.width - left - 2 * ratio;
  const named = last.flatMap((one, index) =>
    one === null ? [] : [{ one, index, lines: inLines(ctx, series[index]?.label ?? "", room) }],
  );
  const most = Math.max(1, ...named.map(({ lines }) => lines.length));
  const wanted = named.map(({ one }) => u.valToPos(one.point.value, "y", true));
  const lineHigh = LINE_PX * ratio;
  const lowest = bbox.top + bbox.height - ((most - 1) * lineHigh) / 2;
  const places = spreadOut(wanted, most * lineHigh + 2 * ratio, lowest);
  for (const [at, { one, index, lines }] of named.entries()) {
    const y = places[at] ?? 0;
    ctx.strokeStyle = colourOf(index);
    ctx.lineWidth = 1.5 * ratio;
    ctx.setLineDash([]);
    ctx.beginPath();
    ctx.moveTo(u.valToPos(one.x, "x", true) + 8 * ratio, wanted[at] ?? 0);
    ctx.lineTo(left - 2 * ratio, y);
    ctx.stroke();
    ctx.fillStyle = token("--ink");
    for (const [line, text] of lines.entries())
      ctx.fillText(text, left, y + (line - (lines.length - 1) / 2) * lineHigh);
  }
};

/** Columns for the library: one of places, and one of values for each series, with gaps where it has none. */
const columnsOf = (series: readonly YearSeries[], points: readonly PlacedPoint[]): UPlot.AlignedData => {
  const measured = points.filter(({ paper }) => !paper);
  const xs = [...new Set(points.map(({ x }) => x))].sort((a, b) => a - b);
  const rows = series.map((_, index) => {
    const own = new Map(
      measured.filter((one) => one.series === index).map(({ x, point }) => [x, point.value]),
    );
    return xs.map((x) => own.get(x) ?? null);
  });
  return [xs, ...rows];
};

const optionsOf = (
  drawn: Drawn,
  points: readonly PlacedPoint[],
  widthPx: number,
  draw: (u: UPlot) => void,
): UPlot.Options => {
  const { series, unit, end: fixed, yearWord, writeValue } = drawn;
  const years = yearsIn(series);
  const [first, last] = [years[0] ?? 0, years.at(-1) ?? 0];
  const { end, step } = valueAxis(
    points.map(({ point }) => point),
    fixed,
  );
  const labelPx = Math.min(widthOf(series.map(({ label }) => label)) + 12, widthPx * LABEL_SHARE);
  const ink = () => token("--ink");
  const rule = { stroke: () => token("--rule"), width: 1 };
  const ticks = { stroke: ink, width: 2, size: 5 };
  // As many years as fit beside each other.
  const every = Math.max(1, Math.ceil((years.length * 48) / Math.max(48, widthPx - labelPx - 50)));
  return {
    width: widthPx,
    height: HIGH_PX,
    padding: [28, labelPx, 0, 0],
    cursor: { show: false },
    legend: { show: false },
    select: { show: false, left: 0, top: 0, width: 0, height: 0 },
    scales: {
      x: { time: false, range: [first - 0.4, last + 0.4] },
      y: { range: [0, end] },
    },
    axes: [
      {
        stroke: ink,
        font: FONT,
        grid: { show: false },
        ticks,
        label: yearWord,
        labelFont: FONT,
        labelSize: 24,
        size: 30,
        splits: () => years.filter((year) => (last - year) % every === 0),
        values: (_, splits) => splits.map(String),
      },
      {
        stroke: ink,
        font: FONT,
        grid: rule,
        ticks,
        size: 46,
        splits: () => Array.from({ length: Math.round(end / step) + 1 }, (_, at) => at * step),
        values: (_, splits) => splits.map(writeValue),
      },
    ],
    series: [
      {},
      ...series.map((_, index) => ({
        stroke: () => colourOf(index),
        width: 2.5,
        dash: [...(DASHES[index % DASHES.length] ?? [])],
        spanGaps: true,
        points: { show: false },
      })),
    ],
    hooks: {
      draw: [
        (u) => {
          const { ctx, bbox } = u;
          const ratio = UPlot.pxRatio;
          ctx.save();
          ctx.font = BOLD.replace("15px", `${15 * ratio}px`);
          ctx.fillStyle = ink();
          ctx.textAlign = "left";
          ctx.textBaseline = "top";
          ctx.fillText(unit, Math.max(2, bbox.left - 40 * ratio), 2 * ratio);
          draw(u);
          ctx.restore();
        },
      ],
    },
  };
};

/** Points that a thumb means lie no farther away than this. */
const REACH_PX = 40;

const nearest = (
  u: UPlot,
  points: readonly PlacedPoint[],
  event: { readonly clientX: number; readonly clientY: number },
): PlacedPoint | null => {
  const box = u.over.getBoundingClientRect();
  const [x, y] = [event.clientX - box.left, event.clientY - box.top];
  let best: { readonly one: PlacedPoint; readonly far: number } | null = null;
  for (const one of points) {
    const far = Math.hypot(u.valToPos(one.x, "x") - x, u.valToPos(one.point.value, "y") - y);
    if (far <= REACH_PX && (best === null || far < best.far)) best = { one, far };
  }
  return best?.one ?? null;
};

/**
 * Draws a chart.
 *
 * @param place an empty element of the page
 * @param widthPx its width
 */
export const drawYears = (place: HTMLElement, drawn: Drawn, widthPx: number): Standing => {
  const points = placed(drawn.series);
  const { end } = valueAxis(
    points.map(({ point }) => point),
    drawn.end,
  );
  let picked: PlacedPoint | null = null;
  const draw = (u: UPlot): void => {
    const { ctx } = u;
    const ratio = UPlot.pxRatio;
    ctx.lineWidth = 2 * ratio;
    ctx.setLineDash([]);
    for (const one of points) {
      ctx.strokeStyle = colourOf(one.series);
      ctx.lineWidth = 2 * ratio;
      if (!one.paper) bar(u, one, end, ratio);
      marker(u, one, one === picked, ratio);
    }
    labels(u, drawn.series, points, ratio);
  };
  const chart = new UPlot(optionsOf(drawn, points, widthPx, draw), columnsOf(drawn.series, points), place);
  chart.over.addEventListener("click", (event) => {
    const found = nearest(chart, points, event);
    if (found === null) return;
    picked = found;
    chart.redraw(false);
    drawn.onPick(found);
  });
  return {
    widen: (wide) => chart.setSize({ width: wide, height: HIGH_PX }),
    clear: () => chart.destroy(),
  };
};
