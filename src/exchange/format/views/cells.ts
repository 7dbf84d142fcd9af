import type { Stood } from "../../../record/shapes.ts";
import type { Cell } from "./csv.ts";

/** Latitude and longitude in degrees and the accuracy in metres; empty cells when no position is known. */
export const stoodCells = ({ position }: Stood): Cell[] => [
  position?.latitudeDeg ?? null,
  position?.longitudeDeg ?? null,
  position?.accuracyM ?? null,
];

export const yesNo = (is: boolean): string => (is ? "yes" : "no");
