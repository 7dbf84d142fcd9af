/** The lowest place of a function of one variable between two bounds: no start value, same answer every time. */

/** Golden section: (3 − √5)/2. */
const GOLDEN = (3 - Math.sqrt(5)) / 2;
const MOST_STEPS = 80;

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Lowest place so far, the second lowest, and the one before it. */
type Three = readonly [best: Place, second: Place, third: Place];

/** From the best place to the bottom of the parabola through all three; not a number when there is none. */
const toParabola = ([best, second, third]: Three): number => {
  const r = (best.x - second.x) * (best.y - third.y);
  const q = (best.x - third.x) * (best.y - second.y);
  const top = (best.x - third.x) * q - (best.x - second.x) * r;
  const under = 2 * (q - r);
  return under === 0 ? Number.NaN : -top / under;
};

const withNew = ([best, second, third]: Three, place: Place): Three => {
  if (place.y <= best.y) return [place, best, second];
  if (place.y <= second.y || second.x === best.x) return [best, place, second];
  if (place.y <= third.y || third.x === best.x || third.x === second.x) return [best, second, place];
  return [best, second, third];
};

/**
 * The lowest place of one valley, by parabolas through three points and golden sections where these fail.
 *
 * Source: Brent 1973, Algorithms for Minimization without Derivatives, chapter 5 (from memory).
 */
const lowestInValley = (
  objective: (x: number) => number,
  from: number,
  to: number,
  tolerance: number,
): Place => {
  let low = from;
  let high = to;
  const begin = low + GOLDEN * (high - low);
  const first: Place = { x: begin, y: objective(begin) };
  let three: Three = [first, first, first];
  let step = 0;
  let before = 0;
  for (let turn = 0; turn < MOST_STEPS; turn++) {
    const [best] = three;
    const middle = (low + high) / 2;
    if (Math.abs(best.x - middle) <= 2 * tolerance - (high - low) / 2) break;
    const parabola = toParabola(three);
    const inside = best.x + parabola > low && best.x + parabola < high;
    if (inside && Math.abs(parabola) < Math.abs(before) / 2) {
      before = step;
      step = parabola;
    } else {
      before = best.x < middle ? high - best.x : low - best.x;
      step = GOLDEN * before;
    }
    const x = best.x + Math.sign(step) * Math.max(Math.abs(step), tolerance);
    const place: Place = { x, y: objective(x) };
    // What lies behind the worse of the two is no longer looked at.
    const [edge, inner] = place.y <= best.y ? [best.x, x] : [x, best.x];
    if (edge < inner) low = edge;
    else high = edge;
    three = withNew(three, place);
  }
  return three[0];
};

/**
 * The lowest place between two bounds. The whole span is looked over in even steps, then the valley around
 * each place that is lower than its neighbours is searched; the lowest of all is the answer.
 *
 * @param objective finite between the bounds
 * @param steps how many; a valley narrower than one of them can be missed
 *
 * @example
 * boundedMinimum((x) => (x - 2) ** 2, 0, 10, 50) // => ≈ 2.0000
 */
export const boundedMinimum = (
  objective: (x: number) => number,
  from: number,
  to: number,
  steps: number,
): number => {
  const at = (step: number): number => from + ((to - from) * step) / steps;
  const seen = Array.from({ length: steps + 1 }, (_, step) => objective(at(step)));
  const tolerance = 1e-9 * (to - from);
  let best = from;
  let lowest = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= steps; step++) {
    const here = seen[step] ?? Number.POSITIVE_INFINITY;
    const left = seen[step - 1] ?? Number.POSITIVE_INFINITY;
    const right = seen[step + 1] ?? Number.POSITIVE_INFINITY;
    if (here > left || here > right) continue;
    if (here < lowest) {
      lowest = here;
      best = at(step);
    }
    const { x, y } = lowestInValley(
      objective,
      at(Math.max(0, step - 1)),
      at(Math.min(steps, step + 1)),
      tolerance,
    );
    if (y < lowest) {
      lowest = y;
      best = x;
    }
  }
  return best;
};
