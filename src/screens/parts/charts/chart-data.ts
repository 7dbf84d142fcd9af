/** What a chart over the years is made of, and how it is laid out. Nothing here draws. */

/** One value of one series in one year, in the unit of the chart. */
export interface YearPoint {
  readonly year: number;
  readonly value: number;
  /** Null when there is no range, for whatever reason. */
  readonly lower: number | null;
  readonly upper: number | null;
  /** The value as the table writes it, and its range or why there is none. */
  readonly text: string;
  readonly rangeText: string;
  /** How many samples it rests on. */
  readonly samplesText: string;
}

/** A strip over the years. */
export interface YearSeries {
  readonly key: string;
  readonly label: string;
  readonly points: readonly YearPoint[];
  /** From paper: drawn hollow, without a line and without a range. */
  readonly paper: readonly YearPoint[];
}

/** A chart over the years. */
export interface YearsData {
  readonly title: string;
  readonly unit: string;
  /** End of the value axis where the scale has one of its own (100 %), else null. */
  readonly end: number | null;
  readonly series: readonly YearSeries[];
}

/** Series drawn at once: so many colours are told apart on paper in the sun. */
export const SERIES_AT_ONCE = 4;

/** A point with the place that it is drawn at. */
export interface PlacedPoint {
  readonly series: number;
  readonly paper: boolean;
  readonly point: YearPoint;
  /** The year, moved a little so that bars of several strips do not lie on each other. */
  readonly x: number;
}

/** How far strips stand apart within a year. */
const APART_YEARS = 0.1;

/** Every point with its place, measured ones and those from paper, series by series. */
export const placed = (series: readonly YearSeries[]): readonly PlacedPoint[] =>
  series.flatMap(({ points, paper }, index) => {
    const shift = (index - (series.length - 1) / 2) * APART_YEARS;
    const place = (point: YearPoint, isPaper: boolean): PlacedPoint => ({
      series: index,
      paper: isPaper,
      point,
      x: point.year + shift,
    });
    return [...points.map((point) => place(point, false)), ...paper.map((point) => place(point, true))];
  });

/** Steps that people count in. */
const STEPS = [1, 2, 5, 10] as const;
/** About so many steps on the value axis. */
const PARTS = 4;
/** A range may be many times the value: the axis goes so far, and the bar then ends in an arrow. */
const MOST_RANGE = 2;

/**
 * The end of the value axis and its step. One wide range must not press all values flat, so the axis goes no
 * farther than twice the largest value.
 *
 * @returns an end above 0, also when there is nothing or nothing but 0
 *
 * @example
 * valueAxis([{ value: 42, upper: 400 }], null) // => { end: 100, step: 50 }
 */
export const valueAxis = (
  points: readonly { readonly value: number; readonly upper: number | null }[],
  end: number | null,
): { readonly end: number; readonly step: number } => {
  if (end !== null) return { end, step: end / PARTS };
  const largest = Math.max(0, ...points.map(({ value }) => value));
  const most = Math.max(
    largest,
    ...points.map(({ value, upper }) => Math.min(upper ?? value, MOST_RANGE * largest)),
  );
  if (!(most > 0)) return { end: 1, step: 0.5 };
  // Numbers this near to 0 have no digits left to be divided.
  if (most < 1e-300) return { end: most, step: most };
  const wanted = most / PARTS;
  const power = 10 ** Math.floor(Math.log10(wanted));
  const step = power * (STEPS.find((one) => one * power >= wanted * 0.999_999) ?? 10);
  return { end: step * Math.ceil(most / step - 1e-9), step };
};

/**
 * Places labels one under the other without overlap, each as near to its own line as can be.
 *
 * @param wanted heights in pixels from the top
 * @param gap least distance from one to the next
 * @param lowest the last place that a label may take
 * @returns places in the order of `wanted`
 *
 * @example
 * spreadOut([50, 52, 10], 16, 200) // => [50, 66, 10]
 */
export const spreadOut = (wanted: readonly number[], gap: number, lowest: number): readonly number[] => {
  const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const places = [...wanted];
  let least = Number.NEGATIVE_INFINITY;
  for (const index of order) {
    places[index] = Math.max(places[index] ?? 0, least);
    least = (places[index] ?? 0) + gap;
  }
  let most = lowest;
  for (const index of order.reverse()) {
    places[index] = Math.min(places[index] ?? 0, most);
    most = (places[index] ?? 0) - gap;
  }
  return places;
};

/** The years of a chart, from the first to the last without gaps; empty when there is no point. */
export const yearsIn = (series: readonly YearSeries[]): readonly number[] => {
  const years = series.flatMap(({ points, paper }) => [...points, ...paper].map(({ year }) => year));
  if (years.length === 0) return [];
  const first = Math.min(...years);
  return Array.from({ length: Math.max(...years) - first + 1 }, (_, index) => first + index);
};
