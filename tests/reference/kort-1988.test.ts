/**
 * Source: Kort 1988, Agriculture, Ecosystems & Environment 22/23: 165-190.
 * Mark: published (spring wheat 8, maize 12, winter wheat 23 %); from memory (the other crops).
 */
import { expect, it } from "vitest";
import { gainOf } from "../../src/science/shelter/net.ts";

it.each([
  ["spring-wheat", 8, "published"],
  ["maize", 12, "published"],
  ["winter-wheat", 23, "published"],
  ["barley", 25, "from memory"],
  ["oats", 6, "from memory"],
  ["rye", 19, "from memory"],
  ["millet", 44, "from memory"],
  ["hay", 20, "from memory"],
] as const)("%s up to %d %% (%s), from the 2 %% lost that yield monitors saw", (crop, percent, mark) => {
  const gain = gainOf(crop);
  expect(gain).toMatchObject({ low: -0.02, high: percent / 100 });
  expect(gain.sources).toEqual([mark === "published" ? "kort-1988" : "kort-1988-from-memory"]);
});
