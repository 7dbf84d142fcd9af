/** One field on one day with everything measured on two strips, and an old-grass spot beside them. */
import type { RecordId } from "../../../src/record/ids.ts";
import type { MulchInside } from "../../../src/record/kinds/observation.ts";
import type { Place } from "../../../src/record/shapes.ts";
import {
  beginSample,
  fieldOf,
  lineOf,
  marksRead,
  type Rows,
  type Sample,
  sampleStartMs,
} from "../../bench/seed.ts";
import { entriesAt, holeOf, levelAt, ringOf, startAt } from "../../bench/seed-rings.ts";
import type { OnPhone } from "./on-phone.ts";

export interface DaySample {
  readonly rows: Rows;
  readonly visit: RecordId<"visit">;
  readonly field: RecordId<"field">;
  readonly left: RecordId<"strip">;
  readonly off: RecordId<"strip">;
}

/** What the tests vary. */
export interface DayAsked {
  readonly day?: string;
  /** What was done with the mulch in the rings of the second strip. */
  readonly mulch?: MulchInside;
  /** Strips and what lies on them are repeated in so many reps. */
  readonly reps?: number;
  /** Two photos, one of each strip; their bytes are put by `putPhotoBytes`. */
  readonly photos?: boolean;
  readonly oldGrass?: boolean;
  /** Two of three rings of the first strip stand in wheel tracks, and one of three of the second. */
  readonly tracks?: boolean;
}

/** Digests of the photos; their bytes are told apart by them and nothing else. */
export const PHOTO_DIGESTS = ["a".repeat(64), "b".repeat(64)] as const;

/** Level in the ring at the start; depths soaked in are read down from it. */
const FULL_MM = 150;

/** Makes the sample. */
export const daySample = (
  {
    day = "2024-05-07",
    mulch = "kept",
    reps = 0,
    photos = false,
    oldGrass = true,
    tracks = false,
  }: DayAsked = {},
  { add, rows }: Sample = beginSample(),
): DaySample => {
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day, harvestYear: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 20, spacingM: 0.3 });
  const letters = ["A", "B", "C", "D", "E", "F", "G"].map((name) =>
    add("kit", { type: "ring", name, insideM: [0.3, null], heightsM: [0.25], outsideM: null }),
  );
  const spot = add("spot", { field, strip: null, name: "Orchard corner", position: null, oldGrass });
  let minute = 0;
  const next = (): number => {
    minute += 1;
    return sampleStartMs + minute * 60_000;
  };
  let number = 0;
  const line = (strip: RecordId<"strip">, hits: number, more: { spot?: typeof spot } = {}) =>
    add("observation", lineOf({ visit, field, strip, rope }, { startedAtMs: next(), ...more }), {
      entries: marksRead("r".repeat(hits) + "b".repeat(20 - hits)),
    });
  const hole = (strip: RecordId<"strip">, count: number, more: { spot?: typeof spot } = {}) => {
    number += 1;
    return add("observation", holeOf({ visit, field, strip }, { startedAtMs: next(), number, ...more }), {
      entries: entriesAt([
        [0, { type: "found", from: "soil", count, typed: String(count) }],
        [1, { type: "closed" }],
      ]),
    });
  };
  /** Depths in millimetres after 30, 60 and 180 minutes, as far as it was read. */
  const ring = (
    strip: RecordId<"strip">,
    letter: number,
    depths: readonly number[],
    more: { mulch?: MulchInside; spot?: typeof spot; burrow?: true; place?: Place } = {},
  ) => {
    const { burrow, ...header } = more;
    const of = letters[letter];
    if (of === undefined) throw new Error("no such ring");
    add("observation", ringOf({ visit, field, strip, ring: of }, { startedAtMs: next(), ...header }), {
      entries: entriesAt([
        [0, startAt],
        [0, levelAt(FULL_MM)],
        ...depths.map((mm, at) => [[30, 60, 180][at] ?? 0, levelAt(FULL_MM - mm)] as const),
        ...(burrow === true
          ? [[20, { type: "happened", what: "burrow", words: "", timed: "now" }] as const]
          : []),
        [200, { type: "stop", why: "done", timed: "now" }],
      ]),
    });
  };
  const strip = (name: string, done: "straw-left" | "straw-carried-off", rep: number | null) =>
    add("strip", { field, name, done: [done], wholeField: false, rep });
  const all = Array.from({ length: Math.max(1, reps) }, (_, at) => {
    const rep = reps === 0 ? null : at + 1;
    const end = rep === null ? "" : ` ${rep}`;
    const two = {
      left: strip(`straw left${end}`, "straw-left", rep),
      off: strip(`carried off${end}`, "straw-carried-off", rep),
    };
    for (const hits of [16, 17, 18, 15]) line(two.left, hits - at);
    for (const hits of [7, 9, 8, 6]) line(two.off, hits + at);
    return two;
  });
  const [first] = all;
  if (first === undefined) throw new Error("no strip");
  const { left, off } = first;
  const leftHoles = [14, 11, 17].map((count) => hole(left, count));
  for (const count of [4, 6, 3]) hole(off, count);
  const track = { place: tracks ? "wheel-track" : "between-rows" } as const;
  ring(left, 0, [42, 70, 120]);
  ring(left, 1, [55, 88, 140], { burrow: true, ...track });
  ring(left, 2, [38, 61], track);
  ring(off, 3, [18, 27, 44], { mulch, ...track });
  ring(off, 4, [22, 35, 60], { mulch });
  ring(off, 5, [15, 22], { mulch });
  if (oldGrass) {
    line(left, 20, { spot });
    line(left, 19, { spot });
    hole(left, 31, { spot });
    ring(left, 6, [60, 95, 145], { spot });
  }
  add("guess", {
    field,
    strip: left,
    visit,
    person: null,
    what: "ground-cover-percent",
    value: 60,
    atMs: sampleStartMs,
  });
  add("guess", {
    field,
    strip: left,
    visit,
    person: null,
    what: "soaked-in-60-min-mm",
    value: 25,
    atMs: sampleStartMs,
  });
  if (photos) {
    const note = add("observation", {
      type: "note",
      visit,
      field,
      strip: off,
      text: "A crust between the rows.",
      at: { position: null, why: "not-asked" },
      person: null,
      startedAtMs: next(),
    });
    const [hung] = leftHoles;
    for (const [at, of] of [hung ?? note, note].entries())
      add("photo", {
        of,
        sha256: PHOTO_DIGESTS[at] ?? "",
        byteCount: 1000,
        widthPx: 1200,
        heightPx: 900,
        takenAtMs: sampleStartMs + at * 60_000,
      });
  }
  return { rows: rows(), visit, field, left, off };
};

/** Draws two photos on the page and puts their bytes where photos lie. */
export const putPhotoBytes = (phone: OnPhone): Promise<undefined> =>
  phone.chromium.run(async (digests) => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open("mulchmark");
      request.onerror = () => reject(request.error);
      request.onsuccess = () => resolve(request.result);
    });
    for (const [at, sha256] of digests.entries()) {
      const canvas = document.createElement("canvas");
      canvas.width = 1200;
      canvas.height = 900;
      const pen = canvas.getContext("2d");
      if (pen === null) throw new Error("no canvas");
      pen.fillStyle = at === 0 ? "#c9b377" : "#7a5b3a";
      pen.fillRect(0, 0, 1200, 900);
      pen.fillStyle = at === 0 ? "#8f7a40" : "#5f4630";
      for (let row = 0; row < 24; row++) pen.fillRect(row * 50, 300 + (row % 3) * 20, 22, 600);
      pen.fillStyle = "#b9d3e6";
      pen.fillRect(0, 0, 1200, 260);
      const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", 0.9));
      if (blob === null) throw new Error("no picture");
      const bytes = new Uint8Array(await blob.arrayBuffer());
      await new Promise<void>((resolve, reject) => {
        const tx = db.transaction("photos", "readwrite");
        tx.objectStore("photos").put({ sha256, type: "image/jpeg", bytes });
        tx.oncomplete = () => resolve();
        tx.onerror = () => reject(tx.error);
      });
    }
    db.close();
    return undefined;
  }, PHOTO_DIGESTS);
