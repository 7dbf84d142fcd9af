/** A small own set of line drawings. They stand only beside words and are hidden from screen readers. */
import type { JSX } from "preact";

const Drawing = (props: { readonly size?: number; readonly children: JSX.Element | JSX.Element[] }) => (
  <svg
    viewBox="0 0 40 40"
    width={props.size ?? 36}
    height={props.size ?? 36}
    fill="none"
    stroke="currentColor"
    stroke-width="3.5"
    stroke-linecap="round"
    stroke-linejoin="round"
    aria-hidden="true"
    focusable="false"
  >
    {props.children}
  </svg>
);

/** Stalks lying across each other. */
export const StalksDrawing = (props: { readonly size?: number }) => (
  <Drawing {...props}>
    <path d="M4 29 36 12M7 13l27 17M14 36 24 5M17 21l6-1" />
  </Drawing>
);

/** Ground with nothing on it. */
export const BareDrawing = (props: { readonly size?: number }) => (
  <Drawing {...props}>
    <path d="M4 26h32M10 33h.5M19 31h.5M28 34h.5M14 19h.5M25 20h.5" />
  </Drawing>
);

/** A seedling with two leaves. */
export const GreenDrawing = (props: { readonly size?: number }) => (
  <Drawing {...props}>
    <path d="M20 36V18M20 20C20 12 14 8 6 8c0 8 5 13 14 12ZM20 24c0-6 5-10 13-10 0 7-5 11-13 10Z" />
  </Drawing>
);

/** An angular stone. */
export const StoneDrawing = (props: { readonly size?: number }) => (
  <Drawing {...props}>
    <path d="M6 29 12 13l12-4 10 9-3 13-16 2ZM12 13l10 8 12-3M22 21l-7 12" />
  </Drawing>
);

/** A tag with nothing written on it yet: the key of one's own. */
export const OwnDrawing = (props: { readonly size?: number }) => (
  <Drawing {...props}>
    <path d="M5 8h17l13 13-13 13L5 20ZM12 14.5h.5" />
  </Drawing>
);

/** A rope with knots over the ground. */
export const LineDrawing = (props: { readonly size?: number }) => (
  <Drawing {...props}>
    <path d="M3 18c6-4 10 4 17 0s11 4 17 0M4 30h32" />
    <circle cx="11" cy="18" r="2.5" fill="currentColor" />
    <circle cx="29" cy="18" r="2.5" fill="currentColor" />
  </Drawing>
);

/** Back to where one came from. */
export const BackDrawing = () => (
  <Drawing size={28}>
    <path d="M25 8 13 20l12 12" />
  </Drawing>
);
