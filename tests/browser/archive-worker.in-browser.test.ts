import { expect, test } from "vitest";
import { filesDesk } from "../../src/app/files-client.ts";
import { DEVICE } from "../../src/app/meta-keys.ts";
import type { FileProgress } from "../../src/screens/parts/files-desk.ts";
import { setMeta } from "../../src/store/meta.ts";
import { DATABASE_NAME } from "../../src/store/schema.ts";
import { addLines, addPeople, addPhoto, copyOf, device, digestOf, onlyPart } from "./archive-samples.ts";
import { need } from "./store-samples.ts";

const never = (): AbortSignal => new AbortController().signal;

test("the worker writes, reads, brings in and stops, and tells how far it is", async () => {
  // The worker opens the app's own database, which this page shares with it.
  const here = await device(DATABASE_NAME);
  need(await setMeta(here, DEVICE, "d".repeat(16)));
  await addLines(here, 3, 10);
  const desk = filesDesk(here);
  const steps = new Set<FileProgress["step"]>();
  const note = ({ step }: FileProgress): void => void steps.add(step);

  const copy = need(await desk.makeCopy(note, never()));
  expect(copy).toMatchObject({ records: 12, photos: 0 });
  expect(copy.parts[0]?.type).toBe("application/zip");

  const elsewhere = await device();
  await addPeople(elsewhere, 300);
  await addPhoto(elsewhere, 1);
  const changed: unknown[] = [];
  here.subscribe((ids) => void changed.push(ids));
  const file = onlyPart(await copyOf(elsewhere));
  const left = need(await desk.stage(file, note, never()));
  need(await desk.leave(left.import));
  expect(await desk.bringIn(left.import, note)).toMatchObject({ problem: { code: "exchange/not-staged" } });
  const preview = need(await desk.stage(file, note, never()));
  expect(preview).toMatchObject({ records: { new: 301 }, photos: { new: 1 }, file: { madeBy: "Sam" } });
  expect(need(await desk.bringIn(preview.import, note))).toMatchObject({ new: 301, changed: 0, photos: 1 });
  expect(need(await desk.finish(note))).toEqual([]);
  expect([...steps]).toEqual(["gathering", "writing", "comparing", "reading", "bringing-in"]);
  expect(changed.length).toBeGreaterThan(0);

  const both = need(await desk.makeCopy(note, never()));
  expect(both).toMatchObject({ records: 313, photos: 1 });
  expect((await copyOf(here)).recordsDigest).toBe(await digestOf(here));

  expect(await desk.makeCopy(note, AbortSignal.abort())).toMatchObject({
    problem: { code: "exchange/stopped" },
  });
  expect(await desk.stage(new File(["no"], "letter.txt"), note, never())).toMatchObject({
    problem: { code: "exchange/not-a-zip" },
  });
  here.close();
});
