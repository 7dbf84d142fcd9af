/** Depth soaked in against time: points, a line, and axes with their units. Ink on paper, nothing by colour. */
import { inUnit } from "../../../record/units.ts";
import type { SoakPoint } from "../../../science/infiltration/soaking.ts";
import { useHouse } from "../../parts/house.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { RING_WORDS } from "./words.ts";

/** The width of a phone's page; below `NARROW` there is room for fewer numbers. */
const WIDE = 358;
const NARROW = 300;
const LEFT = 44;
const RIGHT = 14;
const TOP = 14;
const BELOW = 30;

/** Steps that people count in. */
const STEPS = [1, 2, 5, 10] as const;

/**
 * The end of an axis and its step, in round numbers.
 *
 * @param most the largest value on it, 0 or more
 * @example
 * axisFor(42, 3) // => { end: 60, step: 20 }
 */
export const axisFor = (most: number, parts: number): { readonly end: number; readonly step: number } => {
  const wanted = Math.max(most, Number.EPSILON) / parts;
  const power = 10 ** Math.floor(Math.log10(wanted));
  const step = power * (STEPS.find((one) => one * power >= wanted * 0.999_999) ?? 10);
  return { end: step * Math.ceil(most / step - 1e-9), step };
};

const ticks = ({ end, step }: { readonly end: number; readonly step: number }): readonly number[] =>
  Array.from({ length: Math.round(end / step) + 1 }, (_, at) => at * step);

export const Curve = (props: {
  readonly points: readonly SoakPoint[];
  readonly highPx: number;
  readonly widePx?: number;
  /** The same in figures, below it. */
  readonly table: boolean;
}) => {
  const { settings, words } = useHouse();
  const ring = useWordsOf(RING_WORDS).curve;
  const unit = settings.value.habits.depthSoaked;
  const high = props.highPx;
  const wide = props.widePx ?? WIDE;
  const [partsAcross, partsUp] = wide < NARROW ? [2, 2] : [4, 3];
  const points = props.points.map(({ atMin, mm }) => ({ atMin, depth: inUnit(mm / 1000, unit) }));
  const across = axisFor(Math.max(10, ...points.map(({ atMin }) => atMin)), partsAcross);
  const up = axisFor(Math.max(unit === "in" ? 0.4 : 10, ...points.map(({ depth }) => depth)), partsUp);
  const x = (atMin: number): number => LEFT + (atMin / across.end) * (wide - LEFT - RIGHT);
  const y = (depth: number): number => high - BELOW - (Math.max(0, depth) / up.end) * (high - BELOW - TOP);
  const path = points.map(({ atMin, depth }) => `${x(atMin).toFixed(1)} ${y(depth).toFixed(1)}`).join("L");
  const last = points.at(-1);
  const number = (value: number): string => writeNumber(value, TONGUE, 2);
  return (
    <>
      <svg
        class="curve"
        viewBox={`0 0 ${wide} ${high}`}
        role="img"
        aria-label={
          last === undefined || points.length < 2
            ? ring.empty
            : ring.says(points.length, `${number(last.depth)} ${unit}`, number(Math.round(last.atMin)))
        }
      >
        {ticks(up).map((depth) => (
          <g key={depth}>
            <path class="curve-grid" d={`M${LEFT} ${y(depth)}H${wide - RIGHT}`} />
            <text class="curve-text end" x={LEFT - 6} y={y(depth) + 5}>
              {number(depth)}
            </text>
          </g>
        ))}
        {ticks(across).map((atMin) => (
          <g key={atMin}>
            <path class="curve-tick" d={`M${x(atMin)} ${high - BELOW}v5`} />
            {atMin === across.end ? null : (
              <text class="curve-text middle" x={x(atMin)} y={high - 9}>
                {number(atMin)}
              </text>
            )}
          </g>
        ))}
        <text class="curve-text end" x={wide} y={high - 9}>
          {`${number(across.end)} min`}
        </text>
        <text class="curve-text" x={LEFT + 5} y={TOP + 2}>
          {unit}
        </text>
        <path class="curve-axis" d={`M${LEFT} ${TOP - 8}V${high - BELOW}H${wide - RIGHT}`} />
        {points.length > 1 ? <path class="curve-line" d={`M${path}`} /> : null}
        {points.map(({ atMin, depth }) => (
          <circle key={atMin} class="curve-point" cx={x(atMin)} cy={y(depth)} r="4" />
        ))}
      </svg>
      {props.table ? (
        <details class="curve-table">
          <summary>{ring.asTable}</summary>
          <table class="figures">
            <thead>
              <tr>
                <th scope="col" class="number">
                  {ring.minutes}
                </th>
                <th scope="col" class="number">
                  {ring.soaked(unit)}
                </th>
              </tr>
            </thead>
            <tbody>
              {points.map(({ atMin, depth }) => (
                <tr key={atMin}>
                  <td class="number">{writeNumber(atMin, words.value.common.tongue, 1)}</td>
                  <td class="number">
                    {writeNumber(depth, words.value.common.tongue, unit === "in" ? 2 : 1)}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      ) : null}
    </>
  );
};
