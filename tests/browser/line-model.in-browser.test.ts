import { signal } from "@preact/signals";
import { afterEach, expect, test } from "vitest";
import { ENTRY_VERSION } from "../../src/record/entry.ts";
import type { RecordId } from "../../src/record/ids.ts";
import type { LineHeader } from "../../src/record/kinds/observation.ts";
import { readNumber } from "../../src/record/number.ts";
import type { Problem } from "../../src/record/result.ts";
import { CATALOGUES } from "../../src/screens/catalogue.ts";
import { type LineModel, lineModel } from "../../src/screens/measure/line/model.ts";
import { sayEntry } from "../../src/screens/measure/line/say.ts";
import type { House } from "../../src/screens/parts/house.ts";
import { newPen } from "../../src/screens/parts/pen.ts";
import { newReader } from "../../src/screens/parts/reader.ts";
import { FIRST_SETTINGS } from "../../src/screens/parts/settings.ts";
import { TRADE_WORDS } from "../../src/screens/parts/trade.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import { update } from "../../src/store/write.ts";
import { freshName, listening, need } from "./store-samples.ts";

const open: Store[] = [];
afterEach(() => {
  for (const store of open.splice(0)) store.close();
});

const nowhere = { position: null, why: "not-asked" } as const;

/** A line on a rope of `marks` marks in a database of its own, and the model of it. */
const lineOn = async (
  marks: number,
  header: Partial<LineHeader> = {},
): Promise<{ model: LineModel; house: House; problems: Problem[]; line: RecordId<"observation"> }> => {
  const store = need(await openStore({ tell: listening().tell, reload: () => undefined, name: freshName() }));
  open.push(store);
  const problems: Problem[] = [];
  const words = CATALOGUES.en(TRADE_WORDS["uk-ie"]);
  const house = {
    records: newReader(store),
    write: (...commands) => store.run(commands),
    pen: newPen("d".repeat(16), () => null),
    settings: signal(FIRST_SETTINGS),
    words: signal(words),
    tell: (problem) => problems.push(problem),
  } as Partial<House> as House;
  const { pen } = house;
  const field = pen.write("field", {
    name: "Long Field",
    farm: null,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  });
  const strip = pen.write("strip", { field: field.id, name: "A", done: [], wholeField: true, rep: null });
  const visit = pen.write("visit", { field: field.id, day: "2026-04-01", harvestYear: null });
  const rope = pen.write("kit", { type: "rope", name: "R", marks, spacingM: 0.15 });
  const line = pen.write("observation", {
    type: "line",
    visit: visit.id,
    field: field.id,
    strip: strip.id,
    rope: rope.id,
    way: "mark-by-mark",
    angleToRowsDeg: 45,
    rowSpacingM: null,
    passWidthM: null,
    place: null,
    start: nowhere,
    end: nowhere,
    person: null,
    fifthKey: null,
    askThickness: false,
    startedAtMs: 0,
    ...header,
  });
  need(await house.write(field, strip, visit, rope, line));
  const model = lineModel(house, line.id);
  await model.refresh();
  return { model, house, problems, line: line.id };
};

const saidLast = (house: House, model: LineModel): string => {
  const last = model.last.value;
  return last === null ? "" : sayEntry(house.words.value, null, last);
};

test("touches go to one mark after the other, and the line is over at the last mark", async () => {
  const { model } = await lineOn(3);
  await model.touch("residue", 0);
  model.setStance("standing");
  await model.touch("residue", 1000);
  expect(model.reading.value?.next).toBe(3);
  expect(model.finished.value).toBe(false);
  await model.touch("bare", 2000);
  expect(model.finished.value).toBe(true);
  expect(model.reading.value?.tally).toMatchObject({ residueFlat: 1, residueStanding: 1, bare: 1 });
});

test("wet glass: another key within 250 ms is no answer, the same key is", async () => {
  const { model } = await lineOn(10);
  await model.touch("residue", 1000);
  await model.touch("bare", 1249);
  await model.touch("residue", 1250);
  expect(model.reading.value?.tally).toMatchObject({ residueFlat: 2, bare: 0 });
});

test("touches sent without waiting keep their order", async () => {
  const { model } = await lineOn(20);
  const answers = ["residue", "bare", "green", "stone"] as const;
  await Promise.all(Array.from({ length: 16 }, (_, at) => model.touch(answers[at % 4] ?? "bare", at * 1000)));
  expect([...(model.reading.value?.marks ?? [])].map(([mark, { cover }]) => [mark, cover])).toEqual(
    Array.from({ length: 16 }, (_, at) => [at + 1, answers[at % 4]]),
  );
});

test("undo goes back to the first touch and says what it undid; redo brings it back", async () => {
  const { model, house, problems } = await lineOn(10);
  await model.touch("residue", 0);
  await model.touch("bare", 1000);
  await model.undo();
  expect(saidLast(house, model)).toBe("Undone: mark 2: bare");
  await model.undo();
  expect(model.reading.value?.next).toBe(1);
  expect(model.reading.value?.undoable).toBeNull();
  await model.redo();
  expect(saidLast(house, model)).toBe("Redone: mark 1: residue, flat");
  await model.redo();
  expect(model.reading.value?.tally).toMatchObject({ residueFlat: 1, bare: 1 });
  await model.redo();
  expect(problems.map(({ code }) => code)).toEqual(["record/nothing-to-redo"]);
});

test("a corrected mark stays visible as corrected, and the next mark stays the next", async () => {
  const { model } = await lineOn(10);
  await model.touch("residue", 0);
  await model.touch("residue", 1000);
  await model.correct(1, "green", "flat");
  expect(model.reading.value?.marks.get(1)).toMatchObject({ cover: "green", corrected: true });
  expect(model.reading.value?.next).toBe(3);
  await model.undo();
  expect(model.reading.value?.marks.get(1)).toMatchObject({ cover: "residue", corrected: false });
});

test("a set mark number leaves a gap that is not read; the line ends at any mark", async () => {
  const { model } = await lineOn(100);
  await model.touch("residue", 0);
  await model.setMark(60);
  await model.touch("bare", 1000);
  await model.endHere();
  expect(model.reading.value?.endedAt).toBe(60);
  expect(model.reading.value?.tally).toMatchObject({ residueFlat: 1, bare: 1, notRead: 58 });
  await model.undo();
  expect(model.finished.value).toBe(false);
});

test("the thickness is asked at every tenth mark, and a kept odd value is flagged", async () => {
  const { model } = await lineOn(30, { askThickness: true });
  for (let mark = 1; mark <= 10; mark++) await model.touch("residue", mark * 1000);
  expect(model.asking.value).toBe("thickness");
  expect(model.correcting.value).toBe(10);
  await model.thickness(10, need(readNumber("12,5", { min: 0, max: 300 })), "mm");
  expect(model.reading.value?.thickness.get(10)).toMatchObject({ value: 12.5, typed: "12,5", unit: "mm" });
  expect(model.asking.value).toBe("marks");
  await model.thickness(10, need(readNumber("400", { min: 0, max: 300 })), "mm");
  expect(model.reading.value?.thickness.get(10)).toMatchObject({ value: 400, unusual: true });
});

test("misses only: what was not called is residue once the line has ended", async () => {
  const { model } = await lineOn(50, { way: "misses-only" });
  await model.miss(7, "bare");
  await model.miss(21, "stone");
  expect(model.finished.value).toBe(false);
  model.setStance("standing");
  await model.endAt(50);
  expect(model.finished.value).toBe(true);
  expect(model.reading.value?.tally).toMatchObject({ residueStanding: 48, bare: 1, stone: 1, notRead: 0 });
});

test("totals are the whole line at once", async () => {
  const { model } = await lineOn(100, { way: "totals" });
  await model.totals({ flat: 40, standing: 4, green: 6, bare: 50, stone: 0, own: 0 });
  expect(model.finished.value).toBe(true);
  expect(model.reading.value?.tally).toMatchObject({ residueFlat: 40, residueStanding: 4, bare: 50 });
});

test("another window's touches appear after a look", async () => {
  const { model, house, line } = await lineOn(10);
  const other = lineModel(house, line);
  await other.refresh();
  await other.touch("green", 0);
  await model.refresh();
  expect(model.reading.value?.tally.green).toBe(1);
  await model.touch("residue", 0);
  expect(model.reading.value?.marks.get(2)?.cover).toBe("residue");
});

test("two windows with two totals: neither counts until one is chosen", async () => {
  const { model, house, line } = await lineOn(100, { way: "totals" });
  const sums = { flat: 40, standing: 0, green: 0, bare: 60, stone: 0, own: 0 };
  const totals = (id: string, bare: number) =>
    ({
      v: ENTRY_VERSION,
      id: id.repeat(16),
      n: 1,
      lookedAtMs: 0,
      enteredAtMs: 0,
      monoMs: 0,
      page: "a".repeat(16),
      device: "a".repeat(16),
      by: null,
      type: "totals",
      ...sums,
      bare,
    }) as const;
  // As a file from another phone brings them in.
  need(
    await update(house.records.connection, [line], (stored) =>
      [...stored.values()].map((record) => ({ ...record, entries: [totals("1", 60), totals("2", 50)] })),
    ),
  );
  await model.refresh();
  expect(model.finished.value).toBe(false);
  expect(model.reading.value?.totalsInDoubt).toHaveLength(2);
  const [first] = model.reading.value?.totalsInDoubt ?? [];
  if (first === undefined) throw new Error("no totals");
  await model.choose(first);
  expect(model.finished.value).toBe(true);
  expect(model.reading.value?.tally).toMatchObject({ residueFlat: 40, bare: first.bare, unsettled: 0 });
});
