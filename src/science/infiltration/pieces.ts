/** Stretches of time with what soaked in during each: what every way to read a ring is turned into. */

/** Why a stretch does not count. */
export type LeftOut =
  | "leaked"
  | "moved"
  | "rain"
  | "ran-dry"
  | "bumped"
  | "no-water-left"
  | "topped-up-late"
  | "level-rose"
  | "refill-unseen"
  | "levels-unlike"
  | "dry";

/** From one reading to the next. */
export interface SoakPiece {
  /** Minutes since water was first in the ring. */
  readonly fromMin: number;
  readonly toMin: number;
  /** Depth soaked in; of a stretch that does not count, what the readings would say. */
  readonly mm: number;
  /** Water soaking in; the short while of a refill, during which nothing is read; a ring without water. */
  readonly kind: "soak" | "refill" | "dry";
  /** The first pour, on soil that was not wet yet. */
  readonly wetting: boolean;
  /** How many steps of the ruler the drop has; null where measured water says how much soaked in. */
  readonly steps: number | null;
  readonly leftOut: LeftOut | null;
}

/** Pieces put one behind the other, with times as they were read. */
export interface PieceAt extends Omit<SoakPiece, "fromMin" | "toMin"> {
  readonly fromMs: number;
  readonly toMs: number;
}

/** What one way to read makes of the readings. */
export interface Pieces {
  readonly pieces: readonly PieceAt[];
  /** When water was first in the ring; null when nothing could be used. */
  readonly zeroMs: number | null;
  /** Readings used. */
  readonly readings: number;
  /** Levels went against the way the ruler is said to be read. */
  readonly wrongWay: boolean;
}

/** Nothing that can be used. */
export const NO_PIECES: Pieces = { pieces: [], zeroMs: null, readings: 0, wrongWay: false };

/** Rate of a piece in millimetres an hour. A piece always has a length. */
export const rateOf = ({ fromMin, toMin, mm }: Pick<SoakPiece, "fromMin" | "toMin" | "mm">): number =>
  (60 * mm) / (toMin - fromMin);

/**
 * Collects pieces. Two readings of one moment make no piece: what they differ by goes into the next one, and
 * so does the reason when it does not count.
 */
export const pieceList = () => {
  const pieces: PieceAt[] = [];
  let carriedMm = 0;
  let carriedReason: LeftOut | null = null;
  const add = (piece: PieceAt): void => {
    if (piece.toMs > piece.fromMs) {
      pieces.push({ ...piece, mm: piece.mm + carriedMm, leftOut: piece.leftOut ?? carriedReason });
      carriedMm = 0;
      carriedReason = null;
    } else if (piece.leftOut === null) carriedMm += piece.mm;
    else carriedReason ??= piece.leftOut;
  };
  return { pieces, add };
};
