import { expect, it } from "vitest";
import { NO_STRIP } from "../../../src/record/ground.ts";
import { readNumber } from "../../../src/record/number.ts";
import { HABITS } from "../../../src/record/units.ts";
import { holesOfDay } from "../../../src/screens/measure/hole/holes-of-day.ts";
import { holeModel } from "../../../src/screens/measure/hole/model.ts";
import {
  beginHole,
  dimensionsOf,
  readDig,
  seasonBeside,
} from "../../../src/screens/measure/hole/new-model.ts";
import { readHoleSheet } from "../../../src/screens/measure/hole/sheet-model.ts";
import { minutesSeconds, sizeWords, usualWater } from "../../../src/screens/measure/hole/sizes.ts";
import { readStripHoles } from "../../../src/screens/measure/hole/strip-model.ts";
import { HOLE_WORDS } from "../../../src/screens/measure/hole/words.ts";
import { groundToKeep } from "../../../src/screens/measure/set-out/ground.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { fieldDay, type HouseInMemory, holeOn, houseInMemory, nowhere } from "./hole-house.ts";

const words = HOLE_WORDS.en(TRADE_WORDS["uk-ie"]);

const counted = async (
  made: HouseInMemory,
  on: Awaited<ReturnType<typeof fieldDay>>,
  number: number,
  worms: number,
) => {
  const hole = await holeOn(made, on, { number, method: "levy-board", minutes: 5 });
  const model = holeModel(made.house, hole);
  await model.refresh();
  const read = readNumber(String(worms), { min: -1, max: 1000 });
  if (!read.ok) throw new Error(read.problem.code);
  await model.countAtOnce("soil", read.value);
  return { hole, model };
};

it("gives the next hole the next number, as the last one was", async () => {
  const made = houseInMemory();
  const on = await fieldDay(made);
  await counted(made, on, 4, 2);
  const dig = await readDig(made.house, on.visit);
  if (dig === null) throw new Error("no visit");
  expect(dig.number).toBe(5);
  expect(dig.first).toMatchObject({ method: "levy-board", landUse: "cropland", ground: { strip: on.strip } });
  const dimensions = dimensionsOf(dig.first);
  if (dimensions === null) throw new Error("no size");
  const hole = await beginHole(made.house, dig, {
    choices: dig.first,
    ground: { strip: on.strip },
    dimensions,
    at: nowhere,
    guess: null,
  });
  const visit = await made.house.records.one(on.visit);
  if (visit === undefined || hole === null) throw new Error("not begun");
  expect((await holesOfDay(made.house.records, visit)).map(({ header }) => header.number)).toEqual([4, 5]);
});

it("keeps a guess with the first hole of a strip, and asks no more after it", async () => {
  const made = houseInMemory();
  const on = await fieldDay(made);
  const dig = await readDig(made.house, on.visit);
  if (dig === null) throw new Error("no visit");
  const dimensions = dimensionsOf(dig.first);
  if (dimensions === null) throw new Error("no size");
  await beginHole(made.house, dig, {
    choices: dig.first,
    ground: { strip: on.strip },
    dimensions,
    at: nowhere,
    guess: 12,
  });
  const again = await readDig(made.house, on.visit);
  expect(again?.guesses.get(on.strip)).toBe(12);
  expect(again?.dug.has(on.strip)).toBe(true);
  expect((await readStripHoles(made.house.records, on.visit, on.strip))?.guess).toBe(12);
});

it("knows own sizes again at the next hole", async () => {
  const made = houseInMemory();
  const on = await fieldDay(made);
  await holeOn(made, on, { sidesM: [0.3, 0.25], depthM: 0.15, mustardMin: 10 });
  const dig = await readDig(made.house, on.visit);
  expect(dig?.first).toMatchObject({
    method: null,
    own: { sidesM: [0.3, 0.25], depthM: 0.15, mustardMin: 10 },
  });
});

it("says a season beside a method, half a year later on the southern half", () => {
  const spring = { hemisphere: "north", months: [3, 4] } as const;
  expect(seasonBeside(spring, "2026-04-09", "north")).toBeNull();
  expect(seasonBeside(spring, "2026-11-25", "north")).toEqual({ months: [3, 4], known: true });
  expect(seasonBeside(spring, "2026-11-25", "south")).toEqual({ months: [9, 10], known: true });
  expect(seasonBeside(spring, "2026-11-25", null)).toEqual({ months: [3, 4], known: false });
  expect(seasonBeside(null, "2026-11-25", "north")).toBeNull();
  expect(words.months([9, 10])).toBe("September and October");
});

it("gives a strip its mean from the first hole and a range from three on", async () => {
  const made = houseInMemory();
  const on = await fieldDay(made);
  expect(await readStripHoles(made.house.records, on.visit, on.strip)).toBeNull();
  await counted(made, on, 1, 9);
  const one = await readStripHoles(made.house.records, on.visit, on.strip);
  expect(one?.perHole).toMatchObject({ ok: true, value: { value: 9, n: 1, range: { ok: false } } });
  // 9 worms in 20 × 20 cm are 225 per m²: Stroud 2019 (PLoS ONE 14(2): e0203909) gives 9 per pit as the mean.
  expect(one?.perM2).toMatchObject({ ok: true, value: { unit: "/m2" } });
  expect(one?.perM2.ok === true ? one.perM2.value.value : 0).toBeCloseTo(225, 9);
  await counted(made, on, 2, 14);
  await counted(made, on, 3, 4);
  const three = await readStripHoles(made.house.records, on.visit, on.strip);
  expect(three?.perHole).toMatchObject({ ok: true, value: { value: 9, n: 3, range: { ok: true } } });
  expect(three?.more?.ok).toBe(true);
  // A total alone says nothing of the kinds: that is not the same as absent.
  expect(three?.groups.every(({ share, notDetermined }) => !share.ok && notDetermined === 3)).toBe(true);
});

it("reads guides of the same hole, the one of the method first, and names no other", async () => {
  const made = houseInMemory();
  const on = await fieldDay(made, "2026-04-01");
  const at = {
    position: {
      latitudeDeg: 52,
      longitudeDeg: -1,
      accuracyM: 4,
      accuracyMeans: "68-percent",
      spreadM: null,
      fixes: 1,
      how: "standing-still",
      atMs: 0,
    },
    why: null,
  } as const;
  const hole = await holeOn(made, on, { method: "levy-board", at });
  const model = holeModel(made.house, hole);
  await model.refresh();
  await model.lookAt("soil");
  for (let worm = 0; worm < 9; worm++) await model.worm(worm * 1000);
  await model.close();
  const found = await readStripHoles(made.house.records, on.visit, on.strip);
  // More than 8 in 20 × 20 × 20 cm are many by that guide (from memory, see its source).
  expect(found?.guides[0]).toMatchObject({ guide: { id: "levy-board" }, level: { says: "many" } });
  expect(
    found?.guides.every(({ guide }) => guide.depthM === null || Math.abs(guide.depthM - 0.2) < 0.03),
  ).toBe(true);
});

it("says on the sheet that only young worms determine no kind, and that cold soil may be why there are few", async () => {
  const made = houseInMemory();
  const on = await fieldDay(made);
  const { hole, model } = await counted(made, on, 1, 1);
  await model.place("young", 0);
  const cold = readNumber("5", { min: -1, max: 35 });
  if (!cold.ok) throw new Error(cold.problem.code);
  await model.temperature(cold.value, "C");
  const sheet = await readHoleSheet(made.house, hole);
  expect(sheet?.perHole).toMatchObject({ ok: true, value: { value: 1 } });
  expect(sheet?.perHole.ok === true ? sheet.perHole.value.cautions.map(({ code }) => code) : []).toContain(
    "science/soil-cold",
  );
  expect(sheet?.count).toMatchObject({ placed: { young: 1, surface: 0 }, left: 0 });
});

it("writes sizes and times as people say them", () => {
  expect(sizeWords(words, { sidesM: [0.2, 0.2], depthM: 0.2 }, HABITS.metric)).toBe("20 × 20 cm, 20 cm deep");
  expect(sizeWords(words, { sidesM: [0.3048, 0.3048], depthM: 0.3048 }, HABITS.us)).toBe(
    "12 × 12 in, 12 in deep",
  );
  expect([0, 0.5, 6 + 40 / 60, 61].map(minutesSeconds)).toEqual(["0:00", "0:30", "6:40", "61:00"]);
});

it("takes nothing over from a hole on old grass, counts none of it with the strip, and goes on numbering", async () => {
  const made = houseInMemory();
  const on = await fieldDay(made);
  const { model } = await counted(made, on, 1, 6);
  await model.close();
  const spot = made.house.pen.write("spot", {
    field: on.field,
    strip: null,
    name: "old pasture",
    position: null,
    oldGrass: true,
  });
  await made.house.write(spot);
  const first = await readDig(made.house, on.visit);
  if (first === null) throw new Error("no visit");
  expect(first.spots).toMatchObject([{ id: spot.id, oldGrass: true, strip: null }]);
  const dimensions = dimensionsOf(first.first);
  const ground = groundToKeep({ strip: null, spot: spot.id }, first.spots);
  if (dimensions === null || ground === null) throw new Error("cannot begin");
  const hole = await beginHole(made.house, first, {
    choices: { ...first.first, landUse: "grassland" },
    ground,
    dimensions,
    at: nowhere,
    guess: null,
  });
  const stored = hole === null ? undefined : await made.house.records.one(hole);
  expect(stored?.body).toMatchObject({ strip: NO_STRIP, spot: spot.id, number: 2 });
  const next = await readDig(made.house, on.visit);
  expect(next?.number).toBe(3);
  expect(next?.last?.header.number).toBe(1);
  expect(next?.first).toMatchObject({ landUse: "cropland", ground: { strip: on.strip, spot: null } });
  // The 6 worms of the strip's one hole, and nothing of the one on old grass.
  const strip = await readStripHoles(made.house.records, on.visit, on.strip);
  expect(strip?.holes).toHaveLength(1);
  expect(strip?.perHole).toMatchObject({ ok: true, value: { value: 6, n: 1 } });
});

it("asks about the same amount of mustard water in every unit", () => {
  expect(usualWater(HABITS.metric)).toBe(15);
  // A US gallon is 231 cubic inches, 3.785411784 L (NIST Handbook 44, appendix C; from memory).
  expect(usualWater(HABITS.us)).toBeCloseTo(15 / 3.785_411_784, 9);
});
