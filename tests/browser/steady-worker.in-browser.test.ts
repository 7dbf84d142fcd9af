import { expect, test } from "vitest";
import { steadyWorker } from "../../src/app/steady-worker.ts";

/** A worker out of its text, in the way of a module that is loaded. */
const worker = (script: string): Worker =>
  new Worker(URL.createObjectURL(new Blob([script], { type: "text/javascript" })), { type: "module" });

const ECHO = "onmessage = ({ data }) => postMessage(data)";
const BREAKS = "onmessage = () => { throw new Error('broken on purpose') }";
/** Its address is given back before the worker could load from it, so it cannot be fetched. */
const notFetched = (): Worker => {
  const address = URL.createObjectURL(new Blob([ECHO], { type: "text/javascript" }));
  URL.revokeObjectURL(address);
  return new Worker(address, { type: "module" });
};

const WAIT = { timeout: 10_000 };

const heard = (start: (time: number) => Worker) => {
  const answers: number[] = [];
  const now = { started: 0, broke: 0 };
  const post = steadyWorker<number, number>(() => start(++now.started), {
    answer: (answer) => answers.push(answer),
    broke: () => {
      now.broke += 1;
    },
  });
  return { answers, now, post };
};

test("a script that could not be fetched is asked for again, and hears everything that was asked, once", async () => {
  const { answers, now, post } = heard((time) => (time < 3 ? notFetched() : worker(ECHO)));
  post(1);
  post(2);
  await expect.poll(() => now.started).toBe(2);
  post(3);
  await expect.poll(() => answers, WAIT).toHaveLength(3);
  post(4);
  await expect.poll(() => answers, WAIT).toHaveLength(4);
  expect(answers).toEqual([1, 2, 3, 4]);
  expect(now).toEqual({ started: 3, broke: 0 });
});

test("is given up after three times, and tried anew at the next question", async () => {
  const { answers, now, post } = heard((time) => (time < 4 ? notFetched() : worker(ECHO)));
  post(1);
  await expect.poll(() => now.broke, WAIT).toBe(1);
  expect(now.started).toBe(3);
  post(2);
  await expect.poll(() => answers, WAIT).toHaveLength(1);
  expect(answers).toEqual([2]);
  expect(now.broke).toBe(1);
});

test("one that ran and broke is not asked the same again", async () => {
  const { answers, now, post } = heard((time) => worker(time === 1 ? BREAKS : ECHO));
  post(1);
  await expect.poll(() => now.broke, WAIT).toBe(1);
  post(2);
  await expect.poll(() => answers, WAIT).toHaveLength(1);
  expect(answers).toEqual([2]);
  expect(now.started).toBe(2);
});
