/** One measure of all strips on one scale: marker, dash, words and range; colour is only the fourth thing. */
import type { Result } from "../../record/result.ts";
import { ok } from "../../record/result.ts";
import type { MeanFound } from "../../science/earthworms/worms-of-field.ts";
import type { Bounds } from "../../science/estimate.ts";
import { useHouse } from "../parts/house.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { useNoRange } from "./no-range.ts";
import type { Measure } from "./side-by-side/conditions.ts";
import { scaleEnd, shortUnit, valueText, withUnit } from "./side-by-side/numbers.ts";
import { SIDE_WORDS } from "./side-by-side/words.ts";

/** Marker and dash per series; with the colour of the same number they repeat after four. */
const MARKERS = [
  "M-8-8h16v16h-16z",
  "M0-9a9 9 0 1 0 .01 0z",
  "M0-11l11 11-11 11-11-11z",
  "M0-10l11 19h-22z",
] as const;
const DASHES = [undefined, "14 5", "7 5", "2 5"] as const;

/** In percent of the width; the ends keep room for a marker. */
const across = (share: number): string => `${4 + share * 92}%`;

/** One value with its range on a line from 0 to 1; a range that reaches past 1 goes on to the edge, without an end. */
export const Bar = (props: {
  readonly series: number;
  readonly found: { readonly value: number; readonly range: Result<Bounds> };
  readonly target: number | null;
}) => {
  const { found } = props;
  const series = props.series % MARKERS.length;
  const range = found.range.ok ? found.range.value : null;
  const upper = range === null ? 1 : Math.min(range.upper, 1);
  return (
    <svg
      class={`bar-drawing series-${series + 1}`}
      height="36"
      width="100%"
      aria-hidden="true"
      focusable="false"
    >
      <line class="bar-axis" x1={across(0)} x2={across(1)} y1="18" y2="18" />
      {props.target === null ? null : (
        <line class="bar-target" x1={across(props.target)} x2={across(props.target)} y1="0" y2="36" />
      )}
      {range === null ? null : (
        <>
          <line
            class="bar-range"
            x1={across(range.lower)}
            x2={across(upper)}
            y1="18"
            y2="18"
            stroke-dasharray={DASHES[series]}
          />
          <line class="bar-end" x1={across(range.lower)} x2={across(range.lower)} y1="10" y2="26" />
          {range.upper > 1 ? null : (
            <line class="bar-end" x1={across(upper)} x2={across(upper)} y1="10" y2="26" />
          )}
        </>
      )}
      <svg x={across(found.value)} y="18" overflow="visible" aria-hidden="true">
        <path class="bar-value" d={MARKERS[series]} />
      </svg>
    </svg>
  );
};

/** Nearer to an end of the axis than this, the word of the target takes the place of that end's. */
const ROOM = 0.4;
/** Nearer than this, it also has to lean away from the edge. */
const LEAN = 0.2;

const Axis = (props: {
  readonly ends: readonly [string, string];
  readonly target: { readonly share: number; readonly words: string } | null;
}) => {
  const { ends, target } = props;
  const within = (end: number, most: number): boolean =>
    target !== null && Math.abs(target.share - end) < most;
  const anchor = within(0, LEAN) ? "start" : within(1, LEAN) ? "end" : "middle";
  return (
    <svg class="drawn-axis" height="26" width="100%" aria-hidden="true" focusable="false">
      {within(0, ROOM) ? null : (
        <text x={across(0)} y="18" text-anchor="middle">
          {ends[0]}
        </text>
      )}
      {within(1, ROOM) ? null : (
        <text x="100%" y="18" text-anchor="end">
          {ends[1]}
        </text>
      )}
      {target === null ? null : (
        <text
          x={{ start: "0", end: "100%", middle: across(target.share) }[anchor]}
          y="18"
          text-anchor={anchor}
        >
          {target.words}
        </text>
      )}
    </svg>
  );
};

/** One value as it is shown: of a strip, or of old grass. */
export interface Drawn {
  readonly key: string;
  readonly name: string;
  /** Where the number is explained; null where it is explained on the same screen. */
  readonly to: string | null;
  readonly found: MeanFound | null;
  /** Lines under the range; without a number, what stands in its place. */
  readonly beside: readonly string[];
}

/** Range, or why there is none, and samples in words. */
export const useRangeWords = (): ((measure: Measure, found: MeanFound) => string) => {
  const house = useHouse();
  const { common } = house.words.value;
  const words = useWordsOf(SIDE_WORDS);
  const noRange = useNoRange();
  const { habits } = house.settings.value;
  return (measure, { range, n }) => {
    const said = range.ok
      ? common.range(
          valueText(measure, range.value.lower, habits),
          valueText(measure, range.value.upper, habits),
        )
      : noRange(range.problem);
    return `${said}, ${words.samples[measure](n)}`;
  };
};

const One = (props: {
  readonly measure: Measure;
  readonly one: Drawn;
  readonly found: MeanFound;
  readonly series: number;
  readonly end: number;
  readonly target: number | null;
}) => {
  const { measure, one, found, end } = props;
  const { habits } = useHouse().settings.value;
  const rangeWords = useRangeWords();
  const { range } = found;
  return (
    <>
      <span class="drawn-label">
        <span>
          <b>{one.name}</b>
          <small>{rangeWords(measure, found)}</small>
          {one.beside.map((line) => (
            <small key={line}>{line}</small>
          ))}
        </span>
        <span class="drawn-value">
          {valueText(measure, found.value, habits)}
          <small> {shortUnit(measure, habits)}</small>
        </span>
      </span>
      <Bar
        series={props.series}
        found={{
          value: found.value / end,
          range: range.ok ? ok({ lower: range.value.lower / end, upper: range.value.upper / end }) : range,
        }}
        target={props.target}
      />
    </>
  );
};

/** The strips of a day, one below the other, and old grass below them. */
export const Drawing = (props: {
  readonly measure: Measure;
  readonly drawn: readonly Drawn[];
  /** A share of the scale with its words; null for none. */
  readonly target: { readonly share: number; readonly words: string } | null;
}) => {
  const { measure, drawn, target } = props;
  const { habits } = useHouse().settings.value;
  const end = scaleEnd(
    measure,
    drawn.flatMap(({ found }) => found ?? []),
  );
  return (
    <div class="drawing">
      <ul>
        {drawn.map((one, series) => {
          const { key, to, found } = one;
          if (found === null)
            return (
              <li key={key}>
                <p>{`${one.name}: ${one.beside.join(", ")}`}</p>
              </li>
            );
          const shown = { measure, one, found, series, end, target: target?.share ?? null };
          return (
            <li key={key}>
              {to === null ? (
                <div class="drawn">
                  <One {...shown} />
                </div>
              ) : (
                <a class="drawn" href={to}>
                  <One {...shown} />
                </a>
              )}
            </li>
          );
        })}
      </ul>
      <Axis ends={[withUnit(measure, 0, habits), withUnit(measure, end, habits)]} target={target} />
    </div>
  );
};
