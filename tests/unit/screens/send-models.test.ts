import { describe, expect, it } from "vitest";
import { packEntries } from "../../../src/record/columns.ts";
import type { Kind, RecordId } from "../../../src/record/ids.ts";
import { joined } from "../../../src/record/joined.ts";
import { type RecordState, shown } from "../../../src/record/record.ts";
import { HABITS } from "../../../src/record/units.ts";
import { english } from "../../../src/screens/catalogue.ts";
import type { Listed } from "../../../src/screens/parts/reader.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { orphansAmong } from "../../../src/screens/send/deleted-model.ts";
import { doubtfulLines } from "../../../src/screens/send/doubts.ts";
import { differences } from "../../../src/screens/send/properties.ts";
import { RECORD_WORDS } from "../../../src/screens/send/words.records.ts";
import { SEND_WORDS } from "../../../src/screens/send/words.ts";
import { headerRow } from "../../../src/store/rows.ts";
import { beginSample, fieldOf, lineOf, marksRead } from "../../bench/seed.ts";

const trade = TRADE_WORDS["uk-ie"];
const words = { ...english(trade), ...SEND_WORDS.en(trade), records: RECORD_WORDS.en(trade) };
const speech = { words, known: new Map(), habits: HABITS.metric };

const listed = <K extends Kind>(record: RecordState<K>): Listed<K> => {
  const revision = shown(record);
  if (revision === undefined) throw new Error("a sample without a version");
  return {
    id: record.id,
    revision,
    body: revision.body,
    deleted: revision.deleted === true,
    versions: record.revs.length,
    row: headerRow(record) as Listed<K>["row"],
  };
};

const farmOf = (deletedStrip: boolean) => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add(
    "strip",
    { field, name: "left", done: ["straw-left"], wholeField: false, rep: null },
    deletedStrip ? { deleted: true } : {},
  );
  const rope = add("kit", { type: "rope", name: "R1", marks: 10, spacingM: 0.3 });
  const line = add("observation", lineOf({ visit, field, strip, rope }));
  const all = rows().records.map((row) => listed({ ...row, entries: [] }));
  return {
    field,
    strip,
    line,
    living: all.filter((one) => !one.deleted),
    deleted: all.filter((one) => one.deleted),
  };
};

const itself = joined([]);

describe("what stayed without its place", () => {
  it("is nothing while everything lives", () => {
    const { living, deleted } = farmOf(false);
    expect(orphansAmong(living, deleted, itself)).toEqual([]);
  });

  it("is the line of a deleted strip, under that strip", () => {
    const { living, deleted, strip, line } = farmOf(true);
    const [group, ...more] = orphansAmong(living, deleted, itself);
    expect(more).toEqual([]);
    expect(group?.parent).toBe(strip);
    expect(group?.deleted?.id).toBe(strip);
    expect(group?.stayed.map(({ id }) => id)).toEqual([line]);
  });

  it("stands under the field, not under its strip or visit, when all of them are gone", () => {
    const { living, field } = farmOf(true);
    const alone = living.filter(({ id }) => id.startsWith("observation"));
    const groups = orphansAmong(alone, [], itself);
    expect(groups.map(({ parent, deleted }) => [parent, deleted])).toEqual([[field, undefined]]);
  });

  it("is not what lives on in a record that was joined with the deleted one", () => {
    const { living, deleted, strip } = farmOf(true);
    const twin: RecordId<"strip"> = `strip-${"f".repeat(32)}`;
    const [other] = living.filter(({ id }) => id.startsWith("field"));
    if (other === undefined) throw new Error("the sample has no field");
    const withTwin = [...living, { ...other, id: twin }];
    expect(orphansAmong(withTwin, deleted, joined([{ from: strip, to: twin }]))).toEqual([]);
  });
});

describe("lines with two answers", () => {
  const { line, living } = farmOf(false);
  const [of] = living.filter((one): one is Listed<"observation"> => one.id === line);
  if (of === undefined) throw new Error("the sample has no line");
  const found = (entries: Parameters<typeof packEntries>[0]) =>
    doubtfulLines([of], new Map([[of.id, packEntries(entries)]])).map(({ marks, thickness, totals }) => ({
      marks,
      thickness,
      totals,
    }));
  const again = (id: string, from = 0) =>
    marksRead("rb").map((entry, at) => ({ ...entry, id: `${id.repeat(15)}${at}`, n: from + at + 1 }));

  it("are none where each mark has one answer, or two phones agree", () => {
    expect(found(marksRead("rb"))).toEqual([]);
    expect(found([...marksRead("rb"), ...again("f")])).toEqual([]);
  });

  it("are those where two phones disagree on a mark", () => {
    const other = marksRead("rr").map((entry, at) => ({ ...entry, id: `${"f".repeat(15)}${at}` }));
    expect(found([...marksRead("rb"), ...other])).toEqual([{ marks: 1, thickness: 0, totals: false }]);
  });

  it("are those where the mulch was measured twice with different outcomes", () => {
    const [first] = marksRead("r");
    if (first === undefined) throw new Error("the sample has no mark");
    const { cover: _cover, stance: _stance, ...base } = first as Extract<typeof first, { type: "mark" }>;
    const thick = (id: string, value: number) =>
      ({
        ...base,
        type: "thickness",
        id: id.repeat(16),
        mark: 1,
        value,
        unit: "mm",
        typed: String(value),
      }) as const;
    expect(found([first, thick("e", 20), thick("f", 30)])).toEqual([
      { marks: 0, thickness: 1, totals: false },
    ]);
  });
});

describe("two versions, property by property", () => {
  const versionsOf = (one: Listed["body"], other: Listed["body"], deleted = false) => {
    const { add, rows } = beginSample();
    add("strip", one as never, { beside: other as never });
    const revs = rows().records[0]?.revs ?? [];
    return differences(
      speech,
      revs.map((revision, at) => (deleted && at === 1 ? { ...revision, deleted: true as const } : revision)),
    );
  };
  const field: RecordId<"field"> = `field-${"1".repeat(32)}`;
  const strip = { field, name: "left", done: ["straw-left"], wholeField: false, rep: null } as const;

  it("says only what differs, in plain words", () => {
    expect(
      versionsOf({ ...strip, done: [...strip.done] }, { ...strip, name: "", done: ["tilled"], rep: 2 }),
    ).toEqual([
      { label: "Name", said: ["left", "not said"] },
      { label: "What was done", said: ["straw left", "tilled"] },
      { label: "Rep", said: ["not said", "2"] },
    ]);
  });

  it("says that one of them is deleted", () => {
    expect(versionsOf({ ...strip, done: [] }, { ...strip, done: [] }, true)).toEqual([
      { label: "Deleted or not", said: ["not deleted", "deleted"] },
    ]);
  });

  it("says nothing where both say the same", () => {
    expect(versionsOf({ ...strip, done: [] }, { ...strip, done: [] })).toEqual([]);
  });
});
