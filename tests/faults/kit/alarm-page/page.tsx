/** A page with the alarm of the app, its records and its bar, and one key below: no screen of the app. */
import { render } from "preact";
import { openHouse, spoken } from "../../../../src/app/house.ts";
import { NextReadingPlace } from "../../../../src/app/next-reading-place.tsx";
import { watchRunningRings } from "../../../../src/app/running-rings.ts";
import { readClock } from "../../../../src/device/clock.ts";
import type { Command, Draft } from "../../../../src/record/command/command.ts";
import type { RecordId } from "../../../../src/record/ids.ts";
import "../../../../src/screens/parts/look.css";

type RingId = RecordId<"observation">;

/** What a test asks of the page. */
export interface AlarmPage {
  /** Writes down a ring that was begun a minute ago and is to be read so many seconds from now. */
  start(letter: string, inS: readonly number[]): Promise<string>;
  /** *Read now*. */
  read(ring: string): Promise<void>;
  stop(ring: string): Promise<void>;
  /** How many rings the records of this page say are running; null before it knows. */
  running(): number | null;
  pressed(): number;
  pageId(): string;
  said(): string;
}

declare global {
  var alarmPage: AlarmPage | undefined;
}

const opened = await openHouse();
if (!opened.ok) throw new Error(opened.problem.code);
const house = opened.value;
const { pen } = house;

/** No plan has a reading sooner than 15 s after the start, and no test can wait so long. */
const BEGUN_AGO_MIN = 1;

const written = async (...commands: readonly Command[]): Promise<void> => {
  const result = await house.write(...commands);
  if (!result.ok) throw new Error(result.problem.code);
};
const append = (id: RingId, draft: Draft, agoMin = 0): Promise<void> => {
  const at = pen.moment();
  const lookedAtMs = at.lookedAtMs - agoMin * 60_000;
  return written({ op: "append", id, frame: null, at: { ...at, lookedAtMs }, draft });
};

const rings = watchRunningRings(house, new AbortController().signal);
let pressed = 0;

globalThis.alarmPage = {
  start: async (letter, inS) => {
    const field = pen.write("field", {
      name: "Long Field",
      farm: null,
      boundary: null,
      rowDirectionDeg: null,
      soilTexture: null,
      harvestCrop: null,
    });
    const strip = pen.write("strip", { field: field.id, name: "A", done: [], wholeField: true, rep: null });
    const visit = pen.write("visit", { field: field.id, day: "2026-04-01", harvestYear: null });
    const kit = pen.write("kit", {
      type: "ring",
      name: letter,
      insideM: [0.3, null],
      heightsM: [],
      outsideM: null,
    });
    const ring = pen.write("observation", {
      type: "ring",
      visit: visit.id,
      field: field.id,
      strip: strip.id,
      place: null,
      person: null,
      startedAtMs: readClock().wallMs,
      ring: kit.id,
      outer: null,
      ruler: null,
      bottle: null,
      way: "ruler",
      rulerReads: "water-depth",
      mulch: null,
      rimToSoilM: [],
      planMin: inS.map((seconds) => BEGUN_AGO_MIN + seconds / 60),
      at: { position: null, why: "not-asked" },
      follows: null,
    });
    await written(field, strip, visit, kit, ring);
    await append(ring.id, { type: "start", timed: "minutes-ago" }, BEGUN_AGO_MIN);
    return ring.id;
  },
  read: (ring) => append(ring as RingId, { type: "look", ring: "inner" }),
  stop: (ring) => append(ring as RingId, { type: "stop", why: "done", timed: "now" }),
  running: () => rings.value?.length ?? null,
  pressed: () => pressed,
  pageId: () => readClock().pageId,
  said: () => spoken.value,
};

const place = document.getElementById("app");
if (place === null) throw new Error("the page has no place");
render(
  <>
    <NextReadingPlace
      house={house}
      onBoard={location.hash === "#board"}
      bright={false}
      boardOf={(visit) => `#/visit/${visit}/rings`}
    />
    <main class="frame">
      <button
        type="button"
        class="key"
        onClick={() => {
          pressed += 1;
        }}
      >
        key
      </button>
    </main>
  </>,
  place,
);
