import { describe, expect, it } from "vitest";
import { canonicalJson, type Json } from "../../../src/record/canonical.ts";
import { demoRoundOf, restingOnDemo } from "../../../src/record/demo-ids.ts";
import { isDemoId } from "../../../src/record/demo-mark.ts";
import { NO_STRIP } from "../../../src/record/ground.ts";
import { readHole } from "../../../src/record/hole/reading.ts";
import { isRecordId, KINDS, kindOf, type RecordId } from "../../../src/record/ids.ts";
import { lineFinished } from "../../../src/record/line/finished.ts";
import { readLine } from "../../../src/record/line/reading.ts";
import { parseRecord } from "../../../src/record/parse.ts";
import { arranged, type RecordState, shown } from "../../../src/record/record.ts";
import { nextDue } from "../../../src/record/ring/due.ts";
import { readRing } from "../../../src/record/ring/reading.ts";
import { boundaryOf } from "../../../src/science/position/boundary.ts";
import { fieldSize } from "../../../src/science/position/field-size.ts";
import { inField } from "../../../src/science/position/in-field.ts";
import { DEMO_EDITION, DEMO_STEPS } from "../../../src/screens/demo/commands.ts";
import { sealOf } from "../../../src/screens/demo/demo-pen.ts";
import { DETAILS_WORDS } from "../../../src/screens/fields/words.details.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { all, applyTo, farmAt, NOW_MS, ROUND, type States, stepsAt } from "./demo-farm.ts";

const states = farmAt();
const text = (farm: States): string =>
  [...farm.values()]
    .map((state) => canonicalJson(state as unknown as Json))
    .sort()
    .join("\n");

describe("the records of the example farm", () => {
  it("are read back by the door for files, as they are", () => {
    for (const state of states.values()) {
      const parsed = parseRecord(JSON.parse(JSON.stringify(state)));
      expect(parsed.ok ? parsed.value : parsed.problem).toEqual(arranged(state));
    }
  });

  it("carry ids of their own that no chance gives, and speak of no record but each other", () => {
    for (const id of states.keys()) {
      expect(isRecordId(id)).toBe(true);
      expect(isDemoId(id)).toBe(true);
      expect(demoRoundOf(id)).toEqual(ROUND);
    }
    const spoken = JSON.stringify([...states.values()]).match(/\b[a-z]+-[0-9a-f]{32}\b/g) ?? [];
    // Old grass lies in no strip, and the id that says so names nothing.
    const named = spoken.filter((id) => id !== NO_STRIP);
    expect(named.filter((id) => !states.has(id as RecordId))).toEqual([]);
  });

  it("are the same for the same moment and seed, and others for another seed", () => {
    expect(text(farmAt())).toBe(text(states));
    expect(text(farmAt(NOW_MS, 8))).not.toBe(text(states));
  });

  it("change nothing when they are brought in twice, even at another moment", () => {
    const twice: States = new Map(states);
    for (const step of stepsAt(NOW_MS + 86_400_000)) {
      const known = step.filter(({ id }) => twice.has(id));
      expect(applyTo(twice, known)).toBe(0);
    }
    expect(text(twice)).toBe(text(states));
  });

  it("come in as many steps as are announced, and the seal comes last", () => {
    for (const month of [0, 3, 7, 8, 11]) {
      const steps = stepsAt(new Date(2027, month, 15, 12).getTime());
      expect(steps).toHaveLength(DEMO_STEPS);
      expect(steps.at(-1)?.at(-1)?.id).toBe(sealOf(ROUND));
      expect(Math.max(...steps.map((step) => new Set(step.map(({ id }) => id)).size))).toBeLessThanOrEqual(
        200,
      );
    }
  });

  it("hold every kind but people, photos and joinings: nobody is invented", () => {
    const kinds = new Set([...states.keys()].map(kindOf));
    expect(KINDS.filter((kind) => !kinds.has(kind))).toEqual(["person", "photo", "join"]);
    expect(states.size).toBeGreaterThan(250);
    expect(DEMO_EDITION).toBe(3);
  });
});

describe("what lies on the example farm", () => {
  it("two fields with boundary and row direction; every position lies in its field", () => {
    const fields = all(states, "field");
    expect(fields).toHaveLength(2);
    for (const { id, body } of fields) {
      expect(body.rowDirectionDeg).not.toBeNull();
      const boundary = boundaryOf(body.boundary ?? []);
      if (!boundary.ok) throw new Error(boundary.problem.code);
      const size = fieldSize(boundary.value);
      expect(size.ok && size.value.areaM2).toBeGreaterThan(30_000);
      for (const { body: one } of all(states, "observation")) {
        if (one.field !== id || one.type === "note") continue;
        const at = one.type === "line" ? one.start.position : one.at.position;
        const where = at === null ? null : inField(boundary.value, at);
        expect(where?.ok === true && where.value.inside).toBe(true);
      }
    }
  });

  it("a soil and a crop by the names of the lists that a person chooses from, as no own words", () => {
    const { textures, crops } = DETAILS_WORDS.en(TRADE_WORDS["uk-ie"]);
    const said = all(states, "field").map(({ body }) => [body.soilTexture, body.harvestCrop] as const);
    expect(said).toEqual([
      ["silt-loam", "winter-wheat"],
      ["clay-loam", "barley"],
    ]);
    for (const [soil, crop] of said) {
      expect(Object.keys(textures)).toContain(soil);
      expect(Object.keys(crops)).toContain(crop);
    }
  });

  it("three harvest years of all three tests on both, and marked spots measured in each", () => {
    const visits = new Map(all(states, "visit").map(({ id, body }) => [id, body]));
    for (const field of all(states, "field")) {
      const done = new Map<number, Set<string>>();
      const spots = new Map<string, Set<number>>();
      for (const { body } of all(states, "observation")) {
        const year = visits.get(body.visit)?.harvestYear ?? 0;
        if (body.field !== field.id) continue;
        done.set(year, (done.get(year) ?? new Set()).add(body.type));
        if (body.spot !== undefined) spots.set(body.spot, (spots.get(body.spot) ?? new Set()).add(year));
      }
      expect([...done.keys()].sort()).toEqual([2024, 2025, 2026]);
      for (const types of done.values())
        for (const type of ["line", "ring", "hole"]) expect(types).toContain(type);
      expect(spots.size).toBeGreaterThanOrEqual(2);
      for (const years of spots.values()) expect(years.size).toBe(3);
    }
  });

  it("a visible edge between two strips, and an old-grass spot", () => {
    const spots = all(states, "spot").map(({ body }) => body);
    const edge = spots.find((spot) => spot.edge !== undefined)?.edge;
    expect(edge?.between.every((strip) => strip !== null && states.has(strip))).toBe(true);
    expect(edge?.to).not.toBeNull();
    expect(spots.filter(({ oldGrass }) => oldGrass)).toHaveLength(1);
  });

  it("old grass that is no strip, with a line, a hole and a ring of its own in each of three years", () => {
    const [grass] = all(states, "spot").filter(({ body }) => body.oldGrass);
    const tests = all(states, "observation").filter(({ body }) => body.spot === grass?.id);
    expect(tests.map(({ body }) => body.type).sort()).toEqual([
      ...["hole", "hole", "hole"],
      ...["line", "line", "line"],
      ...["ring", "ring", "ring"],
    ]);
    expect(new Set(tests.map(({ body }) => body.strip))).toEqual(new Set([NO_STRIP]));
    expect(states.has(NO_STRIP)).toBe(false);
    expect(all(states, "strip").filter(({ body }) => body.field === grass?.body.field)).toHaveLength(3);
  });

  it("lines that are done, with 50 marks each", () => {
    for (const { body, state } of all(states, "observation")) {
      if (body.type !== "line") continue;
      const frame = { way: body.way, ropeMarks: 50 };
      const reading = readLine(state.entries, frame);
      expect(lineFinished(reading, frame)).toBe(true);
      expect(Object.values(reading.tally).reduce((sum, count) => sum + count, 0)).toBe(50);
    }
  });

  it("nothing that lies behind the moment at which it came", () => {
    for (const { entries, revs } of states.values()) {
      for (const { stamp } of revs) expect(stamp.wallMs).toBeLessThanOrEqual(NOW_MS);
      for (const { lookedAtMs } of entries) expect(lookedAtMs).toBeLessThanOrEqual(NOW_MS);
    }
  });
});

describe("today on the example farm", () => {
  const now = { wallMs: NOW_MS, monoMs: 1000, page: "c".repeat(16) };
  const running = all(states, "observation").flatMap(({ body, state }) => {
    if (body.type !== "ring") return [];
    const reading = readRing(state.entries);
    return reading.stop === null ? [{ due: nextDue(body.planMin, reading, now), reading }] : [];
  });

  it("one ring is due soon, one is late, one has a number missing", () => {
    expect(running).toHaveLength(3);
    const minutes = running.map(({ due }) => (due?.dueInMs ?? 0) / 60_000);
    expect(minutes[0]).toBe(2);
    expect(minutes[1]).toBe(-4);
    expect(minutes[2]).toBeGreaterThan(2);
    expect(running.map(({ reading }) => reading.openLooks.length)).toEqual([0, 0, 1]);
  });

  it("a hole is open, and its mustard water waits", () => {
    const open = all(states, "observation").filter(
      ({ body, state }) => body.type === "hole" && readHole(state.entries).closed === null,
    );
    expect(open).toHaveLength(1);
    const [hole] = open;
    const reading = readHole(hole?.state.entries ?? []);
    expect(reading.foundTotal).toBe(9);
    expect(reading.mustard).toHaveLength(1);
    const poured = hole?.state.entries.find(({ type }) => type === "mustard")?.lookedAtMs ?? 0;
    expect((NOW_MS - poured) / 60_000).toBe(6);
    expect(hole?.body.type === "hole" && hole.body.mustardMin).toBe(15);
  });
});

describe("what one's own records rest on", () => {
  const own = (id: RecordId, body: object) => ({ id, revs: [{ body }] });

  it("finds the rope, and through the visit the field and the farm", () => {
    const [line] = all(states, "observation").filter(({ body }) => body.type === "line");
    if (line?.body.type !== "line") throw new Error("no line");
    const resting = restingOnDemo();
    for (const state of states.values()) resting.add(state);
    expect(resting.needed().size).toBe(0);
    const mine: RecordId = `observation-${"1".repeat(32)}`;
    resting.add(own(mine, { ...line.body, spot: undefined }));
    resting.add(own(`farm-${"2".repeat(32)}`, { name: "elsewhere" }));
    expect([...resting.own()]).toEqual([mine]);
    const { rope, visit, strip, field } = line.body;
    const farm = shown(states.get(field) as RecordState<"field">)?.body.farm;
    expect([...resting.needed()].sort()).toEqual([rope, visit, strip, field, farm].sort());
  });
});
