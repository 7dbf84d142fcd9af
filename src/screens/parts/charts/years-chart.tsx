/** A chart over the harvest years: drawn when it comes near the screen, and the same values as a table. */
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { Key } from "../keys.tsx";
import { useNear } from "../near.ts";
import { writeNumber } from "../numbers.ts";
import { TONGUE } from "../words.common.ts";
import { useWordsOf } from "../words-of.ts";
import {
  type PlacedPoint,
  placed,
  SERIES_AT_ONCE,
  valueAxis,
  type YearsData,
  yearsIn,
} from "./chart-data.ts";
import type { Standing } from "./chart-drawing.ts";
import { CHART_WORDS } from "./chart-words.ts";
import "./charts.css";

/** The theme now on the page; a chart is drawn again in the other colours. */
const useTheme = (): string => {
  const read = (): string => document.documentElement.dataset["theme"] ?? "";
  const [theme, setTheme] = useState(read);
  useEffect(() => {
    const watch = new MutationObserver(() => setTheme(read()));
    watch.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
    return () => watch.disconnect();
  }, []);
  return theme;
};

/** Draws again whenever data, theme or what is shown of it changes, and follows the width of its place. */
const useDrawing = (data: YearsData, yearWord: string, onPick: (point: PlacedPoint) => void) => {
  const place = useRef<HTMLDivElement>(null);
  const theme = useTheme();
  const near = useNear(place);
  useEffect(() => {
    const on = place.current;
    if (!near || on === null) return undefined;
    let standing: Standing | undefined;
    let over = false;
    const widths = new ResizeObserver(() => {
      if (on.clientWidth > 0) standing?.widen(on.clientWidth);
    });
    // When the code is gone (another window took a newer build) the table still has every value.
    import("./chart-drawing.ts").then(
      ({ drawYears }) => {
        if (over || on.clientWidth === 0) return;
        const writeValue = (value: number): string => writeNumber(value, TONGUE, 2);
        standing = drawYears(on, { ...data, yearWord, writeValue, onPick }, on.clientWidth);
        widths.observe(on);
      },
      () => undefined,
    );
    return () => {
      over = true;
      widths.disconnect();
      standing?.clear();
    };
  }, [near, theme, data, yearWord]);
  return place;
};

/** The drawing, what a touched point says, and what the signs mean. */
const Chart = ({ data }: { readonly data: YearsData }) => {
  const words = useWordsOf(CHART_WORDS);
  const [touched, setTouched] = useState<PlacedPoint | null>(null);
  const place = useDrawing(data, words.year, setTouched);
  const years = yearsIn(data.series);
  const points = placed(data.series);
  const { end } = valueAxis(
    points.map(({ point }) => point),
    data.end,
  );
  return (
    <>
      <div
        class="years-drawing"
        ref={place}
        role="img"
        aria-label={words.says(data.title, data.series.length, years[0] ?? 0, years.at(-1) ?? 0)}
      />
      <p class="years-said" role="status">
        {touched === null
          ? words.touch
          : [
              `${data.series[touched.series]?.label ?? ""}, ${words.year} ${touched.point.year}`,
              `${touched.point.text} ${data.unit}`,
              ...(touched.paper ? [words.fromPaper] : [touched.point.rangeText]),
              touched.point.samplesText,
            ]
              .filter((part) => part !== "")
              .join(" · ")}
      </p>
      <p class="aside">
        {[
          words.rangeKey,
          ...(points.some(({ point, paper }) => !paper && (point.upper ?? 0) > end) ? [words.arrowKey] : []),
          ...(points.some(({ paper }) => paper) ? [words.paperKey] : []),
        ].join(" ")}
      </p>
    </>
  );
};

const Table = ({ data }: { readonly data: YearsData }) => {
  const words = useWordsOf(CHART_WORDS);
  const rows = data.series
    .flatMap((series) => [
      ...series.points.map((point) => ({ series, point, paper: false })),
      ...series.paper.map((point) => ({ series, point, paper: true })),
    ])
    .sort((a, b) => b.point.year - a.point.year);
  return (
    <details class="years-table">
      <summary>{words.asTable}</summary>
      <table class="figures">
        <caption class="out-of-sight">{data.title}</caption>
        <thead>
          <tr>
            <th scope="col">{words.yearTitle}</th>
            <th scope="col">{words.strip}</th>
            <th scope="col" class="number">
              {data.unit}
            </th>
            <th scope="col">{words.range}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ series, point, paper }, at) => (
            <tr key={`${series.key} ${point.year} ${paper} ${at}`}>
              <th scope="row">{point.year}</th>
              <td>{series.label}</td>
              <td class="number">{point.text}</td>
              <td>
                {paper ? words.fromPaper : point.rangeText}
                <small>{point.samplesText}</small>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
};

/**
 * A chart with its table. So many strips as can be told apart are drawn at once; the table has all of them.
 *
 * @param props.data the same object as long as nothing of it changed: it is drawn again whenever it is another
 */
export const YearsChart = (props: { readonly data: YearsData }) => {
  const words = useWordsOf(CHART_WORDS);
  const { data } = props;
  const [turned, setTurned] = useState(0);
  const from = turned < data.series.length ? turned : 0;
  const drawn = useMemo(
    () => ({ ...data, series: data.series.slice(from, from + SERIES_AT_ONCE) }),
    [data, from],
  );
  const next = from + SERIES_AT_ONCE < data.series.length ? from + SERIES_AT_ONCE : 0;
  return (
    <figure class="years-chart">
      <figcaption>{data.title}</figcaption>
      <Chart key={from} data={drawn} />
      {data.series.length > SERIES_AT_ONCE ? (
        <Key onPress={() => setTurned(next)}>
          {words.others(data.series.slice(next, next + SERIES_AT_ONCE).length)}
        </Key>
      ) : null}
      <Table data={data} />
    </figure>
  );
};
