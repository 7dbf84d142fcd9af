/** The names on a map: written where there is room for them, anew whenever it was moved or has another size. */
import { divIcon, type Map as LeafletMap, layerGroup, marker, polyline } from "leaflet";
import type { LatitudeLongitude } from "../../../science/position/distance.ts";
import type { Drawing, Sign } from "./drawing.ts";
import { placeNames } from "./place-names.ts";
import { labelElement } from "./signs.ts";

/** Signs whose name stands beside them; the others bear a letter or a number inside. */
const NAMED_BESIDE: ReadonlySet<Sign> = new Set(["spot", "old-grass", "edge"]);

interface Name {
  readonly element: HTMLElement;
  readonly at: [number, number];
  readonly beside: boolean;
}

/** Writes the names of a drawing; what finds no room shows when one comes closer. */
export interface NameLayer {
  readonly draw: (drawing: Drawing) => void;
  /** Finds room anew: the map was moved, or has another size. */
  readonly place: () => void;
}

export const nameLayer = (
  map: LeafletMap,
  toMap: (place: LatitudeLongitude) => [number, number],
): NameLayer => {
  const layer = layerGroup().addTo(map);
  /** From a name to its ground, where it had to be written aside. */
  const leaders = layerGroup().addTo(map);
  let names: readonly Name[] = [];
  let signs: readonly [number, number][] = [];
  const place = (): void => {
    leaders.clearLayers();
    const seen = map.getSize();
    const middle = map.containerPointToLayerPoint(seen.divideBy(2));
    const boxes = names.map(({ element, at, beside }) => {
      const { x, y } = map.latLngToLayerPoint(at);
      return { x, y, width: element.offsetWidth, height: element.offsetHeight, beside };
    });
    const shifts = placeNames(
      boxes,
      signs.map((at) => map.latLngToLayerPoint(at)),
      { x: middle.x, y: middle.y, width: seen.x, height: seen.y },
    );
    for (const [index, { element, at, beside }] of names.entries()) {
      const shift = shifts[index] ?? null;
      element.style.visibility = shift === null ? "hidden" : "";
      if (shift === null) continue;
      element.style.translate = `${shift[0]}px ${shift[1]}px`;
      if (beside) continue;
      const to = map.layerPointToLatLng(map.latLngToLayerPoint(at).add([...shift]));
      polyline([at, to], { className: "leader", interactive: false }).addTo(leaders);
    }
  };
  return {
    draw: ({ labels, things }) => {
      layer.clearLayers();
      signs = things.map(({ at }) => toMap(at));
      names = [
        ...labels.map(({ text, at }) => ({
          element: labelElement(text, "strip"),
          at: toMap(at),
          beside: false,
        })),
        ...things
          .filter(({ sign, label }) => NAMED_BESIDE.has(sign) && label !== "")
          .map(({ label, at }) => ({ element: labelElement(label, "spot"), at: toMap(at), beside: true })),
      ];
      for (const { element, at } of names)
        marker(at, {
          icon: divIcon({ html: element, className: "on-ground", iconSize: [0, 0] }),
          interactive: false,
          keyboard: false,
          zIndexOffset: -200,
        }).addTo(layer);
      place();
    },
    place,
  };
};
