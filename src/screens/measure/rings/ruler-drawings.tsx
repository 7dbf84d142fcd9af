/** The two ways of reading a ruler in a ring, cut through from the side: own line drawings. */
import type { RulerReads } from "../../../record/ring/entries.ts";

/** Walls of the ring in the ground, and the water in it. */
const RingCut = () => (
  <>
    <path d="M8 84H36M124 84H152" />
    <path d="M40 24V112M120 24V112" stroke-width="5" />
    <path d="M42 52q10-7 19.500 0t19.500 0 19.500 0 17 0" />
    <path d="M44 84H116" stroke-dasharray="3 7" />
  </>
);

/** What is read stands thick; the arrows show from where to where. */
export const RulerDrawing = (props: { readonly reads: RulerReads }) => (
  <svg
    viewBox="0 0 160 120"
    fill="none"
    stroke="currentColor"
    stroke-width="3"
    stroke-linecap="round"
    stroke-linejoin="round"
    aria-hidden="true"
    focusable="false"
  >
    <RingCut />
    {props.reads === "water-depth" ? (
      <>
        <path d="M74 84V14H92V84" stroke-width="2.5" />
        <path d="M92 76H86M92 66H82M92 56H86M92 46H82M92 36H86M92 26H82" stroke-width="2.5" />
        <path d="M60 56V82M54 63 60 55 66 63M54 75 60 83 66 75" />
      </>
    ) : (
      <>
        <path d="M34 20H126" stroke-width="4" />
        <path d="M74 52V8H92V52" stroke-width="2.5" />
        <path d="M92 46H86M92 38H82M92 30H86M92 14H82" stroke-width="2.5" />
        <path d="M60 26V48M54 32 60 24 66 32M54 42 60 50 66 42" />
      </>
    )}
  </svg>
);
