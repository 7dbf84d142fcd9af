/** A line in three pictures. */
import { Ground, HelpDrawing } from "./drawing.tsx";

const ROWS = [40, 88, 136, 184, 232, 280] as const;
const KNOTS = [0, 1, 2, 3, 4, 5, 6, 7] as const;

/** From above: rows, and a rope across them between two pegs. */
const Lay = () => (
  <HelpDrawing>
    {ROWS.map((x) => (
      <path key={x} class="thin dashed" d={`M${x} 10V170`} />
    ))}
    <path class="ink" d="M22 150 298 30" />
    {KNOTS.map((knot) => (
      <circle key={knot} class="solid" cx={48 + knot * 32} cy={138.7 - knot * 13.9} r="5" />
    ))}
    <path class="ink fill" d="M14 154l10-12 6 14-10 12ZM290 26l10-12 6 14-10 12Z" />
  </HelpDrawing>
);

/** From the side: an eye, a drop, and the stalk that it meets before the ground. */
const Look = () => (
  <HelpDrawing>
    <path class="ink" d="M128 28c16-18 48-18 64 0-16 18-48 18-64 0Z" />
    <circle class="solid" cx="160" cy="28" r="7" />
    <path class="thin dashed" d="M160 48V70M160 104V118" />
    <path class="ink fill" d="M160 70c8 12 12 17 12 23a12 12 0 0 1-24 0c0-6 4-11 12-23Z" />
    <path class="wide" d="M96 148 232 112" />
    <path class="wide inside" d="M98 147.500 230 112.500" />
    <circle class="solid" cx="160" cy="127" r="4" />
    <path class="ink" d="M14 96H140M180 96H306" />
    <circle class="solid" cx="64" cy="96" r="5" />
    <circle class="solid" cx="256" cy="96" r="5" />
    <Ground y={152} />
  </HelpDrawing>
);

/** Three marks, and what is called at each: straw, nothing, a leaf. */
const Call = () => (
  <HelpDrawing>
    <path class="ink" d="M10 40H310" />
    {[60, 160, 260].map((x) => (
      <g key={x}>
        <circle class="solid" cx={x} cy="40" r="6" />
        <path class="thin dashed" d={`M${x} 50V80`} />
        <rect class="ink" x={x - 42} y="84" width="84" height="84" rx="4" />
      </g>
    ))}
    <path class="ink" d="M30 146 90 104M32 110l54 38M48 158l26-64" />
    <path class="ink" d="M130 144H190" />
    <path class="thin" d="M140 154h6M160 156h6M178 153h6" />
    <path
      class="ink"
      d="M260 156V122M260 126c0-14-10-21-26-21 0 15 9 23 26 21ZM260 134c0-11 9-18 24-18 0 13-8 20-24 18Z"
    />
  </HelpDrawing>
);

export const LINE_DRAWINGS = [Lay, Look, Call] as const;
