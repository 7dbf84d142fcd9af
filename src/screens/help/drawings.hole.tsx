/** A spade hole in three pictures. */
import { Arrow, HelpDrawing } from "./drawing.tsx";

const STRAW = "M52 66 108 40M58 42l44 34M70 84l24-50M112 92 140 60M60 106l52-18M120 44l20 30";

/** From above: the square, its mulch lifted off onto a tray. */
const Mulch = () => (
  <HelpDrawing>
    <rect class="ink" x="30" y="28" width="124" height="124" />
    <path class="thin dashed" d="M42 40H142V140H42Z" />
    <path class="thin" d="M64 64h8M96 54h8M120 84h8M70 108h9M104 124h8M128 118h7" />
    <Arrow from={[160, 72]} to={[188, 72]} />
    <path class="ink fill" d="M200 44H300L292 140H208Z" />
    <g transform="translate(150 18)">
      <path class="ink" d={STRAW} />
    </g>
  </HelpDrawing>
);

/** Cut through: a square hole, the spade beside it, the block on a sheet. */
const Dig = () => (
  <HelpDrawing>
    <path class="ink" d="M8 72H64V150H146V72H200" />
    <path class="thin dashed" d="M64 72H146" />
    <path class="thin" d="M20 96h8M44 122h8M24 144h8M164 98h8M180 128h8" />
    <path class="wide" d="M56 8V84" />
    <path class="ink" d="M42 8H70" />
    <path class="ink fill" d="M44 84H68V122C68 134 60 138 56 142 52 138 44 134 44 122Z" />
    <Arrow from={[118, 132]} to={[206, 50]} />
    <path class="ink fill" d="M222 82H288V138H222Z" />
    <path class="thin" d="M234 98h8M258 92h8M244 118h8M268 112h8M234 130h7" />
    <path class="ink" d="M206 142C222 150 290 150 306 142" />
  </HelpDrawing>
);

/** A grown worm with its saddle, a young one without, and the pot. */
const Sort = () => (
  <HelpDrawing>
    <path class="worm" d="M24 60c20-38 46-38 66-8s44 30 62-2" />
    <path class="worm inside" d="M24 60c20-38 46-38 66-8s44 30 62-2" />
    <path class="saddle" d="M80 38.500c4 4 7 9 10 13.500 4 6 8 10 12 13" />
    <path class="worm young" d="M34 136c12-22 28-22 40-5s26 17 38-3" />
    <path class="worm young inside" d="M34 136c12-22 28-22 40-5s26 17 38-3" />
    <Arrow from={[164, 92]} to={[196, 92]} />
    <path class="ink fill" d="M208 62H306L294 160H220Z" />
    <path class="ink" d="M200 62H314" />
    <path
      class="ink"
      d="M228 92c8-12 16-12 24 0s16 12 24 0M238 122c8-12 16-12 24 0s12 10 18 0M234 146c6-8 12-8 18 0"
    />
  </HelpDrawing>
);

export const HOLE_DRAWINGS = [Mulch, Dig, Sort] as const;
