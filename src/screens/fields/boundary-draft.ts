/** A boundary that is being made: its corners so far, every step of which can be taken back. */
import type { Json } from "../../record/canonical.ts";
import type { RecordId } from "../../record/ids.ts";
import type { Result } from "../../record/result.ts";
import { type Boundary, boundaryOf } from "../../science/position/boundary.ts";
import { type LatitudeLongitude, roughDistanceM } from "../../science/position/distance.ts";
import type { MetaKey } from "../../store/meta.ts";

/** A corner, walked or touched. Types and not interfaces: they are kept as plain JSON. */
export type Corner = {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** What the device said, null when touched on the map. */
  readonly accuracyM: number | null;
  /** When the person was there; null when touched. */
  readonly atMs: number | null;
};

type Step =
  | { readonly do: "add"; readonly at: number; readonly corner: Corner }
  | { readonly do: "move"; readonly at: number; readonly corner: Corner }
  | { readonly do: "remove"; readonly at: number };

/** How the next corners come. */
export type BoundaryWay = "walk" | "touch";

/** The corners that stood there at first, and the steps since; those behind `done` were taken back. */
export type BoundaryDraft = {
  readonly way: BoundaryWay;
  readonly base: readonly Corner[];
  readonly steps: readonly Step[];
  readonly done: number;
};

const isDraft = (stored: Json): stored is BoundaryDraft & Json =>
  typeof stored === "object" &&
  stored !== null &&
  !Array.isArray(stored) &&
  "base" in stored &&
  "steps" in stored &&
  "done" in stored;

/** Where the corners so far are kept. They are written down at once: nobody walks an edge twice. */
export const draftKey = (field: RecordId<"field">): MetaKey<BoundaryDraft> => ({
  name: `boundary ${field}`,
  durability: "strict",
  read: (stored) => (isDraft(stored) ? stored : undefined),
});

/** A position that is worse than this makes no corner by itself, in metres (own choice, no source). */
export const COARSE_CORNER_M = 30;
/** Corners of a walk lie at least so far apart, in metres, and farther where the position is worse (own choice). */
const APART_M = { least: 4, most: 10 } as const;
/** As near to the first corner, the walk is round, in metres (own choice, no source). */
const ROUND_M = 15;
/** So far past the first corner a walk may run on before it ends, in metres (own choice, no source). */
const OVERLAP_M = 25;
/** A piece without a position for so long was not seen, in milliseconds (own choice, no source). */
const UNSEEN_MS = 60_000;
/** What a record keeps at most. */
export const MOST_CORNERS = 20_000;

/** Begins a draft; with corners to correct an edge that stands already. */
export const newDraft = (way: BoundaryWay, base: readonly LatitudeLongitude[]): BoundaryDraft => ({
  way,
  base: base.map(({ latitudeDeg, longitudeDeg }) => ({
    latitudeDeg,
    longitudeDeg,
    accuracyM: null,
    atMs: null,
  })),
  steps: [],
  done: 0,
});

/** The corners as they stand now. */
export const cornersOf = ({ base, steps, done }: BoundaryDraft): readonly Corner[] => {
  const corners = [...base];
  for (const step of steps.slice(0, done)) {
    if (step.do === "add") corners.splice(step.at, 0, step.corner);
    else if (step.do === "move") corners.splice(step.at, 1, step.corner);
    else corners.splice(step.at, 1);
  }
  return corners;
};

const stepped = (draft: BoundaryDraft, step: Step): BoundaryDraft => ({
  ...draft,
  steps: [...draft.steps.slice(0, draft.done), step],
  done: draft.done + 1,
});

/** Adds a corner before the one with this number (from 0); at the end when left out. */
export const withCorner = (
  draft: BoundaryDraft,
  corner: Corner,
  at = cornersOf(draft).length,
): BoundaryDraft =>
  cornersOf(draft).length >= MOST_CORNERS ? draft : stepped(draft, { do: "add", at, corner });

export const movedCorner = (draft: BoundaryDraft, at: number, corner: Corner): BoundaryDraft =>
  at < cornersOf(draft).length ? stepped(draft, { do: "move", at, corner }) : draft;

export const withoutCorner = (draft: BoundaryDraft, at: number): BoundaryDraft =>
  at < cornersOf(draft).length ? stepped(draft, { do: "remove", at }) : draft;

export const undone = (draft: BoundaryDraft): BoundaryDraft => ({
  ...draft,
  done: Math.max(0, draft.done - 1),
});

export const redone = (draft: BoundaryDraft): BoundaryDraft => ({
  ...draft,
  done: Math.min(draft.steps.length, draft.done + 1),
});

/** How far from the last corner the next one is taken, in metres: nobody stands so still that a phone believes it. */
export const apartFor = (accuracyM: number): number =>
  Math.min(APART_M.most, Math.max(APART_M.least, accuracyM));

/**
 * What becomes of a position on a walk: `taken` as a corner, left out because one is `standing` still, or
 * because it is too `coarse`.
 *
 * @example
 * walked(null, { latitudeDeg: 52, longitudeDeg: 5, accuracyM: 200, atMs: 0 }) // => "coarse"
 */
export const walked = (
  last: Corner | null,
  fix: Corner & { readonly accuracyM: number },
): "taken" | "standing" | "coarse" => {
  if (fix.accuracyM > COARSE_CORNER_M) return "coarse";
  if (last === null) return "taken";
  return roughDistanceM(last, fix) < apartFor(fix.accuracyM) ? "standing" : "taken";
};

/** Whether a walk has come back to its first corner. */
export const isRound = (corners: readonly Corner[], here: LatitudeLongitude): boolean => {
  const [first] = corners;
  return first !== undefined && corners.length > 5 && roughDistanceM(first, here) <= ROUND_M;
};

/** Corners that were taken where the position was coarse. */
export const coarseCorners = (corners: readonly Corner[]): readonly Corner[] =>
  corners.filter(({ accuracyM }) => accuracyM !== null && accuracyM > COARSE_CORNER_M);

/** Pieces walked without a position: numbers of the corners before and after, from 1. */
export const unseenPieces = (corners: readonly Corner[]): readonly (readonly [number, number])[] =>
  corners.flatMap((corner, at) => {
    const before = corners[at - 1];
    if (before === undefined || before.atMs === null || corner.atMs === null) return [];
    return Math.abs(corner.atMs - before.atMs) > UNSEEN_MS &&
      roughDistanceM(before, corner) > 2 * APART_M.most
      ? [[at, at + 1] as const]
      : [];
  });

/** A closed edge, and how many of the last corners were left out for it. */
export interface ClosedEdge {
  readonly boundary: Result<Boundary>;
  readonly corners: readonly Corner[];
  readonly leftOut: number;
}

/**
 * Closes an edge. Whoever walks round goes on a little past the first corner, and the end would cross the
 * beginning: those last corners are left out as long as they lie near the first one.
 *
 * @param corners in the order walked or touched
 * @returns the boundary, or why it is none; corners in the order given
 */
export const closedEdge = (corners: readonly Corner[]): ClosedEdge => {
  const [first] = corners;
  const whole = boundaryOf(corners);
  let shorter = corners;
  let tried = whole;
  while (!tried.ok && tried.problem.code === "science/boundary-crosses-itself" && shorter.length > 4) {
    const last = shorter.at(-1);
    if (last?.atMs == null || first === undefined || roughDistanceM(first, last) > OVERLAP_M) break;
    shorter = shorter.slice(0, -1);
    tried = boundaryOf(shorter);
  }
  return tried.ok
    ? { boundary: tried, corners: shorter, leftOut: corners.length - shorter.length }
    : { boundary: whole, corners, leftOut: 0 };
};

/** The two sides that cross, by the corner that each leads to, from 0; none when the edge is sound. */
export const crossingSides = (boundary: Result<Boundary>): readonly number[] => {
  if (boundary.ok || boundary.problem.code !== "science/boundary-crosses-itself") return [];
  const { first, second } = boundary.problem.facts;
  return [Number(first) - 1, Number(second) - 1];
};
