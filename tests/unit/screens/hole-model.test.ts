import { expect, it } from "vitest";
import { ENTRY_VERSION } from "../../../src/record/entry.ts";
import { readNumber } from "../../../src/record/number.ts";
import { holeModel } from "../../../src/screens/measure/hole/model.ts";
import { sayEntry } from "../../../src/screens/measure/hole/say.ts";
import { rawRows } from "../../../src/screens/measure/hole/sheet-model.ts";
import { doubtsOf, layerOf, taskOf } from "../../../src/screens/measure/hole/stand.ts";
import { HOLE_WORDS } from "../../../src/screens/measure/hole/words.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { fieldDay, type HouseInMemory, holeOn, houseInMemory } from "./hole-house.ts";

const words = HOLE_WORDS.en(TRADE_WORDS["uk-ie"]);

const begin = async (made: HouseInMemory = houseInMemory()) => {
  const hole = await holeOn(made, await fieldDay(made));
  const model = holeModel(made.house, hole);
  await model.refresh();
  const said = (): string => {
    const last = model.last.value;
    return last === null ? "" : sayEntry(words, made.house.settings.value.habits, last);
  };
  return { ...made, hole, model, said };
};

const typed = (text: string) => {
  const read = readNumber(text, { min: -1, max: 1000 });
  if (!read.ok) throw new Error(read.problem.code);
  return read.value;
};

it("counts worms per layer, the mulch first, and adds the layers up", async () => {
  const { model } = await begin();
  expect(model.layer.value).toBe("mulch");
  await model.worm(0);
  await model.lookAt("soil");
  await model.worm(1000);
  await model.worm(2000);
  const { found, foundTotal } = model.reading.value;
  expect([found.mulch.count, found.soil.count, foundTotal]).toEqual([1, 2, 3]);
  expect(found["mustard-water"].looked).toBe(false);
});

it("takes a touch on another kind within a quarter of a second for wet glass", async () => {
  const { model } = await begin();
  await model.place("young", 1000);
  await model.place("deep", 1249);
  await model.place("young", 1250);
  expect(model.reading.value.placed).toMatchObject({ young: { count: 2 }, deep: { count: 0 } });
});

it("says how many of the pot are placed, and more placed than found", async () => {
  const { model } = await begin();
  await model.lookAt("soil");
  await model.countAtOnce("soil", typed("3"));
  await model.place("young", 0);
  await model.place("topsoil", 1000);
  const { foundTotal, placedTotal, left, cautions } = model.reading.value;
  expect(words.tally(foundTotal, placedTotal, left)).toBe("3 found, 2 placed, 1 left");
  expect(cautions).toEqual([]);
  await model.place("deep", 2000);
  await model.place("deep", 3000);
  expect(model.reading.value.left).toBe(0);
  expect(model.reading.value.cautions).toEqual([
    { code: "record/more-placed-than-found", facts: { found: 3, placed: 4, more: 1 } },
  ]);
});

it("undoes to the first touch and says what, and brings all of it back", async () => {
  const { model, said } = await begin();
  await model.worm(0);
  await model.lookAt("soil");
  await model.countAtOnce("soil", typed("11"));
  await model.place("deep", 1000);
  const back: string[] = [];
  while (model.reading.value.undoable !== null) {
    await model.undo();
    back.push(said());
  }
  expect(back).toEqual([
    "Undone: deep burrower",
    "Undone: 11 worms from the soil, counted at once",
    "Undone: worm from the mulch",
  ]);
  expect(model.reading.value.foundTotal).toBe(0);
  await model.redo();
  expect(said()).toBe("Redone: worm from the mulch");
  await model.redo();
  await model.redo();
  expect(model.reading.value).toMatchObject({ foundTotal: 12, placedTotal: 1, redoable: null });
});

it("puts a number in the place of what was counted, keeps both, and goes on from it", async () => {
  const { model } = await begin();
  await model.lookAt("soil");
  for (let at = 0; at < 4; at++) await model.worm(at * 1000);
  await model.countAtOnce("soil", typed("6"));
  await model.worm(9000);
  expect(model.reading.value.found.soil.count).toBe(7);
  expect(rawRows(model.entries.value).map(({ entry, times, fate }) => [entry.type, times, fate])).toEqual([
    ["worm", 4, "replaced"],
    ["found", 1, "counts"],
    ["worm", 1, "counts"],
  ]);
});

it("takes the people along from the mulch to the soil, and pauses them when mustard water is poured", async () => {
  const { model } = await begin();
  await model.sort(2);
  await model.lookAt("soil");
  const open = (layer: "mulch" | "soil") =>
    model.reading.value.sorting[layer]
      .filter(({ lastedMs }) => lastedMs === null)
      .map(({ people }) => people);
  expect([open("mulch"), open("soil")]).toEqual([[], [2]]);
  await model.lookAt("mustard-water");
  expect(open("soil")).toEqual([2]);
  await model.pour();
  expect(open("soil")).toEqual([]);
  expect(model.reading.value.mustard).toHaveLength(1);
});

it("keeps the moment of a pouring when the litres follow later", async () => {
  const { model } = await begin();
  await model.pour();
  const [first] = model.reading.value.mustard;
  if (first === undefined) throw new Error("not poured");
  await model.pouredLitres(first.entry.id, 2);
  const { mustard } = model.reading.value;
  expect(mustard).toHaveLength(1);
  expect(mustard[0]?.entry.litres).toBe(2);
  expect(mustard[0]?.poured.lookedAtMs).toBe(first.entry.lookedAtMs);
});

it("takes conditions as before in one touch, and a later answer in the place of an earlier one", async () => {
  const { model } = await begin();
  await model.temperature(typed("9"), "C");
  await model.wetness("moist");
  await model.wetness("dry");
  const other = await begin();
  await other.model.conditionsAs({
    temperature: model.reading.value.soilTemperature?.entry ?? null,
    wetness: model.reading.value.wetness?.entry ?? null,
  });
  expect(other.model.reading.value).toMatchObject({
    soilTemperature: { value: 9 },
    wetness: { value: "dry" },
    wetnessInDoubt: [],
  });
});

it("is no result while two phones contradict each other, until one answer is chosen", async () => {
  const made = await begin();
  const { model, hole } = made;
  await model.countAtOnce("soil", typed("11"));
  made.bringIn(hole, {
    v: ENTRY_VERSION,
    id: "e".repeat(16),
    n: 1,
    lookedAtMs: 0,
    enteredAtMs: 0,
    monoMs: 0,
    page: "b".repeat(16),
    device: "b".repeat(16),
    by: null,
    type: "found",
    from: "soil",
    count: 9,
    typed: "9",
  });
  await model.refresh();
  expect(doubtsOf(model.reading.value)).toBe(1);
  expect(model.reading.value.settled).toBe(false);
  const nine = model.reading.value.found.soil.inDoubt.find(({ count }) => count === 9);
  if (nine === undefined) throw new Error("no second answer");
  await model.choose(nine);
  expect(model.reading.value).toMatchObject({ settled: true, foundTotal: 9 });
  expect(doubtsOf(model.reading.value)).toBe(0);
});

it("comes back to the layer and the task where work stopped", async () => {
  const made = await begin();
  await made.model.lookAt("soil");
  await made.model.worm(0);
  const again = holeModel(made.house, made.hole);
  await again.refresh();
  expect([again.layer.value, again.task.value]).toEqual(["soil", "find"]);
  await again.place("young", 5000);
  expect([layerOf(again.entries.value), taskOf(again.entries.value)]).toEqual(["soil", "place"]);
});

it("goes on after the hole was closed by mistake", async () => {
  const { model, said } = await begin();
  await model.close();
  expect(model.reading.value).toMatchObject({ finished: true });
  await model.undo();
  expect(said()).toBe("Undone: hole closed");
  expect(model.reading.value.closed).toBeNull();
});
