/**
 * Source: Sustainable Agriculture Network, Managing cover crops profitably.
 * Mark: published (half of the nitrogen in the first season tilled in or on the surface in the South, a quarter on the
 * surface in the North).
 */
import { describe, expect, it } from "vitest";
import { firstSeasonNitrogen } from "../../src/science/nitrogen/tie-up.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

describe("the first season", () => {
  it.each([
    ["tilled-in", 50],
    ["surface-warm-region", 50],
    ["surface-cold-region", 25],
  ] as const)("4000 lb/ac of 2.5 %% N hold 100 lb: %s", (end, pounds) => {
    // Pounds per acre in, pounds per acre out: a share has no unit.
    const nitrogen = firstSeasonNitrogen(
      figure("mass", 4000, "kg/har"),
      figure("nitrogen-share", 0.025),
      end,
    );
    expect(reached(nitrogen).middle).toBeCloseTo(pounds, 9);
  });
});
