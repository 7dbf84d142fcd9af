import { afterEach, beforeEach, expect, it, vi } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import type { LineHeader } from "../../../src/record/kinds/observation.ts";
import { farthestM } from "../../../src/screens/measure/visit/far-apart.ts";
import type { Listed, Reader } from "../../../src/screens/parts/reader.ts";
import { GOES_ON_MS, goesOn } from "../../../src/screens/parts/visits.ts";
import { lineOf } from "../../bench/seed.ts";
import { idOf } from "../record/made-up.ts";

const nowMs = Date.UTC(2024, 4, 25, 0, 30);
beforeEach(() => {
  vi.useFakeTimers();
  vi.setSystemTime(nowMs);
});
afterEach(() => vi.useRealTimers());

/** A visit of this day, whose last line was begun at that moment; without one it is the visit that was. */
const asked = (day: string, lastMs: number, withLine = true) => {
  const visit = {
    id: idOf("visit", 1),
    body: { field: idOf("field", 1), day, harvestYear: null },
    row: { keys: { atMs: withLine ? 0 : lastMs } },
  } as unknown as Listed<"visit">;
  const list = () => Promise.resolve(withLine ? [{ row: { keys: { atMs: lastMs } } }] : []);
  return goesOn({ list } as unknown as Reader, visit, "2024-05-25");
};

it("goes on past midnight, and into the day before when a border between time zones was crossed", async () => {
  expect(await asked("2024-05-24", nowMs - GOES_ON_MS)).toBe(true);
  expect(await asked("2024-05-26", nowMs - 1000)).toBe(true);
  expect(await asked("2024-05-24", nowMs - 1000, false)).toBe(true);
});

it("does not go on after a night, nor from another day, nor by a clock that was years off", async () => {
  expect(await asked("2024-05-24", nowMs - GOES_ON_MS - 1)).toBe(false);
  expect(await asked("2024-05-23", nowMs - 1000)).toBe(false);
  expect(await asked("2024-05-24", nowMs + 365 * 86_400_000)).toBe(false);
});

const lineAt = (n: number, northM: number | null, accuracyM = 5) => {
  const id: RecordId<"observation"> = idOf("observation", n);
  const on = {
    visit: idOf("visit", 1),
    field: idOf("field", 1),
    strip: idOf("strip", 1),
    rope: idOf("kit", 1),
  };
  const start: LineHeader["start"] =
    northM === null
      ? { position: null, why: "denied" }
      : {
          position: {
            latitudeDeg: 52 + northM / 111_000,
            longitudeDeg: 0,
            accuracyM,
            accuracyMeans: "not-known",
            spreadM: null,
            fixes: 1,
            how: "standing-still",
            atMs: 0,
          },
          why: null,
        };
  return { id, header: lineOf(on, { start }) };
};

it("finds a line two kilometres from every other one, and none among lines of one field", () => {
  const near = [lineAt(1, 0), lineAt(2, 300), lineAt(3, null)];
  const far = lineAt(4, 2300);
  expect(farthestM(near, near)).toBeNull();
  expect(Math.round((farthestM([...near, far], [...near, far]) ?? 0) / 10)).toBe(200);
});

it("does not call a line far whose position may be wrong by more, or that nothing can be compared with", () => {
  expect(farthestM([lineAt(1, 2300, 3000)], [lineAt(2, 0)])).toBeNull();
  expect(farthestM([lineAt(1, 2300)], [lineAt(1, 2300), lineAt(2, null)])).toBeNull();
});
