import { expect, it } from "vitest";
import { onePageAtATime } from "../../src/device/one-page.ts";

it("does one after the other, and hands each its own answer", async () => {
  const name = crypto.randomUUID();
  const seen: string[] = [];
  const job = (of: string) => async () => {
    seen.push(`${of} begins`);
    await new Promise((resolve) => setTimeout(resolve, 20));
    seen.push(`${of} ends`);
    return of;
  };
  expect(await Promise.all([onePageAtATime(name, job("a")), onePageAtATime(name, job("b"))])).toEqual([
    "a",
    "b",
  ]);
  expect(seen).toEqual(["a begins", "a ends", "b begins", "b ends"]);
});

it("lets the next one in after one that failed, and says what failed", async () => {
  const name = crypto.randomUUID();
  await expect(onePageAtATime(name, () => Promise.reject(new Error("no room")))).rejects.toThrow("no room");
  expect(await onePageAtATime(name, () => Promise.resolve("done"))).toBe("done");
});

it("does not wait for ever for a page that was stopped with the lock in its hand, and does it once", async () => {
  const name = crypto.randomUUID();
  const { promise: stopped, resolve: end } = Promise.withResolvers<void>();
  const held = navigator.locks.request(name, () => stopped);
  let times = 0;
  const done = onePageAtATime(name, () => Promise.resolve(++times));
  expect(await done).toBe(1);
  end();
  await held;
  await new Promise((resolve) => setTimeout(resolve, 100));
  expect(times).toBe(1);
}, 10_000);
