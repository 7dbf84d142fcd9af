/** What a mulch known by its cover alone cuts of the evaporation. */
import type { Ranged } from "../../src/science/residue/ranged.ts";
import { evaporationCut, fullCoverCut, type Mulch } from "../../src/science/water/mulch-cut.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

export const mulch = (cover: number): Mulch => ({
  cover: figure("cover", cover),
  fullCut: fullCoverCut(),
  thickness: null,
  mass: null,
  crop: null,
});
export const cut = (cover: number): Ranged => reached(evaporationCut(mulch(cover)));
