/** Worms as a hand sees them, drawn with few strokes. They stand only beside words. */
import type { ComponentChildren, ComponentType } from "preact";
import type { WormGroup } from "../../../record/hole/entries.ts";

type Strokes = { readonly size?: number };

const Drawing = (props: Strokes & { readonly children: ComponentChildren }) => (
  <svg
    viewBox="0 0 56 40"
    width={((props.size ?? 36) * 56) / 40}
    height={props.size ?? 36}
    fill="none"
    stroke="currentColor"
    stroke-width="2"
    stroke-linecap="round"
    stroke-linejoin="round"
    aria-hidden="true"
    focusable="false"
  >
    {props.children}
  </svg>
);

/** The body in outline, and the saddle as a dark band around it. */
const Body = (props: { readonly d: string; readonly saddle?: string; readonly inside?: string }) => (
  <>
    <path d={props.d} stroke-width="8" />
    <path d={props.d} stroke={props.inside ?? "var(--paper)"} stroke-width="4" />
    {props.saddle === undefined ? null : <path d={props.saddle} stroke-width="7" stroke-linecap="butt" />}
  </>
);

/** A worm with a head, for the key that counts. */
export const WormDrawing = (props: Strokes) => (
  <Drawing {...props}>
    <Body
      d="M6 26c6-13 13-13 19-2s13 9 19-2l5-8"
      saddle="M26.500 26.200c1.700 2.300 3.500 3.600 5.500 4"
      inside="var(--straw)"
    />
  </Drawing>
);

/** Young: small and thin, one even line without a saddle. */
const YoungDrawing = (props: Strokes) => (
  <Drawing {...props}>
    <path d="M13 25c4-8 9-8 13-2s9 6 12-1l4-6" stroke-width="5.500" />
    <path d="M13 25c4-8 9-8 13-2s9 6 12-1l4-6" stroke="var(--paper)" stroke-width="2" />
  </Drawing>
);

/** Grown, at the surface: under straw, on top of the ground. */
const SurfaceDrawing = (props: Strokes) => (
  <Drawing {...props}>
    <path d="M2 38h52M6 8l20 6M21 3l-9 14M33 5l17 8M47 3l-9 13" />
    <Body d="M9 30c6-6 11 2 17-1s11-3 20-2" saddle="M20 28.800c2.500.600 4.500.700 6.500 0" />
  </Drawing>
);

/** Grown, in the topsoil: curled beneath the surface. */
const TopsoilDrawing = (props: Strokes) => (
  <Drawing {...props}>
    <path d="M2 3h52" />
    <Body
      d="M43 12c-9-3-26-3-26 9 0 13 22 15 24 6 1-5-7-8-11-4"
      saddle="M18 17.500c-.900 1.800-1.200 4-.500 6.500"
    />
  </Drawing>
);

/** Grown, a deep burrower: upright in a shaft that opens at the surface. */
const DeepDrawing = (props: Strokes) => (
  <Drawing {...props}>
    <path d="M2 10h16v28M54 10H38v28" />
    <Body d="M28 5v29" saddle="M28 12v7" />
  </Drawing>
);

export const GROUP_DRAWINGS: Readonly<Record<WormGroup, ComponentType<Strokes>>> = {
  young: YoungDrawing,
  surface: SurfaceDrawing,
  topsoil: TopsoilDrawing,
  deep: DeepDrawing,
};
