/** Strips side by side on one line from 0 to 100 %: value, range and target, told apart without colour. */

import type { Result } from "../../record/result.ts";
import type { CoverFound } from "../../science/ground-cover/field-cover.ts";
import { writeNumber, writePercent } from "../parts/numbers.ts";
import { rangeWords } from "../parts/range-words.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsWith } from "../parts/words-of.ts";
import { FINDINGS_WORDS } from "./words.ts";

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
  readonly found: Pick<CoverFound, "value" | "range">;
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

const Axis = ({ target }: { readonly target: number | null }) => {
  const words = useWordsWith(FINDINGS_WORDS).findings;
  const within = (end: number, most: number): boolean => target !== null && Math.abs(target - end) < most;
  const anchor = within(0, LEAN) ? "start" : within(1, LEAN) ? "end" : "middle";
  const x = target === null ? "0" : { start: "0", end: "100%", middle: across(target) }[anchor];
  return (
    <svg class="drawn-axis" height="26" width="100%" aria-hidden="true" focusable="false">
      {within(0, ROOM) ? null : (
        <text x={across(0)} y="18" text-anchor="middle">
          {words.axis("0")}
        </text>
      )}
      {within(1, ROOM) ? null : (
        <text x="100%" y="18" text-anchor="end">
          {words.axis("100")}
        </text>
      )}
      {target === null ? null : (
        <text x={x} y="18" text-anchor={anchor}>
          {words.target(writeNumber(target * 100, TONGUE, 1))}
        </text>
      )}
    </svg>
  );
};

/** One value as it is shown: of a strip, or of old grass. */
export interface Shown {
  readonly key: string;
  readonly name: string;
  /** Where the number is explained. */
  readonly to: string;
  readonly cover: Result<CoverFound>;
}

/** The strips of a day, one below the other, and old grass below them. */
export const Drawing = (props: { readonly shown: readonly Shown[]; readonly target: number | null }) => {
  const words = useWordsWith(FINDINGS_WORDS);
  const { target } = props;
  return (
    <div class="drawing">
      <ul>
        {props.shown.map(({ key, name, to, cover }, series) => {
          if (!cover.ok)
            return (
              <li key={key}>
                <p>{`${name}: ${words.findings.unfinished}`}</p>
              </li>
            );
          const found = cover.value;
          return (
            <li key={key}>
              <a class="drawn" href={to}>
                <span class="drawn-label">
                  <span>
                    <b>{name}</b>
                    <small>{`${rangeWords(words, found)} · ${words.common.lines(found.n)}`}</small>
                  </span>
                  <span class="drawn-value">
                    {writePercent(found.value, TONGUE)}
                    <small> {words.common.percent}</small>
                  </span>
                </span>
                <Bar series={series} found={found} target={target} />
              </a>
            </li>
          );
        })}
      </ul>
      <Axis target={target} />
    </div>
  );
};
