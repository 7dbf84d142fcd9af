/** Everything that was measured on a field, worked out in one go: lines, holes and rings. */
import {
  type HoleOfField,
  type WormsOnDay,
  wormsOfField,
  wormsOfGrass,
} from "./earthworms/worms-of-field.ts";
import {
  type CoverWanted,
  coverOfField,
  type FieldCover,
  type LineOfField,
} from "./ground-cover/field-cover.ts";
import {
  type RingOfField,
  type SoakedOnDay,
  soakedOfField,
  soakedOfGrass,
} from "./infiltration/soaked-of-field.ts";
import type { OnGrass } from "./together.ts";

/** The tests of a field, each kind oldest first. */
export interface TestsOfField {
  readonly lines: readonly LineOfField[];
  readonly holes: readonly HoleOfField[];
  readonly rings: readonly RingOfField[];
}

/** Worms and soak-in of a field, newest day first. They do not depend on what a person counts as cover. */
export interface HolesAndRings {
  readonly worms: readonly WormsOnDay[];
  readonly soaked: readonly SoakedOnDay[];
  /** At old-grass spots; none of it stands among the strips. */
  readonly oldGrass: {
    readonly worms: readonly OnGrass<WormsOnDay>[];
    readonly soaked: readonly OnGrass<SoakedOnDay>[];
  };
}

/** What the tests of a field say. */
export interface FieldResults extends HolesAndRings {
  readonly cover: FieldCover;
}

/**
 * The results of a field by strip and day, and those of its old grass by day.
 *
 * Source: `coverOfField`, `wormsOfField`, `soakedOfField`.
 *
 * @example
 * resultsOfField({ lines, holes, rings }, { stoneCounts: false, target: null }).worms[0];
 */
export const resultsOfField = (tests: TestsOfField, wanted: CoverWanted): FieldResults => ({
  cover: coverOfField(tests.lines, wanted),
  worms: wormsOfField(tests.holes),
  soaked: soakedOfField(tests.rings),
  oldGrass: { worms: wormsOfGrass(tests.holes), soaked: soakedOfGrass(tests.rings) },
});
