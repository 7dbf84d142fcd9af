/** What all pictures of help share. They are ink on paper; the words under each say the same. */
import type { ComponentChildren } from "preact";

export const HelpDrawing = (props: { readonly children: ComponentChildren }) => (
  <svg class="help-drawing" viewBox="0 0 320 180" aria-hidden="true" focusable="false">
    {props.children}
  </svg>
);

/** The surface of the ground, and a few crumbs below it. */
export const Ground = (props: { readonly y: number }) => (
  <g>
    <path class="ink" d={`M8 ${props.y}H312`} />
    <path
      class="thin"
      d={`M26 ${props.y + 20}h9M66 ${props.y + 12}h7M118 ${props.y + 24}h9M164 ${props.y + 14}h8M226 ${props.y + 22}h9M284 ${props.y + 13}h8`}
    />
  </g>
);

/** An arrow along a straight line, its head at the end. */
export const Arrow = (props: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}) => {
  const [x1, y1] = props.from;
  const [x2, y2] = props.to;
  const turn = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  return (
    <g>
      <path class="ink" d={`M${x1} ${y1}L${x2} ${y2}`} />
      <path class="solid" d="M3 0-10-5.500-10 5.500Z" transform={`translate(${x2} ${y2}) rotate(${turn})`} />
    </g>
  );
};
