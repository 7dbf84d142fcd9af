import { expect, it } from "vitest";
import { NO_STRIP } from "../../../src/record/ground.ts";
import type { Position } from "../../../src/record/shapes.ts";
import {
  farFrom,
  goToSpot,
  goToStrip,
  groundCorrected,
  groundToKeep,
  type SpotToChoose,
  withUsual,
} from "../../../src/screens/measure/set-out/ground.ts";
import { idOf } from "../record/made-up.ts";

const [left, off] = [idOf("strip", 1), idOf("strip", 2)] as const;
const spot = (number: number, more: Partial<SpotToChoose>): SpotToChoose => ({
  id: idOf("spot", number),
  name: "",
  oldGrass: false,
  strip: null,
  position: null,
  ...more,
});
const grass = spot(1, { oldGrass: true });
const onLeft = spot(2, { strip: left });
const unsaid = spot(3, {});
const spots = [grass, onLeft, unsaid];
const at = (strip: typeof left | null, one: SpotToChoose | null = null) => ({ strip, spot: one?.id ?? null });

it("fills the strip that a marked spot lies on, and none for old grass", () => {
  expect(goToSpot(at(off), onLeft, null)).toEqual(at(left, onLeft));
  expect(goToSpot(at(off), unsaid, null)).toEqual(at(off, unsaid));
  expect(goToSpot(at(off), grass, off)).toEqual(at(null, grass));
});

it("brings the usual strip back when old grass is left", () => {
  expect(goToSpot(at(null, grass), null, off)).toEqual(at(off));
  expect(goToSpot(at(null, grass), unsaid, off)).toEqual(at(off, unsaid));
  expect(goToSpot(at(left, onLeft), null, off)).toEqual(at(left));
});

it("leaves a spot that does not lie on the strip that was touched", () => {
  expect(goToStrip(at(left, onLeft), off, spots)).toEqual(at(off));
  expect(goToStrip(at(left, onLeft), left, spots)).toEqual(at(left, onLeft));
  expect(goToStrip(at(null, grass), off, spots)).toEqual(at(off));
  expect(goToStrip(at(null, unsaid), off, spots)).toEqual(at(off, unsaid));
});

it("never fills a strip in while old grass is chosen", () => {
  expect(withUsual(at(null), left, spots)).toEqual(at(left));
  expect(withUsual(at(off), left, spots)).toEqual(at(off));
  expect(withUsual(at(null, grass), left, spots)).toEqual(at(null, grass));
});

it("keeps old grass without a strip, and nothing before a strip is chosen", () => {
  expect(groundToKeep(at(null, grass), spots)).toEqual({ strip: NO_STRIP, spot: grass.id });
  expect(groundToKeep(at(left), spots)).toEqual({ strip: left });
  expect(groundToKeep(at(left, onLeft), spots)).toEqual({ strip: left, spot: onLeft.id });
  expect(groundToKeep(at(null, unsaid), spots)).toBeNull();
  // Deleted by another window meanwhile.
  expect(groundToKeep(at(null, spot(9, { oldGrass: true })), spots)).toBeNull();
});

it("lets the ground of a test stand as it did, also on old grass that is deleted", () => {
  const gone = at(null, spot(9, { oldGrass: true }));
  expect(groundCorrected(gone, gone, spots)).toEqual({});
  expect(groundCorrected(at(left, onLeft), at(left, onLeft), spots)).toEqual({});
  expect(groundCorrected(at(off), gone, spots)).toEqual({ strip: off });
  expect(groundCorrected(at(null), at(left), spots)).toBeNull();
  expect(groundCorrected(at(null, grass), at(left), spots)).toEqual({ strip: NO_STRIP, spot: grass.id });
});

it("tells how far a spot lies, and whether one may be standing at it", () => {
  const position = (northM: number, accuracyM: number): Position => ({
    // A degree of latitude is 111.1 km at 45° north (from memory): a metre is 0.000009°.
    latitudeDeg: 45 + northM / 111_132,
    longitudeDeg: 7,
    accuracyM,
    accuracyMeans: "68-percent",
    spreadM: null,
    fixes: 1,
    how: "standing-still",
    atMs: 0,
  });
  const marked = { position: position(0, 5) };
  expect(farFrom(marked, position(20, 4))).toMatchObject({ here: true });
  expect(farFrom(marked, position(26, 4))).toMatchObject({ here: false });
  expect(farFrom(marked, position(300, 4))?.metres).toBeCloseTo(300, 0);
  expect(farFrom(marked, null)).toBeNull();
  expect(farFrom({ position: null }, position(0, 4))).toBeNull();
});
