import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalJson } from "../../src/record/canonical.ts";
import { applyCommand } from "../../src/record/command/apply.ts";
import type { Command } from "../../src/record/command/command.ts";
import { KINDS } from "../../src/record/ids.ts";
import { joined } from "../../src/record/joined.ts";
import { parseRecord } from "../../src/record/parse.ts";
import { arranged, type RecordState, seenNow, shown } from "../../src/record/record.ts";
import { begun, got, hex, idOf, LINE, sign } from "../unit/record/made-up.ts";
import { doingsWithTotals, historyOf } from "./record-histories.ts";

const RUNS = { numRuns: 400 };
const asFile = (record: RecordState): unknown => JSON.parse(canonicalJson(record));

test("whatever the commands write on a line is read back the same from a file", () => {
  fc.assert(
    fc.property(historyOf(doingsWithTotals), ([, record]) => {
      expect(got(parseRecord(asFile(record)))).toEqual(record);
    }),
    RUNS,
  );
});

const DECADES_MS = 9e11; // 28.5 years
const edits = fc.array(
  fc.record({
    op: fc.constantFrom("change" as const, "change" as const, "delete" as const, "restore" as const),
    actor: fc.integer({ min: 1, max: 3 }),
    angle: fc.option(fc.double({ min: 0, max: 90, noNaN: true }).map((angle) => angle + 0)),
    skewMs: fc.constantFrom(0, DECADES_MS, -DECADES_MS),
  }),
  { maxLength: 12 },
);
const edited = (
  start: RecordState,
  list: typeof edits extends fc.Arbitrary<infer T> ? T : never,
  from: number,
): RecordState =>
  list.reduce<RecordState>((record, { op, actor, angle, skewMs }, at) => {
    const by = sign(at + 1, from + actor, 1.7e12 + skewMs);
    const command: Command =
      op === "change" ? { op, id: LINE, by, patch: { angleToRowsDeg: angle } } : { op, id: LINE, by };
    const after = got(applyCommand(record, command)).record;
    if (op === "change") expect(shown(after)?.body).toMatchObject({ angleToRowsDeg: angle });
    expect(got(applyCommand(after, command))).toMatchObject({ already: true, record: after });
    return after;
  }, start);

test("versions that stand side by side are read back the same, and one change settles them", () => {
  fc.assert(
    fc.property(edits, edits, (one, other) => {
      const revs = [edited(begun(), one, 10), edited(begun(), other, 20)].flatMap((record) => record.revs);
      const both = arranged({ ...begun(), revs: [...new Map(revs.map((rev) => [rev.rev, rev])).values()] });
      expect(got(parseRecord(asFile(both)))).toEqual(both);
      const settled = edited(both, [{ op: "change", actor: 1, angle: 7, skewMs: -DECADES_MS }], 30);
      expect(settled.revs).toHaveLength(1);
      expect(settled.revs[0]?.seen).toEqual(seenNow(both));
      expect(got(parseRecord(asFile(settled)))).toEqual(settled);
    }),
    RUNS,
  );
});

test("any JSON is answered and never thrown at", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 8 }), (value) => {
      expect(parseRecord(value).ok).toBe(false);
    }),
    RUNS,
  );
});

/** All places in a value, as ways to put something else there. */
const places = (value: unknown, put: (other: unknown) => unknown): ((other: unknown) => unknown)[] => {
  if (typeof value !== "object" || value === null) return [put];
  const below = Object.entries(value).flatMap(([key, item]) =>
    places(item, (other) =>
      put(Array.isArray(value) ? value.with(Number(key), other) : { ...value, [key]: other }),
    ),
  );
  return [put, ...below];
};

test("a file with anything at any place is answered; what is accepted is accepted again, unchanged", () => {
  const spoilt = fc
    .tuple(historyOf(doingsWithTotals), fc.nat(), fc.oneof(fc.jsonValue({ maxDepth: 3 }), fc.constant(-0)))
    .map(([[, record], at, other]) => {
      const all = places(asFile(record), (whole) => whole);
      return all[at % all.length]?.(other);
    });
  fc.assert(
    fc.property(spoilt, (value) => {
      const once = parseRecord(value);
      if (once.ok) expect(got(parseRecord(asFile(once.value)))).toEqual(once.value);
    }),
    RUNS,
  );
});

test("every kind's id with every other kind's body is answered", () => {
  fc.assert(
    fc.property(fc.constantFrom(...KINDS), fc.constantFrom(...KINDS), (kind, named) => {
      const value = { ...begun(), id: `${kind}-${hex(1, 32)}` };
      expect(parseRecord(value).ok).toBe(kind === "observation");
      expect(parseRecord({ ...value, id: `${named}-${kind}` }).ok).toBe(false);
    }),
  );
});

test("joins resolve alike in any order, to an id that stands for itself", () => {
  const field = fc.integer({ min: 1, max: 6 });
  const joins = fc
    .array(
      fc.tuple(field, field).filter(([from, to]) => from !== to),
      { maxLength: 12 },
    )
    .map((pairs) => pairs.map(([from, to]) => ({ from: idOf("field", from), to: idOf("field", to) })));
  const shuffled = joins.chain((list) =>
    fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
  );
  fc.assert(
    fc.property(shuffled, ([list, other]) => {
      const [one, two] = [joined(list), joined(other)];
      for (let n = 1; n <= 6; n++) {
        const id = idOf("field", n);
        expect(two(id)).toBe(one(id));
        expect(one(one(id))).toBe(one(id));
      }
      for (const { from, to } of list) expect(one(from)).toBe(one(to));
    }),
    RUNS,
  );
});
