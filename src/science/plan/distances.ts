/** Distances between the places of a walk. */

/** Metres from each place to each other, the same there and back; place 0 is where the way begins. */
export type Distances = readonly (readonly number[])[];

/** Metres from one place to another; nothing where a way has no such leg. */
export const legM = (distances: Distances, from: number | null, to: number | null): number =>
  from === null || to === null ? 0 : (distances[from]?.[to] ?? 0);
