/** view/lines.geojson and view/rings-and-holes.geojson (RFC 7946). */
import type { HoleView, LineView, RingView, TestView } from "./test-view.ts";

/** What a layer begins and ends with; features stand between, parted by `mapGlue`. */
export const mapHead = '{"type":"FeatureCollection","features":[\n';
export const mapGlue = ",\n";
export const mapFoot = "\n]}\n";

const feature = (id: string, geometry: object, properties: object): string =>
  JSON.stringify({ type: "Feature", id, geometry, properties });

/** A line string from start to end, a point when only one of them is known. */
const lineFeature = ({
  id,
  field,
  strip,
  spot,
  oldGrass,
  example,
  day,
  header,
  reading,
}: LineView): string | undefined => {
  const [first, second] = [header.start, header.end].flatMap(({ position }) =>
    position === null ? [] : [[position.longitudeDeg, position.latitudeDeg]],
  );
  if (first === undefined) return undefined;
  return feature(
    id,
    second === undefined
      ? { type: "Point", coordinates: first }
      : { type: "LineString", coordinates: [first, second] },
    {
      field,
      strip,
      markedSpot: spot,
      oldGrass,
      example,
      visitDay: day,
      wayOfCounting: header.way,
      ...reading.tally,
    },
  );
};

const about = (view: RingView | HoleView): object =>
  view.type === "ring"
    ? {
        test: "ring",
        ring: view.ring?.name ?? "",
        wayOfReading: view.header.way,
        mulchInTheRing: view.header.mulch,
      }
    : {
        test: "hole",
        hole: view.header.number,
        depthM: view.header.depthM,
        finished: view.reading.finished,
      };

/** A point where the ring or the hole is. */
const pointFeature = (view: RingView | HoleView): string | undefined => {
  const { id, field, strip, spot, oldGrass, example, day, header } = view;
  const { position } = header.at;
  if (position === null) return undefined;
  return feature(
    id,
    { type: "Point", coordinates: [position.longitudeDeg, position.latitudeDeg] },
    { ...about(view), field, strip, markedSpot: spot, oldGrass, example, visitDay: day, place: header.place },
  );
};

/**
 * The feature of one test.
 *
 * @returns JSON text, or undefined when no position of it is known
 */
export const mapFeature = (view: TestView): string | undefined => {
  // Notes stand in their table: a layer of tests is styled by what was measured.
  if (view.type === "note") return undefined;
  return view.type === "line" ? lineFeature(view) : pointFeature(view);
};
