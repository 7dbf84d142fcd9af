import { expect, it } from "vitest";
import { type MustardWait, waitOf, waitToCome } from "../../../src/app/mustard-waits.ts";
import { type Awaited, firstOf } from "../../../src/app/next-reading-model.ts";
import type { Draft } from "../../../src/record/command/command.ts";
import { ENTRY_VERSION, type Entry } from "../../../src/record/entry.ts";

const MINUTE_MS = 60_000;
const pouredMs = 1_700_000_000_000;
const hole = `observation-${"1".repeat(32)}` as const;
const header = { visit: `visit-${"2".repeat(32)}`, number: 2, mustardMin: 10 } as const;

/** An entry so many minutes after the first pouring. */
const at = (n: number, afterMin: number, draft: Draft): Entry =>
  ({
    v: ENTRY_VERSION,
    id: n.toString(16).padStart(16, "0"),
    n,
    lookedAtMs: pouredMs + afterMin * MINUTE_MS,
    enteredAtMs: pouredMs + afterMin * MINUTE_MS,
    monoMs: 5000 + afterMin * MINUTE_MS,
    page: "a".repeat(16),
    device: "d".repeat(16),
    by: null,
    ...draft,
  }) as Entry;
const pour = at(1, 0, { type: "mustard", litres: null });
const after = (minutes: number) => ({
  wallMs: pouredMs + minutes * MINUTE_MS,
  monoMs: 5000 + minutes * MINUTE_MS,
  pageId: "a".repeat(16),
});
const waitAfter = (...entries: readonly Entry[]): MustardWait | null => waitOf(hole, header, entries);
const toCome = (minutes: number, ...entries: readonly Entry[]) => {
  const wait = waitAfter(...entries);
  return wait === null ? [] : waitToCome(wait, after(minutes));
};
const minutesTo = (minutes: number, ...entries: readonly Entry[]) =>
  toCome(minutes, ...entries).map(({ inMs }) => inMs / MINUTE_MS);

it("ends so long after the pouring as the hole says, and is no news an hour later", () => {
  expect(minutesTo(4, pour)).toEqual([6]);
  expect(minutesTo(12, pour)).toEqual([-2]);
  expect(minutesTo(70, pour)).toEqual([-60]);
  expect(minutesTo(71, pour)).toEqual([]);
  expect(waitAfter()).toBeNull();
  expect(waitOf(hole, { ...header, mustardMin: null }, [pour])).toBeNull();
});

it("begins anew with more mustard water, and not with the litres said later", () => {
  const again = at(2, 11, { type: "mustard", litres: null });
  expect(minutesTo(12, pour, again)).toEqual([9]);
  const [first] = toCome(4, pour);
  const [second] = toCome(12, pour, again);
  expect(second?.id).not.toBe(first?.id);
  const litres = { ...at(2, 0, { type: "mustard", litres: 5 }), replaces: [pour.id] } as Entry;
  expect(toCome(4, pour, litres)[0]?.id).toBe(first?.id);
});

it("is over for good once the hole is closed, or something was written down there after its end", () => {
  expect(minutesTo(4, pour, at(2, 3, { type: "worm", from: "mulch" }))).toEqual([6]);
  expect(minutesTo(12, pour, at(2, 11, { type: "worm", from: "mustard-water" }))).toEqual([]);
  expect(minutesTo(4, pour, at(2, 3, { type: "closed" }))).toEqual([]);
});

it("leaves the bar to a ring that is due, and after five minutes to every ring", () => {
  const wait = waitAfter(pour) as Awaited;
  const ring = { id: `observation-${"3".repeat(32)}`, planMin: [] } as never as Awaited;
  const first = (waitMin: number, ringMin: number) =>
    firstOf([
      { of: wait, due: { id: "w", test: wait.id, inMs: waitMin * MINUTE_MS } },
      { of: ring, due: { id: "r", test: ring.id, inMs: ringMin * MINUTE_MS } },
    ])?.of === ring
      ? "ring"
      : "wait";
  expect(first(3, 5)).toBe("wait");
  expect(first(5, 3)).toBe("ring");
  expect(first(-2, 5)).toBe("wait");
  expect(first(-2, -1)).toBe("ring");
  expect(first(-6, 20)).toBe("ring");
  expect(firstOf([])).toBeNull();
});
