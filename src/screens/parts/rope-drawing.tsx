/** The rope with its marks, as it lies on the ground: shape says what was met, never colour alone. */
import { useMemo } from "preact/hooks";
import type { Cover, Stance } from "../../record/entry.ts";
import "./rope-drawing.css";

/** What to draw at a mark. */
export interface DrawnMark {
  readonly cover: Cover;
  readonly stance: Stance | null;
  readonly twoAnswers: boolean;
}

const PER_STRAND = 25;
const STRANDS = 4;
const STEP = 14;
const STRAND_HEIGHT = 27;
const WIDTH = PER_STRAND * STEP + 8;

/** The strands that show the next mark: four at most, so that the height never changes while counting. */
const firstStrand = (next: number, marks: number): number => {
  const strands = Math.ceil(marks / PER_STRAND);
  const current = Math.floor((Math.min(next, marks) - 1) / PER_STRAND);
  return Math.max(0, Math.min(current - (STRANDS - 2), strands - STRANDS));
};

const Mark = (props: { readonly x: number; readonly y: number; readonly mark: DrawnMark | undefined }) => {
  const { x, y, mark } = props;
  if (mark === undefined) return <path class="rope-knot" d={`M${x} ${y - 3}v6`} />;
  if (mark.twoAnswers) return <path class="rope-open" d={`M${x - 5} ${y - 6}l10 12m0-12l-10 12`} />;
  switch (mark.cover) {
    case "residue":
      return mark.stance === "standing" ? (
        <path class="rope-residue" d={`M${x - 3.5} ${y + 5}v-14h7v14z`} />
      ) : (
        <path class="rope-residue" d={`M${x - 5.5} ${y - 4.5}h11v9h-11z`} />
      );
    case "bare":
      return <circle class="rope-open" cx={x} cy={y} r="4.5" />;
    case "green":
      return <path class="rope-green" d={`M${x} ${y + 6}c-7-4-6-10 0-13c6 3 7 9 0 13z`} />;
    case "stone":
      return <path class="rope-stone" d={`M${x - 5.5} ${y + 5}l1.5-8 4.5-3 5 4v7z`} />;
    case "own":
      return <path class="rope-open" d={`M${x} ${y - 6}l6 6-6 6-6-6z`} />;
  }
};

interface StrandProps {
  /** The mark before the strand's first. */
  readonly from: number;
  readonly count: number;
  readonly y: number;
  readonly next: number;
  readonly at: (mark: number) => DrawnMark | undefined;
}

const drawStrand = ({ from, count, y, next, at }: StrandProps) => (
  <g>
    <path class="rope-line" d={`M4 ${y}H${4 + count * STEP}`} />
    {Array.from({ length: count }, (_, column) => {
      const number = from + column + 1;
      const x = 4 + column * STEP + STEP / 2;
      return (
        <g key={number}>
          <Mark x={x} y={y} mark={at(number)} />
          {number === next ? <path class="rope-here" d={`M${x - 6} ${y - 18}h12l-6 9z`} /> : null}
        </g>
      );
    })}
  </g>
);

const lookOf = (mark: DrawnMark | undefined): string =>
  mark === undefined ? "-" : `${mark.cover}${mark.stance ?? ""}${mark.twoAnswers ? "?" : ""}`;

/** One strand, drawn anew only when something on it changed: a touch changes one of four. */
const Strand = (props: StrandProps) => {
  const { from, count, y, next, at } = props;
  const marks = Array.from({ length: count }, (_, column) => lookOf(at(from + column + 1)));
  const pointer = next > from && next <= from + count ? next : 0;
  return useMemo(() => drawStrand(props), [`${from} ${y} ${pointer} ${marks.join(" ")}`]);
};

/** The rope from mark 1 on; the pointer stands over the next mark. */
export const RopeDrawing = (props: {
  readonly marks: number;
  readonly next: number;
  readonly at: (mark: number) => DrawnMark | undefined;
}) => {
  const first = firstStrand(props.next, props.marks);
  const strands = Math.max(1, Math.min(STRANDS, Math.ceil(props.marks / PER_STRAND)));
  return (
    <svg
      class="rope"
      viewBox={`0 0 ${WIDTH} ${strands * STRAND_HEIGHT + 8}`}
      aria-hidden="true"
      focusable="false"
    >
      {Array.from({ length: strands }, (_, strand) => {
        const from = (first + strand) * PER_STRAND;
        return (
          <Strand
            key={from}
            from={from}
            count={Math.max(0, Math.min(PER_STRAND, props.marks - from))}
            y={strand * STRAND_HEIGHT + 20}
            next={props.next}
            at={props.at}
          />
        );
      })}
    </svg>
  );
};
