import { describe, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import type { BodyOf } from "../../../src/record/kinds/all.ts";
import type { Revision } from "../../../src/record/record.ts";
import { HABITS } from "../../../src/record/units.ts";
import { english } from "../../../src/screens/catalogue.ts";
import type { Listed } from "../../../src/screens/parts/reader.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { idsIn, kindWord } from "../../../src/screens/send/describe.ts";
import { differences } from "../../../src/screens/send/properties.ts";
import { RECORD_WORDS } from "../../../src/screens/send/words.records.ts";
import { SEND_WORDS } from "../../../src/screens/send/words.ts";
import { beginSample, fieldOf, holeOf, lineOf, listedOf, ringOf } from "./kit-samples.ts";

const trade = TRADE_WORDS["uk-ie"];
const words = { ...english(trade), ...SEND_WORDS.en(trade), records: RECORD_WORDS.en(trade) };

const sample = () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "left", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 100, spacingM: 0.15 });
  const ring = add("kit", { type: "ring", name: "A", insideM: [0.3, null], heightsM: [], outsideM: null });
  const other = add("kit", { type: "ring", name: "B", insideM: [0.3, null], heightsM: [], outsideM: null });
  add("kit", { type: "hole-template", name: "frame", sidesM: [0.2, 0.25] });
  add("kit", { type: "bottle", name: "jug", volumeM3: 0.000444 });
  add("kit", { type: "ruler", name: "steel", stepM: 0.001 });
  const on = { visit, field, strip };
  add("observation", lineOf({ ...on, rope }));
  add("observation", ringOf({ ...on, ring }));
  add("observation", holeOf({ ...on, template: null, number: 3 }));
  const all = listedOf(rows());
  const known = new Map<RecordId, Listed>(all.kit.map((one) => [one.id, one]));
  return { ...all, known, ring, other };
};

describe("what kind of record it is", () => {
  it("is said of a measurement as line, ring with its letter, hole with its number", () => {
    const { observation, known } = sample();
    expect(observation.map((one) => kindWord(words, known, one))).toEqual(["line", "ring A", "hole 3"]);
  });

  it("is a ring without a letter when its kit is not on this device", () => {
    const { observation } = sample();
    expect(observation.map((one) => kindWord(words, new Map(), one))).toEqual(["line", "ring", "hole 3"]);
  });

  it("is said of the kit by type", () => {
    const { kit, known } = sample();
    expect(kit.map((one) => kindWord(words, known, one))).toEqual([
      "rope or tape",
      "ring",
      "ring",
      "hole template",
      "bottle",
      "ruler",
    ]);
  });

  it("finds the ring that a test names, for its letter", () => {
    const { observation, ring } = sample();
    expect(observation.flatMap(({ body }) => idsIn(body))).toContain(ring);
  });
});

describe("two versions of a ring test or of a kit", () => {
  const versions = <K extends "observation" | "kit">(...bodies: readonly BodyOf[K][]): Revision<K>[] =>
    bodies.map((body, at) => ({
      rev: String(at).padStart(16, "0"),
      dot: [String(at).repeat(16), 1],
      seen: [],
      stamp: { wallMs: 0, counter: at, device: "d".repeat(16) },
      author: null,
      v: 2,
      body,
    }));
  const told = (
    habits: (typeof HABITS)[keyof typeof HABITS],
    known: ReadonlyMap<RecordId, Listed>,
    all: Revision[],
  ) => Object.fromEntries(differences({ words, known, habits }, all).map(({ label, said }) => [label, said]));

  it("differ in plain words and in the person's units", () => {
    const { observation, known, other } = sample();
    const body = observation[1]?.body;
    if (body?.type !== "ring") throw new Error("no ring");
    const rows = told(
      HABITS.metric,
      known,
      versions<"observation">(body, {
        ...body,
        ring: other,
        way: "measured-pour",
        rulerReads: "down-from-rim",
        mulch: null,
        rimToSoilM: [0.1, 0.1015],
        planMin: [1, 5, 60],
      }),
    );
    expect(rows).toEqual({
      Ring: ["A", "B"],
      "Way of counting or reading": ["ruler in the ring", "one measured pour"],
      "The ruler shows": ["the depth of the water", "down from the rim"],
      "Mulch in the ring": ["kept", "not said"],
      "From the rim to the ground": ["not said", "10 cm, 10.15 cm"],
      "Readings due after": ["1, 5, 10 min", "1, 5, 60 min"],
    });
  });

  it("show the sizes of a hole, a bottle and a ruler", () => {
    const { observation, known } = sample();
    const hole = observation[2]?.body;
    if (hole?.type !== "hole") throw new Error("no hole");
    // 1 in = 25.4 mm exactly (NIST Special Publication 811, appendix B.8).
    expect(
      told(
        HABITS.us,
        known,
        versions<"observation">(hole, { ...hole, depthM: 0.254, landUse: "orchard-or-vineyard", minutes: 5 }),
      ),
    ).toEqual({
      Depth: ["7.87 in", "10 in"],
      "Land use": ["not said", "orchard or vineyard"],
      "Minutes of sorting": ["not said", "5 min"],
    });
    const steel = { type: "ruler", name: "steel", stepM: 0.001 } as const;
    expect(told(HABITS.us, known, versions<"kit">(steel, { ...steel, stepM: 0.0015875 }))).toEqual({
      "Smallest step": ["0.0394 in", "0.0625 in"],
    });
    const jug = { type: "bottle", name: "jug", volumeM3: 0.000444 } as const;
    expect(told(HABITS.metric, known, versions<"kit">(jug, { ...jug, volumeM3: 0.0005 }))).toEqual({
      Holds: ["444 mL", "500 mL"],
    });
  });
});
