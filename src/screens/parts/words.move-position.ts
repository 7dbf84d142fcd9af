/** Words of a position that is moved by hand. */
import type { WayToGo } from "./move-position-model.ts";
import type { WordsOf } from "./words-of.ts";

const english = () => ({
  move: {
    open: { at: "Move the position", start: "Move the start", end: "Move the end" },
    put: { at: "Put a position by hand", start: "Put the start by hand", end: "Put the end by hand" },
    title: "Move the position by hand",
    kept: "What was measured stays on record.",
    stepSize: "One step",
    step: {
      north: (length: string) => `${length} north`,
      south: (length: string) => `${length} south`,
      east: (length: string) => `${length} east`,
      west: (length: string) => `${length} west`,
    } satisfies Record<WayToGo, (length: string) => string>,
    at: (latitude: string, longitude: string) => `${latitude}, ${longitude}`,
    none: "No position yet.",
    moved: (length: string) => `Moved by hand, ${length} from where it was measured.`,
    byHand: "Put there by hand.",
    standing: (accuracy: string) => `Measured standing still, within about ${accuracy}.`,
    standingUnstated: "Measured standing still. The device did not say how exact it was.",
    taken: (day: string, clock: string) => `${day}, ${clock}`,
    type: "Type degrees",
    latitude: "Latitude in degrees (south is below zero)",
    longitude: "Longitude in degrees (west is below zero)",
    wrong: "Write degrees with a decimal mark: latitude from -90 to 90, longitude from -180 to 180.",
    putThere: "Put it there",
    far: (length: string) => `That is ${length} away. Is it meant?`,
    farYes: "Yes, put it there",
    back: "Back to where it was measured",
    undo: "Undo the last move",
  },
});

export const MOVE_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
