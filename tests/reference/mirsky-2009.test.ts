/**
 * Source: Mirsky et al. 2009, Agronomy Journal 101: 1589.
 * Mark: published (abstract: rolling works from Zadoks 61 on); from memory (before early milk, 73).
 */
import { expect, it } from "vitest";
import { rollingTime } from "../../src/science/cover-crop/weeds.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [60, "too-early"],
  [61, "in-time"],
  [67, "in-time"],
  [72, "in-time"],
  [73, "too-late"],
])("rolling at Zadoks %d: %s", (zadoks, says) => {
  expect(reached(rollingTime(zadoks)).when).toBe(says);
});
