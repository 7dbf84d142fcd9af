/** What a touch, felt or heard, tells without looking: the answer taken, an undo, or a problem. */
export const CUES = ["residue", "bare", "green", "stone", "own", "undo", "problem"] as const;
export type Cue = (typeof CUES)[number];
