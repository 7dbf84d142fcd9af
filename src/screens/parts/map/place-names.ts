/** Where names are written on a map, so that none lies on another one or on a sign. */

/** A rectangle by its middle, in pixels. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A name that is to be written. */
export interface NameToPlace extends Box {
  /** It belongs to a sign at this place and is written close beside it; else it stands for the ground around. */
  readonly beside: boolean;
}

/** A sign as it is seen, in pixels. */
export const SIGN_PX = 28;
/** Between two things that are told apart at arm's length (own choice, no source). */
const GAP_PX = 3;
/** A name farther from its ground than this is left out (own choice, no source). */
const FARTHEST_PX = 80;
const STEP_PX = 11;

const meet = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 + GAP_PX &&
  Math.abs(a.y - b.y) < (a.height + b.height) / 2 + GAP_PX;

const holds = (whole: Box, part: Box): boolean =>
  Math.abs(whole.x - part.x) <= (whole.width - part.width) / 2 &&
  Math.abs(whole.y - part.y) <= (whole.height - part.height) / 2;

type Shift = readonly [x: number, y: number];

/** Ever farther from the ground that it names, by the gap between the two. */
const around = ({ width, height }: Box): readonly Shift[] => {
  const gap = (x: number, y: number): number =>
    Math.hypot(Math.max(0, Math.abs(x) - width / 2), Math.max(0, Math.abs(y) - height / 2));
  const steps = (half: number): number[] => {
    const count = Math.ceil((half + FARTHEST_PX) / STEP_PX);
    return Array.from({ length: 2 * count + 1 }, (_, at) => (at - count) * STEP_PX);
  };
  return steps(width / 2)
    .flatMap((x) => steps(height / 2).map((y) => ({ x, y, gap: gap(x, y), middle: Math.hypot(x, y) })))
    .filter((one) => one.gap <= FARTHEST_PX)
    .sort((a, b) => a.gap - b.gap || a.middle - b.middle)
    .map(({ x, y }) => [x, y]);
};

/** Below its sign, above, right and left of it. */
const besides = ({ width, height }: Box): readonly Shift[] => {
  const down = (SIGN_PX + height) / 2 + GAP_PX;
  const aside = (SIGN_PX + width) / 2 + GAP_PX;
  return [
    [0, down],
    [0, -down],
    [aside, 0],
    [-aside, 0],
  ];
};

/**
 * Finds room for names, the first of them first.
 *
 * @param names with the place that each belongs to
 * @param signs the middles of what they must not cover
 * @param within what is in sight: a name whose own place is in sight stays in it as a whole
 * @returns for each name how far from its place it is written, in pixels; null where there is no room for it
 */
export const placeNames = (
  names: readonly NameToPlace[],
  signs: readonly Pick<Box, "x" | "y">[],
  within: Box,
): readonly (Shift | null)[] => {
  const taken: Box[] = signs.map(({ x, y }) => ({ x, y, width: SIGN_PX, height: SIGN_PX }));
  return names.map((name) => {
    const inSight = holds(within, { ...name, width: 0, height: 0 });
    const shift = (name.beside ? besides(name) : around(name)).find(([x, y]) => {
      const box = { ...name, x: name.x + x, y: name.y + y };
      return !(inSight && !holds(within, box)) && !taken.some((other) => meet(box, other));
    });
    if (shift === undefined) return null;
    taken.push({ ...name, x: name.x + shift[0], y: name.y + shift[1] });
    return shift;
  });
};
