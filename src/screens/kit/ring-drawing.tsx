/** Where a ring is measured: seen from above, and cut through from the side. The numbers are those of the form. */
const Head = (props: { readonly x: number; readonly y: number; readonly turn: number }) => (
  <path
    class="measure-head"
    d="M0 0-9-4.5-9 4.5Z"
    transform={`translate(${props.x} ${props.y}) rotate(${props.turn})`}
  />
);

/** From edge to edge, with a head at both ends. */
const Measure = (props: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}) => {
  const [x1, y1] = props.from;
  const [x2, y2] = props.to;
  const turn = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  return (
    <g>
      <path class="measure-line" d={`M${x1} ${y1}L${x2} ${y2}`} />
      <Head x={x1} y={y1} turn={turn + 180} />
      <Head x={x2} y={y2} turn={turn} />
    </g>
  );
};

const Digit = (props: { readonly x: number; readonly y: number; readonly children: string }) => (
  <g>
    <circle class="measure-digit" cx={props.x} cy={props.y} r="11" />
    <text class="measure-number" x={props.x} y={props.y + 5.5}>
      {props.children}
    </text>
  </g>
);

/** The drawing; the lines of the form say the same in words. */
export const RingDrawing = () => (
  <svg class="ring-drawing" viewBox="0 0 340 188" aria-hidden="true" focusable="false">
    <circle class="ring-wall" cx="86" cy="84" r="70" />
    <circle class="ring-inside" cx="86" cy="84" r="60" />
    <Measure from={[26, 84]} to={[146, 84]} />
    <Measure from={[86, 24]} to={[86, 144]} />
    <Digit x={54} y={84}>
      1
    </Digit>
    <Digit x={86} y={54}>
      2
    </Digit>
    <path class="measure-lead" d="M16 100V176M156 100V176" />
    <Measure from={[16, 170]} to={[156, 170]} />
    <Digit x={86} y={170}>
      4
    </Digit>
    <path class="ring-ground" d="M182 110H334" />
    <path class="ring-wall" d="M204 46h9v98h-9ZM303 46h9v98h-9Z" />
    <path class="ring-rim" d="M213 46H303" />
    <Measure from={[258, 46]} to={[258, 144]} />
    <path class="measure-lead" d="M213 144H303" />
    <Digit x={258} y={92}>
      3
    </Digit>
  </svg>
);
