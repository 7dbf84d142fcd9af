import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { failed, ok } from "../../../src/record/result.ts";
import type { Notice } from "../../../src/store/notice.ts";
import { type Answer, MOST_WAITING, orderedQueue, type Touch } from "../../../src/store/queue.ts";

const touchOf = (n: number): Touch => [{ op: "erase", id: `field-${String(n).padStart(32, "0")}` }];

/** A disk that answers when it is told to. */
const slowDisk = () => {
  const asked: { touch: Touch; answer: (answer: Answer) => void; break: (reason: unknown) => void }[] = [];
  const apply = (touch: Touch): Promise<Answer> =>
    new Promise((resolve, reject) => asked.push({ touch, answer: resolve, break: reject }));
  return { asked, apply };
};
const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn++) await Promise.resolve();
};

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test("a touch is written after the one before it is, and answers then", async () => {
  const { asked, apply } = slowDisk();
  const queue = orderedQueue(apply, () => undefined);
  const answered: number[] = [];
  for (const n of [1, 2]) void queue.run(touchOf(n)).then(() => answered.push(n));
  await settle();
  expect([asked.length, answered]).toEqual([1, []]);
  expect(queue.pending()).toEqual([touchOf(1), touchOf(2)]);
  asked[0]?.answer(ok([]));
  await settle();
  expect([asked.map(({ touch }) => touch), answered]).toEqual([[touchOf(1), touchOf(2)], [1]]);
  asked[1]?.answer(ok([]));
  await settle();
  expect([answered, queue.pending()]).toEqual([[1, 2], []]);
});

test("twenty touches wait; the next one is refused at once and the others are kept", async () => {
  const { asked, apply } = slowDisk();
  const queue = orderedQueue(apply, () => undefined);
  const answers = Array.from({ length: MOST_WAITING + 1 }, (_, n) => queue.run(touchOf(n)));
  expect(await queue.run(touchOf(99))).toEqual(failed("store/queue-full", { most: 20 }));
  for (let n = 0; n <= MOST_WAITING; n++) {
    asked[n]?.answer(ok([]));
    await settle();
  }
  expect((await Promise.all(answers)).every(({ ok: written }) => written)).toBe(true);
  expect(asked.map(({ touch }) => touch)).toEqual(answers.map((_, n) => touchOf(n)));
});

test("a write that waits three seconds says so and goes on waiting", async () => {
  const { asked, apply } = slowDisk();
  const said: Notice[] = [];
  const queue = orderedQueue(apply, (notice) => said.push(notice));
  const answer = queue.run(touchOf(1));
  await vi.advanceTimersByTimeAsync(2999);
  expect(said).toEqual([]);
  await vi.advanceTimersByTimeAsync(60_000);
  expect(said).toEqual([{ type: "busy", waiting: true }]);
  asked[0]?.answer(ok([]));
  expect(await answer).toEqual(ok([]));
  expect(said.at(-1)).toEqual({ type: "busy", waiting: false });
});

test("when the database is gone, what waits behind gets the same answer, untried", async () => {
  const { asked, apply } = slowDisk();
  const queue = orderedQueue(apply, () => undefined);
  const answers = [1, 2, 3].map((n) => queue.run(touchOf(n)));
  asked[0]?.answer(failed("store/gone"));
  expect(await Promise.all(answers)).toEqual([1, 2, 3].map(() => failed("store/gone")));
  expect(asked).toHaveLength(1);
});

test("a refused touch and a bug hold up nobody behind them", async () => {
  const { asked, apply } = slowDisk();
  const queue = orderedQueue(apply, () => undefined);
  const answers = [1, 2, 3].map((n) => queue.run(touchOf(n)));
  const second = expect(answers[1]).rejects.toThrow("bug");
  asked[0]?.answer(failed("record/line-full"));
  await settle();
  asked[1]?.break(new Error("bug"));
  await settle();
  asked[2]?.answer(ok([]));
  expect(await answers[0]).toEqual(failed("record/line-full"));
  await second;
  expect(await answers[2]).toEqual(ok([]));
});
