/** A field with something of everything on its ground, and a sky that a test moves. */
import type { RecordId } from "../../../src/record/ids.ts";
import type { Position } from "../../../src/record/shapes.ts";
import {
  beginSample,
  fieldOf,
  lineOf,
  marksRead,
  type Rows,
  type Sample,
  sampleStartMs,
} from "../../bench/seed.ts";
import { holeOf, ringOf } from "../../bench/seed-rings.ts";
import type { OnPhone } from "./on-phone.ts";

/** The corner from which a sample's metres are counted. */
export const origin = { latitudeDeg: 52, longitudeDeg: 0.5 } as const;

// One degree on WGS 84 at 52° of latitude, in metres (NIMA TR8350.2 for the ellipsoid); near enough for a test.
const NORTH_M = 111_266;
const EAST_M = 68_678;

/** A place so many metres east and north of the sample's corner. */
export const placeAt = (eastM: number, northM: number) => ({
  latitudeDeg: origin.latitudeDeg + northM / NORTH_M,
  longitudeDeg: origin.longitudeDeg + eastM / EAST_M,
});

const standing = (eastM: number, northM: number, accuracyM = 4): Position => ({
  ...placeAt(eastM, northM),
  accuracyM,
  accuracyMeans: "68-percent",
  spreadM: null,
  fixes: 5,
  how: "standing-still",
  atMs: sampleStartMs,
});
const at = (eastM: number, northM: number) => ({ position: standing(eastM, northM), why: null });

export interface MapSample {
  readonly rows: Rows;
  readonly field: RecordId<"field">;
  readonly visit: RecordId<"visit">;
  /** Another field of the same name on another farm, east of the first. */
  readonly other: RecordId<"field">;
  readonly bare: RecordId<"field">;
  readonly spot: RecordId<"spot">;
}

/** A text that would run as code if it were ever put into the page as markup. */
export const HOSTILE = '<img src=x onerror="document.title=1">';

export const mapSample = ({ add, rows }: Sample = beginSample()): MapSample => {
  const farm = add("farm", { name: "Hollow Lane" });
  const farm2 = add("farm", { name: "Brook End" });
  const square = (eastM: number) => [
    placeAt(eastM, 0),
    placeAt(eastM + 200, 0),
    placeAt(eastM + 200, 150),
    placeAt(eastM, 150),
  ];
  const field = add("field", { ...fieldOf("Top Field", farm), boundary: square(0) });
  const other = add("field", { ...fieldOf("Top Field", farm2), boundary: square(260) });
  const bare = add("field", fieldOf("Long Bottom", farm));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: 2024 });
  const left = add("strip", { field, name: "straw left", done: ["straw-left"], wholeField: false, rep: 1 });
  const off = add("strip", { field, name: "straw off", done: [], wholeField: false, rep: 1 });
  const rope = add("kit", { type: "rope", name: "R1", marks: 50, spacingM: 0.3 });
  const kit = add("kit", {
    type: "ring",
    name: "A",
    insideM: [0.15, null],
    heightsM: [0.12],
    outsideM: null,
  });
  add("observation", lineOf({ visit, field, strip: left, rope }, { start: at(30, 40), end: at(45, 40) }), {
    entries: marksRead("rrb"),
  });
  add("observation", lineOf({ visit, field, strip: off, rope }));
  add("observation", { ...ringOf({ visit, field, strip: left, ring: kit }), at: at(60, 90) });
  add("observation", { ...holeOf({ visit, field, strip: off }), at: at(140, 60) });
  // It belongs to the visit as the tests do, and lies nowhere on the ground.
  add("guess", {
    field,
    strip: left,
    visit,
    person: null,
    what: "ground-cover-percent",
    value: 40,
    atMs: sampleStartMs,
  });
  add("observation", {
    type: "note",
    visit,
    field,
    strip: null,
    text: HOSTILE,
    at: at(120, 120),
    person: null,
    startedAtMs: sampleStartMs,
  });
  const spot = add("spot", {
    field,
    strip: left,
    name: "by the oak",
    position: standing(20, 100),
    oldGrass: false,
  });
  add("spot", { field, strip: null, name: "old pasture", position: standing(180, 130), oldGrass: true });
  add("spot", {
    field,
    strip: null,
    name: "edge",
    position: standing(100, 10),
    oldGrass: false,
    edge: { between: [left, off], to: standing(100, 130) },
  });
  return { rows: rows(), field, visit, other, bare, spot };
};

/** Puts the phone so many metres east and north of the sample's corner. */
export const stand = async (phone: OnPhone, eastM: number, northM: number, accuracy = 4): Promise<void> => {
  const { latitudeDeg, longitudeDeg } = placeAt(eastM, northM);
  await phone.chromium.context.setGeolocation({
    latitude: latitudeDeg,
    longitude: longitudeDeg,
    accuracy,
  });
};

/** What the database holds under an id. */
export const storedBody = (phone: OnPhone, id: string): Promise<Record<string, unknown> | null> =>
  phone.chromium.run(async (wanted) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const row = await new Promise<{ revs: { body: Record<string, unknown> }[] } | undefined>((resolve) => {
      const request = db.transaction("records").objectStore("records").get(wanted);
      request.onsuccess = () => resolve(request.result);
    });
    db.close();
    return row?.revs[0]?.body ?? null;
  }, id);
