import { describe, expect, it } from "vitest";
import { readHole } from "../../../src/record/hole/reading.ts";
import type { RecordId } from "../../../src/record/ids.ts";
import type { Kit } from "../../../src/record/kinds/kit.ts";
import type { Treatment } from "../../../src/record/kinds/strip.ts";
import { marksSaid, readLine } from "../../../src/record/line/reading.ts";
import { readRing } from "../../../src/record/ring/reading.ts";
import { depthAfter } from "../../../src/science/infiltration/depth-after.ts";
import { ringSetOf } from "../../../src/science/infiltration/ring-set.ts";
import { soakingOf } from "../../../src/science/infiltration/soaking.ts";
import { compareGroups } from "../../../src/science/side-by-side/groups.ts";
import { type Conditions, unlikenesses } from "../../../src/science/side-by-side/like-with-like.ts";
import { comparePairs } from "../../../src/science/side-by-side/pairs.ts";
import type { Seen } from "../../../src/science/side-by-side/scale.ts";
import { NOT_ASKED } from "../../../src/screens/findings/side-by-side/conditions.ts";
import { all, farmAt, type States } from "./demo-farm.ts";

const states = farmAt();
const visits = all(states, "visit");
const kit = new Map(all(states, "kit").map(({ id, body }) => [id as string, body]));

const stripOf = (done: Treatment, farm: States = states): RecordId<"strip"> => {
  const found = all(farm, "strip").find(
    ({ body }) => body.rep === null && body.done.includes(done) && !body.done.includes("cover-crop"),
  );
  if (found === undefined) throw new Error(`no strip of ${done}`);
  return found.id;
};
const LEFT = stripOf("straw-left");
const OFF = stripOf("straw-carried-off");

/** The newest visit of the field of three strips that was measured to its end: the one before today's. */
const piece = all(states, "spot").find(({ body }) => body.edge !== undefined)?.body.field;
const days = visits
  .filter(({ body }) => body.field === piece)
  .sort((a, b) => (a.body.day < b.body.day ? 1 : -1));
const newest = days[1]?.id;

const tests = (strip: RecordId<"strip">, visit = newest) =>
  all(states, "observation").filter(({ body }) => body.visit === visit && body.strip === strip);

const seen = (values: readonly number[], least: number | null = null): Seen[] =>
  values.map((value) => ({ value, least }));

/** Ground cover of each line, as a share. */
const covers = (strip: RecordId<"strip">, visit = newest): number[] =>
  tests(strip, visit).flatMap(({ body, state }) => {
    if (body.type !== "line") return [];
    const rope = kit.get(body.rope);
    const marks = rope?.type === "rope" ? rope.marks : 0;
    const { tally } = readLine(state.entries, { way: body.way, ropeMarks: marks });
    return [(tally.residueFlat + tally.residueStanding + tally.green) / marksSaid(tally)];
  });

const worms = (strip: RecordId<"strip">): number[] =>
  tests(strip).flatMap(({ body, state }) =>
    body.type === "hole" ? [readHole(state.entries).foundTotal] : [],
  );

const isRing = (one: Kit | undefined): one is Extract<Kit, { type: "ring" }> => one?.type === "ring";

/** Millimetres soaked in within the first hour, ring by ring. */
const soaked = (strip: RecordId<"strip">, place: string | null = null): number[] =>
  tests(strip).flatMap(({ body, state }) => {
    if (body.type !== "ring" || (place !== null && body.place !== place)) return [];
    const ring = kit.get(body.ring);
    if (!isRing(ring)) return [];
    const soaking = soakingOf(readRing(state.entries), ringSetOf(body, { ring, outer: null, ruler: null }));
    const depth = soaking.ok ? depthAfter(soaking.value, 60) : soaking;
    return depth.ok ? [depth.value.value] : [];
  });

const ratio = (a: readonly number[], b: readonly number[]) => {
  const asked = { scale: "ratio", unit: "mm", worthwhile: 1.5, seed: 1 } as const;
  const compared = compareGroups(seen(a, 1), seen(b, 1), "spots", asked);
  if (!compared.ok) throw new Error(compared.problem.code);
  return compared.value;
};

describe("the stories of the example farm, by the science of the product", () => {
  it("ground cover where the straw stayed and where it went is clearly different", () => {
    const [a, b] = [covers(LEFT), covers(OFF)];
    expect(a).toHaveLength(5);
    expect(b).toHaveLength(5);
    const asked = { scale: "difference", unit: "1", worthwhile: 0.1, seed: 1 } as const;
    const compared = compareGroups(seen(a), seen(b), "spots", asked);
    expect(compared.ok && compared.value.word).toBe("clearly-different");
    expect(compared.ok && compared.value.value).toBeGreaterThan(0.3);
  });

  it("worms per hole cannot be told apart", () => {
    const [a, b] = [worms(LEFT), worms(OFF)];
    expect(a).toHaveLength(5);
    expect(b).toHaveLength(5);
    expect(Math.max(...a, ...b) - Math.min(...a, ...b)).toBeGreaterThan(3);
    expect(ratio(a, b).word).toBe("cannot-tell-yet");
  });

  it("soaking in reverses when wheel tracks and the ground between rows are looked at by themselves", () => {
    const together = ratio(soaked(LEFT), soaked(OFF));
    expect(together.n).toBe(14);
    expect(together.value).toBeLessThan(0.8);
    for (const place of ["between-rows", "wheel-track"]) {
      const apart = ratio(soaked(LEFT, place), soaked(OFF, place));
      expect(apart.n, place).toBe(7);
      expect(apart.value, place).toBeGreaterThan(1.2);
    }
  });

  it("and that is said before the number: one side stands mostly in wheel tracks, the other mostly between rows", () => {
    const placesOf = (strip: RecordId<"strip">): Conditions => ({
      ...NOT_ASKED,
      places: tests(strip).flatMap(({ body }) =>
        body.type === "ring" && body.place !== null ? [body.place] : [],
      ),
    });
    const { unlike } = unlikenesses(placesOf(LEFT), placesOf(OFF));
    expect(unlike.map(({ caution }) => caution.code)).toEqual(["science/unlike-places"]);
  });

  it("three pairs of cover crop and none stand side by side in every harvest year", () => {
    const pairs = all(states, "strip").filter(({ body }) => body.rep !== null);
    const field = pairs[0]?.body.field;
    for (const { id } of visits.filter(({ body }) => body.field === field)) {
      const sides = [1, 2, 3].map((rep) => {
        const mean = (done: Treatment): number => {
          const strip = pairs.find(({ body }) => body.rep === rep && body.done.includes(done));
          const lines = strip === undefined ? [] : covers(strip.id, id);
          return lines.reduce((sum, value) => sum + value, 0) / lines.length;
        };
        return {
          label: String(rep),
          a: { value: mean("cover-crop"), least: null },
          b: { value: mean("no-cover-crop"), least: null },
        };
      });
      const asked = { scale: "difference", unit: "1", worthwhile: 0.1, seed: 1 } as const;
      const compared = comparePairs(sides, "blocks", asked);
      expect(compared.ok && compared.value.n).toBe(3);
      expect(compared.ok && compared.value.value).toBeGreaterThan(0.1);
    }
  });
});
