import fc from "fast-check";
import { expect, test } from "vitest";
import { mergeRecord } from "../../src/exchange/merge/merge.ts";
import { standsIn } from "../../src/exchange/merge/stand-in.ts";
import { canonicalJson } from "../../src/record/canonical.ts";
import { ENTRY_VERSION, type Entry } from "../../src/record/entry.ts";
import { parseRecord } from "../../src/record/parse.ts";
import { erasedRecord, type RecordState, type Revision } from "../../src/record/record.ts";

// Ids from a handful: a made-up file uses one id for different content, and revisions that have seen
// each other, themselves, or what never was.
const shortId = fc.constantFrom("000000000000000a", "000000000000000b", "000000000000000c");
const few = fc.integer({ min: 1, max: 3 });
const dot = fc.tuple(shortId, few);
const revision: fc.Arbitrary<Revision> = fc
  .record({
    rev: shortId,
    dot,
    seen: fc.uniqueArray(dot, { maxLength: 3, selector: ([actor]) => actor }),
    stamp: fc.record({ wallMs: few, counter: few, device: shortId }),
    author: fc.constant(null),
    v: fc.constant(1),
    body: fc.record({ name: fc.constantFrom("Top Field", "Long Ground") }),
    gone: fc.boolean(),
  })
  .map(({ gone, ...rest }) => (gone ? { ...rest, deleted: true as const } : rest) as Revision);
const entry: fc.Arbitrary<Entry> = fc
  .record({
    id: shortId,
    n: few,
    mark: few,
    cover: fc.constantFrom("bare" as const, "green" as const),
  })
  .map((given) => ({
    v: ENTRY_VERSION,
    lookedAtMs: 0,
    enteredAtMs: 0,
    monoMs: 0,
    page: "000000000000000d",
    device: "000000000000000e",
    by: null,
    type: "mark",
    ...given,
  }));
const ID = "observation-00000000000000000000000000000001";
const record: fc.Arbitrary<RecordState> = fc.oneof(
  {
    weight: 9,
    arbitrary: fc.record({
      id: fc.constant(ID as RecordState["id"]),
      erased: fc.constant(false),
      revs: fc.array(revision, { maxLength: 4 }),
      entries: fc.array(entry, { maxLength: 4 }),
    }),
  },
  { weight: 1, arbitrary: fc.constant(erasedRecord(ID as RecordState["id"])) },
);

const text = (state: RecordState): string => canonicalJson(state);
const own = (state: RecordState): RecordState => mergeRecord(state, state);
const runs = { numRuns: 2000 };

test("made-up records obey the laws of merging too", () => {
  fc.assert(
    fc.property(record, record, record, (a, b, c) => {
      expect(text(mergeRecord(a, b))).toBe(text(mergeRecord(b, a)));
      expect(text(mergeRecord(mergeRecord(a, b), c))).toBe(text(mergeRecord(a, mergeRecord(b, c))));
      expect(text(own(own(a)))).toBe(text(own(a)));
      expect(text(mergeRecord(own(a), own(b)))).toBe(text(mergeRecord(a, b)));
      const ab = mergeRecord(a, b);
      expect(text(mergeRecord(ab, a))).toBe(text(ab));
    }),
    runs,
  );
});

test("standing in for another is a strict order, whatever is claimed", () => {
  fc.assert(
    fc.property(revision, revision, revision, (a, b, c) => {
      expect(standsIn(a, a)).toBe(false);
      expect(standsIn(a, b) && standsIn(b, a)).toBe(false);
      if (standsIn(a, b) && standsIn(b, c)) expect(standsIn(a, c)).toBe(true);
    }),
    { numRuns: 10_000 },
  );
});

test("no record is emptied by revisions that claim to know each other", () => {
  fc.assert(
    fc.property(record, record, (a, b) => {
      if (!a.erased && !b.erased && a.revs.length > 0)
        expect(mergeRecord(a, b).revs.length).toBeGreaterThan(0);
    }),
    runs,
  );
});

test("one rev with two texts: the canonically greater one is kept", () => {
  fc.assert(
    fc.property(revision, (one) => {
      const lesser = { ...one, seen: [], body: { name: "a" } } as Revision;
      const greater = { ...one, seen: [], body: { name: "b" } } as Revision;
      const id = ID as RecordState["id"];
      const merged = mergeRecord(
        { id, erased: false, revs: [greater], entries: [] },
        { id, erased: false, revs: [lesser], entries: [] },
      );
      expect(merged.revs).toEqual([greater]);
    }),
  );
});

test("an erased record keeps its id and nothing else, on either side", () => {
  fc.assert(
    fc.property(record, (a) => {
      const gone = erasedRecord(a.id);
      expect(mergeRecord(a, gone)).toEqual(gone);
      expect(mergeRecord(gone, a)).toEqual(gone);
      expect(parseRecord(JSON.parse(text(gone))).ok).toBe(true);
    }),
  );
});
