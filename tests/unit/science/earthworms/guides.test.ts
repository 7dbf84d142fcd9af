import { describe, expect, it } from "vitest";
import { GUIDES, type Guide, guidesFor } from "../../../../src/science/earthworms/guides.ts";
import { inSeason } from "../../../../src/science/earthworms/protocol.ts";
import { type Dug, readByGuide } from "../../../../src/science/earthworms/read-guide.ts";
import { WORM_METHODS, wormMethod, wormMethodsFor } from "../../../../src/science/earthworms/worm-methods.ts";
import { SOURCES } from "../../../../src/science/sources.ts";
import { reached, reasonOf } from "../counts.ts";
import { codes, hole, holes } from "./holes.ts";

const april: Dug = { landUse: "cropland", month: 4, hemisphere: "north" };
const guide = (id: string): Guide => {
  const found = GUIDES.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const says = (id: string, counts: readonly number[], dug = april) =>
  reached(readByGuide(guide(id), holes(...counts), dug)).level.says;

describe("guides", () => {
  it("keeps every guide with its name, its source and the same mark as the source", () => {
    expect(new Set(GUIDES.map(({ id }) => id)).size).toBe(GUIDES.length);
    for (const { name, source, mark, levels } of GUIDES) {
      expect(name).not.toBe("");
      expect(mark).toBe(SOURCES[source].mark);
      expect(levels[0]).toMatchObject({ from: 0, limit: "at-least" });
      expect(levels.map(({ from }) => from)).toEqual(
        [...levels.map(({ from }) => from)].sort((a, b) => a - b),
      );
    }
    expect(guidesFor("grassland").map(({ id }) => id)).toEqual(["farm-conservation", "pasture-10-cm"]);
    expect(guidesFor(null)).toBe(GUIDES);
  });

  it("reads the same ten worms differently, which is said every time", () => {
    expect(says("survey-2019", [10, 10, 10])).toBe("survey-mean");
    expect(says("levy-board", [10, 10, 10])).toBe("many");
    expect(says("soil-cube-2008", [10, 10, 10])).toBe("few");
    const reading = reached(readByGuide(guide("levy-board"), holes(2, 9, 19), april));
    expect(codes(reading.cautions)).toContain("science/guides-disagree");
    expect(reading.guide.name).toContain("AHDB");
    expect(reading.counted.sources).toContain("levy-board-worms");
    // The range runs from few to many: the level alone would claim too much.
    expect(reading.levelsOfRange).toMatchObject({ lower: { says: "few" }, upper: { says: "many" } });
  });

  it("says what a guide of wet pasture supposes, beside its level and in no other guide", () => {
    const squares = holes(12, 11, 14).map((one) => ({ ...one, depthM: 0.1 }));
    const august: Dug = { landUse: "grassland", month: 8, hemisphere: "south" };
    const read = reached(readByGuide(guide("pasture-10-cm"), squares, august));
    expect(read.level.says).toBe("high");
    expect(codes(read.cautions)).toContain("science/guide-supposes-wet-pasture");
    expect(GUIDES.filter(({ supposes }) => supposes !== null).map(({ id }) => id)).toEqual(["pasture-10-cm"]);
  });

  it("refuses another hole, depth, season or land", () => {
    const read = (but: Parameters<typeof hole>[1], dug = april) =>
      reasonOf(readByGuide(guide("survey-2019"), [hole(9, but), hole(8, but)], dug));
    expect(read({})).toBeNull();
    expect(read({ sidesM: [0.25, 0.25] })).toBe("science/guide-other-hole-size");
    expect(read({ sidesM: null })).toBe("science/guide-other-hole-size");
    expect(read({ depthM: 0.1 })).toBe("science/guide-other-depth");
    expect(read({}, { ...april, month: 7 })).toBe("science/guide-other-season");
    expect(read({}, { ...april, hemisphere: null })).toBe("science/guide-season-not-known");
    expect(read({}, { ...april, landUse: "grassland" })).toBe("science/guide-other-land-use");
    expect(read({}, { ...april, landUse: null })).toBeNull();
    expect(read({}, { ...april, month: 10, hemisphere: "south" })).toBeNull();
    expect(reasonOf(readByGuide(guide("survey-2019"), [], april))).toBe("science/nothing-read");
  });

  it("leaves worms that mustard drove up out of a guide of hand sorting, and says so", () => {
    const with3 = hole(0, { found: { mulch: 1, soil: 6, "mustard-water": 3 } });
    const reading = reached(readByGuide(guide("levy-board"), [with3], april));
    expect(reading.counted.value).toBe(7);
    expect(codes(reading.cautions)).toContain("science/guide-by-hand-only");
    const foot = { sidesM: [0.3, 0.3] as const, depthM: 0.3 };
    const square = reached(readByGuide(guide("square-foot"), [{ ...with3, ...foot }], april));
    expect(square.counted.value).toBe(10);
    expect(codes(square.cautions)).toContain("science/guide-states-no-season");
  });

  it("reads a guide that states no hole per m², and says so", () => {
    const reading = reached(readByGuide(guide("central-europe"), holes(5, 5), april));
    expect(reading.counted.value).toBeCloseTo(125, 9);
    expect(reading.level.says).toBe("good");
    expect(codes(reading.cautions)).toContain("science/guide-states-no-hole");
  });

  it("takes a guide that a person changed", () => {
    const own: Guide = {
      ...guide("levy-board"),
      mark: "your-setting",
      levels: [{ from: 6, limit: "at-least", says: "many" }],
    };
    expect(reached(readByGuide(own, holes(6, 6), april)).level.says).toBe("many");
    expect(reasonOf(readByGuide(own, holes(5, 5), april))).toBe("science/guide-without-level");
  });
});

describe("seasons", () => {
  it("turns by half a year on the other half of the earth", () => {
    const season = { hemisphere: "north", months: [1, 3, 12] } as const;
    const at = (month: number, hemisphere: "north" | "south") => inSeason(season, { month, hemisphere });
    expect([1, 3, 12].every((month) => at(month, "north"))).toBe(true);
    expect([7, 9, 6].every((month) => at(month, "south"))).toBe(true);
    expect(at(7, "north")).toBe(false);
    expect(at(Number.NaN, "north")).toBe(false);
  });
});

describe("worm methods", () => {
  it("sets hole, depth, layers and mustard for a land use", () => {
    expect(new Set(WORM_METHODS.map(({ id }) => id)).size).toBe(WORM_METHODS.length);
    for (const method of WORM_METHODS) {
      expect(method.sidesM.every((side) => side >= 0.1 && side <= 0.5)).toBe(true);
      expect(method.depthM).toBeGreaterThan(0);
      expect(method.mustard !== null).toBe((method.layers as readonly string[]).includes("mustard-water"));
      expect(method.mark).toBe(SOURCES[method.source].mark);
    }
    expect(wormMethodsFor("orchard-or-vineyard").map(({ id }) => id)).toEqual([
      "soil-cube-2008",
      "half-metre",
    ]);
    expect(wormMethodsFor(null)).toHaveLength(WORM_METHODS.length);
    expect(wormMethod("levy-board")?.minutes).toBe(5);
    expect(wormMethod("no such method")).toBeUndefined();
  });
});
