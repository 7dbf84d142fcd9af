/** A farm with something on every screen, and the address of each. */
import { HELP_TOPICS, href, type Route } from "../../../src/screens/parts/route.ts";
import {
  beginSample,
  fieldOf,
  lineOf,
  marksRead,
  type Rows,
  type Sample,
  sampleStartMs,
} from "../../bench/seed.ts";
import { entriesAt, holeOf, levelAt, lookAt, type On, ringOf, startAt } from "../../bench/seed-rings.ts";

/** The sample's rows, and the address of every screen that has one. */
export interface SampleFarm {
  readonly rows: Rows;
  readonly addresses: Readonly<Record<string, string>>;
}

/** Two rings, one with a number still missing, and two holes, one of them finished. */
const ringsAndHoles = (add: Sample["add"], on: On) => {
  const [a, b] = ["A", "B"].map((name) =>
    add("kit", { type: "ring", name, insideM: [0.15, 0.151], heightsM: [0.12], outsideM: null }),
  );
  if (a === undefined || b === undefined) throw new Error("The sample has no rings");
  add("kit", { type: "hole-template", name: "T1", sidesM: [0.2, 0.2] });
  add("kit", { type: "bottle", name: "1 L", volumeM3: 0.001 });
  add("kit", { type: "ruler", name: "steel", stepM: 0.001 });
  const ring = add("observation", ringOf({ ...on, ring: a }), {
    entries: entriesAt([
      [0, startAt],
      [0, levelAt(80)],
      [5, levelAt(71)],
      [10, levelAt(65)],
      [20, levelAt(55)],
      [30, levelAt(47)],
      [60, lookAt],
    ]),
  });
  add("observation", ringOf({ ...on, ring: b }, { place: "wheel-track", mulch: "removed" }));
  const found = Array.from({ length: 6 }, (_, at) => [at / 4, { type: "worm", from: "soil" }] as const);
  const hole = add("observation", holeOf(on), { entries: entriesAt(found) });
  const closed = add("observation", holeOf(on, { number: 2 }), {
    entries: entriesAt([
      ...found,
      [2, { type: "placed", group: "topsoil" }],
      [3, { type: "placed", group: "young" }],
      [4, { type: "closed" }],
    ]),
  });
  return { letter: a, ring, hole, closed };
};

/** Makes the sample. */
export const sampleFarm = (): SampleFarm => {
  const sample = beginSample();
  const { addresses } = farmIn(sample);
  return { rows: sample.rows(), addresses };
};

/** Adds the farm to a sample, and says what more can be laid on. */
export const farmIn = ({ add }: Sample) => {
  const person = add("person", { name: "One who counts" });
  const farm = add("farm", { name: "Hollow Lane" });
  const corner = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });
  const field = add("field", {
    ...fieldOf("Long Bottom", farm),
    boundary: [corner(52, 0.5), corner(52, 0.503), corner(52.0015, 0.503), corner(52.0015, 0.5)],
  });
  add("spot", {
    field,
    strip: null,
    name: "by the oak",
    position: {
      ...corner(52.0005, 0.501),
      accuracyM: 4,
      accuracyMeans: "68-percent",
      spreadM: null,
      fixes: 5,
      how: "standing-still",
      atMs: sampleStartMs,
    },
    oldGrass: true,
  });
  add("field", fieldOf("A field with a very long name that was typed by somebody in a hurry"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: 2024 });
  const strip = add("strip", { field, name: "straw left", done: ["straw-left"], wholeField: false, rep: 1 });
  add(
    "strip",
    { field, name: "straw off", done: ["straw-carried-off"], wholeField: false, rep: 1 },
    {
      beside: {
        field,
        name: "straw carried off",
        done: ["straw-carried-off"],
        wholeField: false,
        rep: 2,
      },
    },
  );
  const rope = add("kit", { type: "rope", name: "R1", marks: 50, spacingM: 0.3 });
  const on = { visit, field, strip, rope };
  const full = "rrrrrrfbrrrrrgrrrrrrrrsrrrrrrrbrrrrrrrrrrrgrrrrrrr";
  const finished = [full, full.replaceAll("g", "b"), full.replaceAll("s", "r")].map((letters, at) =>
    add("observation", lineOf(on, { startedAtMs: sampleStartMs + at * 600_000, person }), {
      entries: marksRead(letters),
    }),
  );
  add("observation", lineOf(on), { entries: marksRead("rrb"), deleted: true });
  const counted = add("observation", lineOf(on, { startedAtMs: sampleStartMs + 3_600_000 }), {
    entries: marksRead("rrrb"),
  });
  const misses = add(
    "observation",
    lineOf(on, { way: "misses-only", startedAtMs: sampleStartMs + 3_700_000 }),
  );
  const totals = add("observation", lineOf(on, { way: "totals", startedAtMs: sampleStartMs + 3_800_000 }));
  const five = add(
    "observation",
    lineOf(on, { fifthKey: "dung", askThickness: true, startedAtMs: sampleStartMs + 3_900_000 }),
  );
  const [sheet] = finished;
  if (sheet === undefined) throw new Error("The sample has no finished line");
  const note = add("observation", {
    type: "note",
    visit,
    field,
    strip,
    text: "Water stands in the wheel tracks near the gate.",
    at: { position: null, why: "slow" },
    person: null,
    startedAtMs: sampleStartMs + 4_000_000,
  });
  const { letter, ring, hole, closed } = ringsAndHoles(add, { visit, field, strip });
  const routes: { readonly [At in Route["at"]]: Extract<Route, { at: At }> } = {
    welcome: { at: "welcome" },
    measure: { at: "measure" },
    visit: { at: "visit", visit },
    "line-new": { at: "line-new", visit },
    line: { at: "line", line: counted },
    "line-sheet": { at: "line-sheet", line: sheet },
    rings: { at: "rings", visit },
    "ring-new": { at: "ring-new", visit, follows: null },
    ring: { at: "ring", ring },
    "ring-sheet": { at: "ring-sheet", ring },
    "big-figures": { at: "big-figures", visit },
    "hole-new": { at: "hole-new", visit },
    hole: { at: "hole", hole },
    "hole-sheet": { at: "hole-sheet", hole: closed },
    "note-new": { at: "note-new", visit, spot: null },
    note: { at: "note", note },
    fields: { at: "fields" },
    "field-new": { at: "field-new" },
    field: { at: "field", field },
    map: { at: "map", field, visit: null },
    boundary: { at: "boundary", field },
    spot: { at: "spot", field, spot: "new" },
    "worked-out": { at: "worked-out", strip, visit },
    findings: { at: "findings" },
    "side-by-side": { at: "side-by-side", visit, strip: null },
    picture: { at: "picture", visit },
    send: { at: "send" },
    help: { at: "help" },
    "help-topic": { at: "help-topic", topic: "line" },
    settings: { at: "settings" },
    kit: { at: "kit" },
    deleted: { at: "deleted" },
    "two-versions": { at: "two-versions" },
  };
  const addresses = {
    ...Object.fromEntries(Object.entries(routes).map(([name, route]) => [name, href(route)])),
    ...Object.fromEntries(HELP_TOPICS.map((topic) => [`help, ${topic}`, href({ at: "help-topic", topic })])),
    "line, five keys": href({ at: "line", line: five }),
    "line, misses only": href({ at: "line", line: misses }),
    "line, totals": href({ at: "line", line: totals }),
  };
  return { addresses, ground: { ...on, ring: letter, person }, follows: ring };
};
