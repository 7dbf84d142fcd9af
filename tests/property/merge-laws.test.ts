import fc from "fast-check";
import { expect, test } from "vitest";
import { digestOfRecords } from "../../src/exchange/format/line.ts";
import { compareRecordIds } from "../../src/exchange/format/order.ts";
import { mergeAll, type Records } from "../../src/exchange/merge/merge.ts";
import { canonicalJson } from "../../src/record/canonical.ts";
import type { RecordState } from "../../src/record/record.ts";
import { play, STEP_BOUND } from "./merge-history.ts";

const HISTORIES = 100_000;
const LONGEST = 30;
// The numbers only encode steps: small ones are not simpler, so none is drawn more often.
const histories = fc.noBias(
  fc.array(fc.nat(STEP_BOUND - 1), { minLength: 5, maxLength: LONGEST, size: "max" }),
);
const ORDERS = [
  [3, 0, 4, 2, 1],
  [4, 3, 2, 1, 0],
] as const;

const texts = new WeakMap<RecordState, string>();
const textOf = (record: RecordState): string => {
  const known = texts.get(record);
  if (known !== undefined) return known;
  const text = canonicalJson(record);
  texts.set(record, text);
  return text;
};

const sameParts = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((one, at) => one === b[at]);

/** The same objects in the same order need not be written out to be known as the same text. */
const sameRecord = (a: RecordState, b: RecordState): boolean =>
  (a.erased === b.erased && sameParts(a.revs, b.revs) && sameParts(a.entries, b.entries)) ||
  textOf(a) === textOf(b);

/** Equal when both hold the same records, each written as the same text. */
const same = (a: Records, b: Records): boolean =>
  a.size === b.size &&
  [...a].every(([id, record]) => {
    const other = b.get(id);
    return other !== undefined && (other === record || sameRecord(record, other));
  });

const together = (all: readonly Records[]): Records => all.reduce<Records>(mergeAll, new Map());

test(`${HISTORIES} histories of five devices obey the laws of merging`, { timeout: 300_000 }, () => {
  const seed = Number(process.env["SEED"] ?? Date.now() % 2 ** 31);
  console.log(`merge laws: seed ${seed} (repeat with SEED=${seed})`);
  let settled = 0;
  let sideBySide = 0;
  let erased = 0;
  let entriesKept = 0;

  const holds = (steps: number[]): string | undefined => {
    const played = play(steps);
    const [a, b, c] = played.devices as [Records, Records, Records];
    const all = together(played.devices);
    if (played.ownEditHidden) return "an own edit was not shown";
    const ab = mergeAll(a, b);
    if (!same(ab, mergeAll(b, a))) return "not commutative";
    if (!same(mergeAll(ab, c), mergeAll(a, mergeAll(b, c)))) return "not associative";
    if (!same(mergeAll(a, new Map(a)), a)) return "not idempotent";
    if (!same(mergeAll(all, ab), all)) return "not idempotent after more has come";
    const orders = ORDERS.map((order) => together(order.map((at) => played.devices[at] ?? new Map())));
    if (orders.some((one) => !same(one, all))) return "the order of files decides";
    if (played.pasts.some((past) => !same(mergeAll(all, past), all)))
      return "an old backup changes something";
    const standing = new Set<string>();
    const known = new Set<string>();
    const entries = new Set<string>();
    for (const record of all.values()) {
      for (const { rev } of record.revs) {
        standing.add(rev);
        for (const one of played.madeFrom.get(rev)?.known ?? []) known.add(one);
      }
      for (const entry of record.entries) entries.add(entry.id);
      if (record.erased && record.revs.length + record.entries.length > 0) return "an erased body came back";
      if (record.erased) erased++;
      if (record.revs.length > 1) sideBySide++;
    }
    for (const [rev, { of }] of played.madeFrom)
      if (!standing.has(rev) && !known.has(rev) && all.get(of)?.erased !== true)
        return "a revision that nobody had seen was lost";
    const lineErased = [...all.values()].some(
      (record) => record.erased && record.id.startsWith("observation"),
    );
    if (!lineErased && [...played.entries].some((id) => !entries.has(id))) return "an entry was lost";
    const wasErased = played.devices.flatMap((one) => [...one.values()]).filter((one) => one.erased);
    if (wasErased.some(({ id }) => all.get(id)?.erased !== true)) return "an erasure was undone";
    settled += played.settled;
    entriesKept += entries.size;
    return undefined;
  };

  const outcome = fc.check(
    fc.property(histories, (steps) => {
      const broken = holds(steps);
      if (broken !== undefined) throw new Error(broken);
    }),
    { seed, numRuns: HISTORIES },
  );
  console.log(
    `settled ${settled}, side by side at the end ${sideBySide}, erased ${erased}, entries ${entriesKept}`,
  );
  expect(outcome.failed ? fc.defaultReportMessage(outcome) : "holds").toBe("holds");
  // Histories in which nothing happens would obey every law.
  expect(settled).toBeGreaterThan(HISTORIES / 100);
  expect(sideBySide).toBeGreaterThan(HISTORIES / 10);
  expect(erased).toBeGreaterThan(HISTORIES / 100);
  expect(entriesKept).toBeGreaterThan(HISTORIES);
});

test("merged states have equal canonical digests", () => {
  fc.assert(
    fc.property(histories, (steps) => {
      const { devices } = play(steps);
      const digests = [[0, 1, 2, 3, 4], ...ORDERS].map((order) =>
        digestOfRecords(together(order.map((at) => devices[at] ?? new Map())).values()),
      );
      expect(new Set(digests).size).toBe(1);
    }),
    { numRuns: 2000 },
  );
});

test("records stand in the order of kinds, then of ids", () => {
  const ids = ["farm-2", "person-9", "farm-1", "join-0"].map((id) => id as RecordState["id"]);
  expect(ids.sort(compareRecordIds)).toEqual(["person-9", "farm-1", "farm-2", "join-0"]);
});
