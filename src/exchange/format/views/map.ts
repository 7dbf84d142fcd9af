/** view/lines.geojson (RFC 7946). */
import type { LineView } from "./line-view.ts";

/** What the layer begins and ends with; features stand between, parted by `mapGlue`. */
export const mapHead = '{"type":"FeatureCollection","features":[\n';
export const mapGlue = ",\n";
export const mapFoot = "\n]}\n";

/**
 * The feature of one line: a line string from start to end, a point when only one of them is known.
 *
 * @returns JSON text, or undefined when neither is known
 */
export const mapFeature = ({ id, field, strip, day, header, reading }: LineView): string | undefined => {
  const [first, second] = [header.start, header.end].flatMap(({ position }) =>
    position === null ? [] : [[position.longitudeDeg, position.latitudeDeg]],
  );
  if (first === undefined) return undefined;
  return JSON.stringify({
    type: "Feature",
    id,
    geometry:
      second === undefined
        ? { type: "Point", coordinates: first }
        : { type: "LineString", coordinates: [first, second] },
    properties: { field, strip, visitDay: day, wayOfCounting: header.way, ...reading.tally },
  });
};
