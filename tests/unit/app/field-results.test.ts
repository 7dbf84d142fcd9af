import { expect, it } from "vitest";
import { countOfHole, soakingOfRing } from "../../../src/app/workers/holes-rings.ts";
import type { RecordId } from "../../../src/record/ids.ts";
import type { Kit } from "../../../src/record/kinds/kit.ts";
import { wormsOfField, wormsOfGrass } from "../../../src/science/earthworms/worms-of-field.ts";
import { soakedOfField, soakedOfGrass } from "../../../src/science/infiltration/soaked-of-field.ts";
import { entriesAt, holeOf, levelAt, ringOf, startAt } from "../../bench/seed-rings.ts";
import { idOf } from "../record/made-up.ts";

const at = { visit: idOf("visit", 1), field: idOf("field", 1), strip: idOf("strip", 1) };
const on = { ...at, oldGrass: null, place: null };
const grass = { oldGrass: idOf("spot", 1) };
const ringId = idOf("kit", 1);
const kit = new Map<RecordId, Kit>([
  [ringId, { type: "ring", name: "A", insideM: [0.15, null], heightsM: [], outsideM: null }],
]);

const hole = (worms: number, day = "2024-05-07") => ({
  ...on,
  day,
  count: countOfHole(
    holeOf(at),
    entriesAt([
      [0, { type: "found", from: "soil", count: worms, typed: String(worms) }],
      [1, { type: "closed" }],
    ]),
    kit,
  ),
});

/** A ring that drops so many millimetres a minute, read every half hour. */
const ring = (number: number, mmPerMin: number, minutes: number, follows: number | null = null) => {
  const levels = Array.from({ length: minutes / 30 + 1 }, (_, at) => at * 30);
  return {
    ...on,
    id: idOf("observation", number),
    day: "2024-05-07",
    follows: follows === null ? null : idOf("observation", follows),
    soaking: soakingOfRing(
      ringOf({ ...at, ring: ringId }),
      entriesAt([[0, startAt], ...levels.map((at) => [at, levelAt(500 - at * mmPerMin)] as const)]),
      kit,
    ),
  };
};

it("puts holes of one strip and day together, newest day first", () => {
  const [newest, older] = wormsOfField([hole(4, "2023-05-01"), hole(9), hole(14), hole(4)]);
  expect(newest?.day).toBe("2024-05-07");
  // 27 worms in three holes of 20 × 20 cm: 9 a hole, 225 per m².
  expect(newest?.perHole).toMatchObject({ ok: true, value: { value: 9, n: 3, range: { ok: true } } });
  expect(newest?.perM2).toMatchObject({ ok: true, value: { n: 3 } });
  expect(newest?.perM2.ok === true && newest.perM2.value.value).toBeCloseTo(225, 9);
  expect(older?.perHole).toMatchObject({ ok: true, value: { value: 4, n: 1, range: { ok: false } } });
});

it("says a hole without an entry is open", () => {
  const open = { ...on, day: "2024-05-07", count: countOfHole(holeOf(at), [], kit) };
  expect(wormsOfField([open])[0]).toMatchObject({ unfinished: 1, perHole: { ok: false } });
});

it("takes the geometric mean of the rings that were read so long, and says how many stood there", () => {
  const [found] = soakedOfField([ring(1, 0.5, 180), ring(2, 1, 60), ring(3, 2, 60)]);
  const after = (minutes: number) => found?.after.find((one) => one.minutes === minutes)?.depth;
  expect(found?.rings).toBe(3);
  const hour = after(60);
  // 30, 60 and 120 mm: their geometric mean is 60.
  expect(hour?.ok === true && hour.value.value).toBeCloseTo(60, 9);
  expect(after(180)).toMatchObject({ ok: true, value: { n: 1, range: { ok: false } } });
});

it("says for each depth how many rings were not read that long: the fast ones run dry first", () => {
  // Two of five ran dry before the hour, three before three hours; a sixth goes on from the fifth after a leak.
  const rings = [ring(1, 0.5, 180), ring(2, 1, 180), ring(3, 2, 60), ring(4, 4, 30), ring(5, 5, 30)];
  const gap = (minutes: number, missing: number) => ({
    code: "science/rings-not-read-so-long",
    facts: { minutes, rings: missing, of: 5 },
  });
  const gapsOf = (some: typeof rings) =>
    soakedOfField(some)[0]?.cautions.filter(({ code }) => code === "science/rings-not-read-so-long");
  expect(gapsOf(rings)).toEqual([gap(60, 2), gap(180, 3)]);
  expect(gapsOf([...rings, ring(6, 1, 60, 5)])).toEqual([gap(60, 1), gap(180, 3)]);
  // A depth that no ring reached is no mean that could come out low.
  expect(soakedOfField([ring(1, 0.5, 60), ring(2, 1, 60)])[0]?.cautions).toEqual([]);
});

it("says that a ring is over a burrow, and not that burrows may have been missed after it ran dry", () => {
  const overBurrow = {
    ...ring(5, 5, 30),
    soaking: soakingOfRing(
      ringOf({ ...at, ring: ringId }),
      entriesAt([
        [0, startAt],
        [0, levelAt(500)],
        [20, { type: "happened", what: "burrow", words: "", timed: "now" }],
        [30, levelAt(350)],
      ]),
      kit,
    ),
  };
  const rings = [ring(1, 0.5, 180), ring(2, 1, 180), ring(3, 2, 180), ring(4, 1.5, 180)];
  const said = (all: typeof rings) => soakedOfField(all)[0]?.cautions.map(({ code }) => code) ?? [];
  expect(said(rings)).toContain("science/few-rings-may-miss-burrows");
  expect(said([...rings, overBurrow])).toContain("science/rings-with-burrow");
  expect(said([...rings, overBurrow])).not.toContain("science/few-rings-may-miss-burrows");
});

it("counts a ring that goes on after a leak once", () => {
  const [found] = soakedOfField([ring(1, 1, 60), ring(2, 2, 60, 1), ring(3, 2, 30, 2)]);
  expect(found?.rings).toBe(1);
  const [half, hour] = found?.after ?? [];
  // The last of the three stands for the half hour, the second for the hour that the last did not reach.
  expect(half?.depth).toMatchObject({ ok: true, value: { n: 1 } });
  expect(hour?.depth.ok === true && hour.depth.value.value).toBeCloseTo(120, 9);
});

it("says why nothing soaked in is known without the ring", () => {
  const lost = soakingOfRing(ringOf({ ...at, ring: idOf("kit", 9) }), [], kit);
  expect(lost).toMatchObject({ ok: false, problem: { code: "science/not-a-ring" } });
});

it("says at which places against the row the tests of a strip lie", () => {
  const [there, between] = [{ place: "wheel-track" }, { place: "between-rows" }] as const;
  expect(wormsOfField([hole(4), { ...hole(9), ...there }, { ...hole(9), ...there }])[0]?.places).toEqual([
    null,
    "wheel-track",
  ]);
  const rings = [
    { ...ring(1, 1, 60), ...there },
    { ...ring(2, 1, 60), ...between },
  ];
  expect(soakedOfField(rings)[0]?.places).toEqual(["wheel-track", "between-rows"]);
});

it("keeps holes on old grass out of the strip and puts them together by themselves", () => {
  const holes = [hole(4), { ...hole(30), ...grass }, hole(8), { ...hole(20), ...grass }];
  // 12 worms in two holes of the strip, 50 in two on old grass: 6 and 25 by hand.
  expect(wormsOfField(holes)).toMatchObject([
    { strip: idOf("strip", 1), perHole: { value: { value: 6, n: 2 } } },
  ]);
  expect(wormsOfGrass(holes)).toMatchObject([
    { spots: [idOf("spot", 1)], perHole: { value: { value: 25, n: 2 } } },
  ]);
});

it("keeps rings on old grass out of the strip and puts them together by themselves", () => {
  const rings = [ring(1, 0.5, 60), { ...ring(2, 4, 60), ...grass }, ring(3, 2, 60)];
  // 30 and 120 mm in an hour: their geometric mean is 60; the ring on grass took in 240 mm.
  expect(soakedOfField(rings)[0]?.rings).toBe(2);
  const [strip, alone] = [soakedOfField(rings), soakedOfGrass(rings)].map((found) => {
    const depth = found[0]?.after.find(({ minutes }) => minutes === 60)?.depth;
    return depth?.ok === true ? depth.value.value : null;
  });
  expect(strip).toBeCloseTo(60, 9);
  expect(alone).toBeCloseTo(240, 9);
});
