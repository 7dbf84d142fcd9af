/** What happened to a ring, and which stretches of its readings do not count because of it. */
import type { HappeningRead, RingEvent } from "../../record/ring/events.ts";
import type { LeftOut, PieceAt } from "./pieces.ts";

/** Times at which things happened, by what happened; each list rises. */
const timesOf = (happenings: readonly HappeningRead[], what: HappeningRead["what"]): number[] =>
  happenings
    .filter((one) => one.what === what)
    .map(({ moment }) => moment.sinceStartMs)
    .sort((a, b) => a - b);

interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
}

/** Rain from when it began until it ended; rain that ended without having begun fell from the beginning. */
const rainIn = (happenings: readonly HappeningRead[]): Stretch[] => {
  const stretches: Stretch[] = [];
  let fromMs: number | null = null;
  let rained = false;
  for (const { what, moment } of happenings) {
    if (what === "rain-began") fromMs ??= moment.sinceStartMs;
    else if (what === "rain-ended" && (fromMs !== null || !rained)) {
      stretches.push({ fromMs: fromMs ?? Number.NEGATIVE_INFINITY, toMs: moment.sinceStartMs });
      fromMs = null;
    } else continue;
    rained = true;
  }
  if (fromMs !== null) stretches.push({ fromMs, toMs: Number.POSITIVE_INFINITY });
  return stretches;
};

/** From when the ring ran dry until water is in it again. */
const dryIn = (dryMs: readonly number[], events: readonly RingEvent[]): Stretch[] =>
  dryMs.map((fromMs) => {
    const water = events.find(
      (event) =>
        event.moment.sinceStartMs >= fromMs &&
        (event.type === "pour" || (event.type === "level" && event.afterRefill)),
    );
    return { fromMs, toMs: water?.moment.sinceStartMs ?? Number.POSITIVE_INFINITY };
  });

const overlaps = (piece: PieceAt, stretch: Stretch): boolean =>
  piece.fromMs < stretch.toMs && piece.toMs > stretch.fromMs;

const holds = (piece: PieceAt, ms: number): boolean => piece.fromMs < ms && ms <= piece.toMs;

/**
 * Marks the pieces that do not count. After a leak or a move nothing counts, what came before does. Rain and a
 * dry ring leave out what they overlap; a bump and a late topping the stretch that they fell into. Without
 * water left, a ring that is kept at one level can say nothing more. A burrow and a crack leave out nothing.
 *
 * @param pieces in order of time
 * @param happenings in order of time
 * @param events of the same ring, in order of time
 * @param topped the ring is read by the water poured in
 */
export const withHappenings = (
  pieces: readonly PieceAt[],
  happenings: readonly HappeningRead[],
  events: readonly RingEvent[],
  topped: boolean,
): readonly PieceAt[] => {
  const [leakMs] = timesOf(happenings, "leaked");
  const [movedMs] = timesOf(happenings, "moved");
  const [noWaterMs] = timesOf(happenings, "no-water-left");
  const rain = rainIn(happenings);
  const dry = dryIn(timesOf(happenings, "ran-dry"), events);
  const bumps = timesOf(happenings, "bumped");
  // The stretch before the water came is the one that went on too long.
  const late = timesOf(happenings, "topped-up-late").map((ms) =>
    pieces.findLast(({ kind, fromMs }) => kind === "soak" && fromMs < ms),
  );
  const reasonFor = (piece: PieceAt): LeftOut | null => {
    if (leakMs !== undefined && piece.toMs > leakMs) return "leaked";
    if (movedMs !== undefined && piece.toMs > movedMs) return "moved";
    if (rain.some((stretch) => overlaps(piece, stretch))) return "rain";
    if (piece.leftOut !== null || piece.kind !== "soak") return piece.leftOut;
    if (dry.some((stretch) => overlaps(piece, stretch))) return "ran-dry";
    if (topped && noWaterMs !== undefined && piece.toMs > noWaterMs) return "no-water-left";
    if (bumps.some((ms) => holds(piece, ms))) return "bumped";
    return late.includes(piece) ? "topped-up-late" : null;
  };
  return pieces.map((piece) => ({ ...piece, leftOut: reasonFor(piece) }));
};
