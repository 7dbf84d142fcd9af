import { expect, test } from "vitest";
import { bringIn, finishImports } from "../../src/exchange/archive/bring-in.ts";
import { fileJobs } from "../../src/exchange/archive/jobs.ts";
import { failed } from "../../src/record/result.ts";
import type { Connection } from "../../src/store/connection.ts";
import { countStaged, listImports } from "../../src/store/staging.ts";
import { applyCommands } from "../../src/store/write.ts";
import {
  addLines,
  addPeople,
  addPhoto,
  copyOf,
  device,
  digestOf,
  madeUpVolume,
  onlyPart,
  photoBytes,
  recordsOf,
  sha256Of,
  stageHere,
  unwatched,
} from "./archive-samples.ts";
import { freshName, mark, need, newId, shortId, write } from "./store-samples.ts";

const personLine = (n: number, change: (text: string) => string = (text) => text): string =>
  change(
    `{"entries":[],"erased":false,"id":"person-${String(n).padStart(32, "0")}","revs":[{"author":null,"body":{"name":"P${n}"},"dot":["00000000000000aa",${n}],"rev":"${String(n).padStart(16, "0")}","seen":[],"stamp":{"counter":0,"device":"00000000000000cc","wallMs":0},"v":1}]}\n`,
  );

/** A connection that is cut after so many jobs, as by a kill: whatever comes later is not done. */
const cutAfter = (connection: Connection, jobs: number): Connection => {
  let left = jobs;
  return Object.assign(Object.create(connection) as Connection, {
    use: (job: Parameters<Connection["use"]>[0]) =>
      left-- > 0 ? connection.use(job) : Promise.resolve(failed("store/gone")),
  });
};

test("killed after any of its steps, bringing in is finished at the next start", {
  timeout: 120_000,
}, async () => {
  const here = await device();
  await addPeople(here, 250);
  const [line] = await addLines(here, 1, 3);
  const sha256 = await addPhoto(here, 1);
  if (line === undefined) throw new Error("no line");
  const file = onlyPart(await copyOf(here));
  const meant = await digestOf(here);
  let finishedByItself = false;
  let steps = 0;
  for (; !finishedByItself; steps++) {
    const name = freshName();
    const before = await device(name);
    const { import: id } = need(await stageHere(before, file));
    expect(need(await countStaged(before, id))).toBe(3);
    const cut = await bringIn(cutAfter(before, steps), id, unwatched.onProgress);
    finishedByItself = cut.ok;
    const [row] = need(await listImports(before));
    if (row?.state === "staged") expect(await recordsOf(before)).toEqual([]);
    before.close();
    const after = await device(name);
    // A touch comes first: capture does not wait for what is still to be brought in.
    const touched = row?.state === "accepted" && (await recordsOf(after)).some(({ id: one }) => one === line);
    if (touched) need(await applyCommands(after, [mark(line, "bare", "f")]));
    const finished = need(await finishImports(after, unwatched.onProgress));
    if (row?.state === "accepted") {
      expect(finished).toEqual([{ import: id, name: file.name, new: 255, changed: 0, photos: 1 }]);
      expect(need(await listImports(after))).toEqual([]);
    }
    if (row?.state === "staged") expect(await recordsOf(after)).toEqual([]);
    else if (!touched) expect(await digestOf(after)).toBe(meant);
    else {
      const record = (await recordsOf(after)).find(({ id: one }) => one === line);
      expect(record?.entries).toHaveLength(4);
    }
    expect(sha256).toHaveLength(64);
    after.close();
  }
  // Two before the first batch, three for each of three rows, and the last look and tidying up.
  expect(steps).toBeGreaterThan(10);
});

test("nothing before yes: staged records are in no list, and leaving forgets them", async () => {
  const [here, there] = [await device(), await device()];
  await addPeople(here, 250);
  const jobs = fileJobs(there);
  const preview = need(await jobs.stage(shortId(), onlyPart(await copyOf(here)), unwatched));
  expect(preview.records.new).toBe(250);
  expect(await recordsOf(there)).toEqual([]);
  need(await jobs.leave(preview.import));
  expect(need(await countStaged(there, preview.import))).toBe(0);
  expect(need(await listImports(there))).toEqual([]);
  expect(await jobs.bringIn(preview.import, unwatched.onProgress)).toMatchObject({
    problem: { code: "exchange/not-staged" },
  });
});

test("a file staged in a window that is gone is forgotten, one in a living window is not", async () => {
  const [here, there] = [await device(), await device()];
  await addPeople(here, 3);
  const file = onlyPart(await copyOf(here));
  const gone = need(await stageHere(there, file));
  const jobs = fileJobs(there);
  const living = need(await jobs.stage(shortId(), file, unwatched));
  expect(need(await jobs.finish(unwatched.onProgress))).toEqual([]);
  expect(need(await listImports(there)).map(({ id }) => id)).toEqual([living.import]);
  expect(gone.import).not.toBe(living.import);
  expect(need(await jobs.bringIn(living.import, unwatched.onProgress)).new).toBe(3);
  expect(await digestOf(there)).toBe(await digestOf(here));
});

test("a broken record stays out with its reason, the others come in", async () => {
  const there = await device();
  const lines =
    personLine(1) +
    personLine(2, (text) => text.replace('"name":"P2"', '"name":7')) +
    "{not json}\n" +
    personLine(3, (text) => text.replace('"name"', '"__proto__":{},"name"')) +
    personLine(4);
  const preview = need(await stageHere(there, await madeUpVolume({ lines })));
  expect(preview.records.new).toBe(2);
  expect(preview.refused.map(({ what, problem }) => [what, problem.code])).toEqual([
    ["records.ndjson:2", "record/not-valid"],
    ["records.ndjson:3", "exchange/not-json"],
    ["records.ndjson:4", "record/forbidden-key"],
  ]);
  need(await bringIn(there, preview.import, unwatched.onProgress));
  expect((await recordsOf(there)).map(({ revs }) => revs[0]?.body)).toEqual([{ name: "P1" }, { name: "P4" }]);
});

test.each([
  [
    "a record of a newer app in the last line",
    personLine(1) + personLine(2, (text) => text.replace('"v":1', '"v":2')),
    "exchange/from-the-future",
  ],
  ["lines out of order", personLine(2) + personLine(1), "exchange/damaged"],
  ["a record twice", personLine(1) + personLine(1), "exchange/damaged"],
  ["a last line without end", personLine(1).trimEnd(), "exchange/damaged"],
])("%s: the whole file is refused and nothing is left of it", async (_, lines, code) => {
  const there = await device();
  need(await applyCommands(there, [write(newId("person"), { name: "Before" })]));
  const before = await digestOf(there);
  const staged = await fileJobs(there).stage(shortId(), await madeUpVolume({ lines }), unwatched);
  expect(staged).toMatchObject({ ok: false, problem: { code } });
  if (!staged.ok && code === "exchange/from-the-future")
    expect(staged.problem.facts).toMatchObject({ app: "9.0.0", needs: 2, knows: 1 });
  expect(await digestOf(there)).toBe(before);
  expect(need(await listImports(there))).toEqual([]);
});

test("a photo whose bytes are not those of its name is refused, though its manifest agrees with it", async () => {
  const there = await device();
  const photo = { name: `photos/${sha256Of(photoBytes(1))}.jpg`, content: photoBytes(2) };
  const staged = await stageHere(there, await madeUpVolume({ lines: personLine(1), photo }));
  expect(staged).toMatchObject({ problem: { code: "exchange/damaged" } });
});

test("a photo that no record speaks of stays out", async () => {
  const there = await device();
  const photo = { name: `photos/${sha256Of(photoBytes(1))}.jpg`, content: photoBytes(1) };
  const staged = need(await stageHere(there, await madeUpVolume({ lines: personLine(1), photo })));
  expect(staged).toMatchObject({
    photos: { new: 0, same: 0 },
    refused: [{ what: photo.name, problem: { code: "exchange/photo-without-record" } }],
  });
});

test("reading can be stopped, and leaves nothing behind", async () => {
  const [here, there] = [await device(), await device()];
  await addPeople(here, 450);
  const stop = new AbortController();
  const watch = { signal: stop.signal, onProgress: () => stop.abort() };
  const staged = await fileJobs(there).stage(shortId(), onlyPart(await copyOf(here)), watch);
  expect(staged).toMatchObject({ problem: { code: "exchange/stopped" } });
  expect(need(await listImports(there))).toEqual([]);
});
