/**
 * Where the levels of guides for worms lie, one case per guide. Read as published: farm-conservation advice (mean
 * of 10 good, 15 or more excellent), Australian wool and meat levy bodies' tool 6.3 (above 10 high), Central
 * European soil fertility guide (120 to 140 per m²). From memory: AHDB (fewer than 4, 4 to 8, more than 8), FAO
 * 2008 (15 and 30), USDA test kit (about 10 per square foot).
 */
import { expect, it } from "vitest";
import { GUIDES } from "../../src/science/earthworms/guides.ts";
import { readByGuide } from "../../src/science/earthworms/read-guide.ts";
import { reached } from "../unit/science/counts.ts";
import { hole } from "../unit/science/earthworms/holes.ts";

it.each([
  [
    "farm-conservation",
    "published",
    0.2,
    0.3,
    [9.5, 10, 14.5, 15],
    ["below-good", "good", "good", "excellent"],
  ],
  ["pasture-10-cm", "published", 0.2, 0.1, [10, 10.5], ["not-high", "high"]],
  ["levy-board", "not-checked", 0.2, 0.2, [3.5, 4, 8, 8.5], ["few", "middling", "middling", "many"]],
  ["soil-cube-2008", "not-checked", 0.2, 0.2, [14.5, 15, 30, 30.5], ["few", "middling", "middling", "many"]],
  ["square-foot", "not-checked", 0.3048, 0.3048, [9.5, 10], ["below-good", "good"]],
  ["central-europe", "published", 0.5, 0.3, [29.5, 30, 35], ["below-good", "good", "good"]],
] as const)("%s (%s)", (id, mark, sideM, depthM, means, levels) => {
  const guide = GUIDES.find((one) => one.id === id);
  expect(guide?.mark).toBe(mark);
  if (guide === undefined) return;
  const at = {
    landUse: null,
    month: guide.season?.months[0] ?? 5,
    hemisphere: guide.season?.hemisphere ?? "north",
  };
  const read = means.map((mean) => {
    const two = [Math.floor(mean), Math.ceil(mean)].map((worms) =>
      hole(worms, { sidesM: [sideM, sideM], depthM }),
    );
    return reached(readByGuide(guide, two, at)).level.says;
  });
  expect(read).toEqual(levels);
});

it("the guides disagree: the same hole of 20 × 20 × 20 cm is many from 8 on in one and from 30 on in another", () => {
  const many = (id: string): number =>
    GUIDES.find((one) => one.id === id)?.levels.find(({ says }) => says === "many")?.from ?? 0;
  expect(many("soil-cube-2008") / many("levy-board")).toBeCloseTo(3.75, 12);
});
