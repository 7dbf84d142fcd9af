import { expect, it } from "vitest";
import { grassOf, NO_STRIP } from "../../../src/record/ground.ts";
import { isRecordId, type RecordId } from "../../../src/record/ids.ts";
import { idOf } from "./made-up.ts";

const [grass, stake, unknown] = [1, 2, 3].map((number) => idOf("spot", number));
if (grass === undefined || stake === undefined || unknown === undefined) throw new Error("no spots");
const oldGrass = new Map([
  [grass, true],
  [stake, false],
]);
const spots = (spot: RecordId<"spot">) => oldGrass.get(spot);
const strip = idOf("strip", 1);

it("names no strip by an id that every file takes", () => {
  expect(isRecordId(NO_STRIP)).toBe(true);
});

it("goes by what the spot is, whatever strip a test names", () => {
  expect(grassOf(spots, { strip, spot: grass })).toBe(grass);
  expect(grassOf(spots, { strip: NO_STRIP, spot: grass })).toBe(grass);
  expect(grassOf(spots, { strip, spot: stake })).toBeNull();
  expect(grassOf(spots, { strip })).toBeNull();
});

it("takes a spot that is not here for old grass when the test names no strip", () => {
  expect(grassOf(spots, { strip: NO_STRIP, spot: unknown })).toBe(unknown);
  expect(grassOf(spots, { strip, spot: unknown })).toBeNull();
});

it("takes nobody's word for old grass against what the spot is now", () => {
  expect(grassOf(spots, { strip: NO_STRIP, spot: stake })).toBeNull();
});
