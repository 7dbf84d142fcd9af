import type { Stood } from "../../../record/shapes.ts";
import type { Cell } from "./csv.ts";

/** Latitude and longitude in degrees, the accuracy in metres and what it means; empty cells when not known. */
export const stoodCells = ({ position }: Stood): Cell[] => [
  position?.latitudeDeg ?? null,
  position?.longitudeDeg ?? null,
  position?.accuracyM ?? null,
  position?.accuracyMeans ?? null,
];

export const yesNo = (is: boolean): string => (is ? "yes" : "no");
