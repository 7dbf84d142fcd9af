/** What soil can take in along a curve: the four questions that fits, drawings and storms ask of it. */

/** Answers in hours, millimetres and millimetres an hour. */
export interface Capacity {
  /** Depth soaked in after so many hours under water, 0 or more. */
  readonly depthAt: (hours: number) => number;
  /** Rate at that time; without end at 0 h for curves that begin so. */
  readonly rateAt: (hours: number) => number;
  /** Hours under water until so much has soaked in; without end for a depth that is never reached. */
  readonly hoursAt: (mm: number) => number;
  /** Depth at which the rate has come down to this one: 0 if it is never higher, without end if never lower. */
  readonly depthAtRate: (mmPerH: number) => number;
}
