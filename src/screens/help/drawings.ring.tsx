/** A ring in three pictures, cut through from the side. */
import { Arrow, Ground, HelpDrawing } from "./drawing.tsx";

/** Both walls of the ring, from its rim down to its edge in the ground. */
const Walls = (props: { readonly top: number }) => (
  <path class="ink fill" d={`M84 ${props.top}h10V154L84 146ZM226 ${props.top}h10V146L226 154Z`} />
);

/** A board across the rim, and blows from above. */
const Drive = () => (
  <HelpDrawing>
    <Ground y={112} />
    <Walls top={62} />
    <path class="ink fill" d="M58 48H262V62H58Z" />
    <Arrow from={[160, 6]} to={[160, 42]} />
    <path class="ink fill" d="M196 14H238V36H196Z" />
    <path class="ink" d="M238 25H300" />
  </HelpDrawing>
);

/** A can pours onto leaves; a ruler stands in the water. */
const Pour = () => (
  <HelpDrawing>
    <Ground y={124} />
    <path class="thin" d="M96 76H108M120 76H224" />
    <path class="thin" d="M122 90h18M168 88h20M152 102h16" />
    <Walls top={56} />
    <path class="ink fill" d="M108 40H120V124H108Z" />
    <path class="thin" d="M108 54h7M108 68h7M108 82h7M108 96h7M108 110h7" />
    <path class="ink fill" d="M242 8 300 22 288 62 232 46Z" />
    <path class="ink" d="M236 34 214 22M212 24C200 36 196 60 194 116" />
    <path class="ink" d="M166 120c10-8 26-8 36 0M186 122c8-6 20-6 28-1" />
  </HelpDrawing>
);

/** No water stands any more: the ground glistens. A clock beside it. */
const Gone = () => (
  <HelpDrawing>
    <Ground y={124} />
    <Walls top={70} />
    <path class="ink" d="M122 98v16M114 106h16M164 88v20M154 98h20M202 100v14M195 107h14" />
    <circle class="ink fill" cx="278" cy="46" r="32" />
    <path class="ink" d="M278 26V46L292 56M278 18v-4M306 46h4M278 74v4M250 46h-4" />
  </HelpDrawing>
);

export const RING_DRAWINGS = [Drive, Pour, Gone] as const;
