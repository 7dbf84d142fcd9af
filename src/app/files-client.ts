/** The page's end of the worker for files. The worker starts at first use. */
import { randomHex } from "../device/chance.ts";
import { newShortId } from "../record/ids.ts";
import { shown } from "../record/record.ts";
import { failed, ok, type Result } from "../record/result.ts";
import type { FileProgress, FilesDesk } from "../screens/parts/files-desk.ts";
import { SETTINGS } from "../screens/parts/settings.ts";
import type { Connection } from "../store/connection.ts";
import { getMeta } from "../store/meta.ts";
import { readRecord } from "../store/read.ts";
import { DEVICE } from "./meta-keys.ts";
import { steadyWorker } from "./steady-worker.ts";
import { APP_VERSION } from "./version.ts";
import type { FileAnswer, FileJobName, FileJobTable, FileQuestion } from "./workers/files-talk.ts";

type OnProgress = (progress: FileProgress) => void;

interface Waiting {
  readonly onProgress: OnProgress;
  readonly answer: (answer: Result<never>) => void;
}

const asker = () => {
  let last = 0;
  const waiting = new Map<number, Waiting>();
  const post = steadyWorker<FileQuestion, FileAnswer>(
    () => new Worker(new URL("./workers/files.ts", import.meta.url), { type: "module" }),
    {
      answer: (said) => {
        const asked = waiting.get(said.n);
        if ("progress" in said) asked?.onProgress(said.progress);
        else {
          waiting.delete(said.n);
          asked?.answer(said.answer as Result<never>);
        }
      },
      broke: () => {
        for (const { answer } of waiting.values()) answer(failed("exchange/no-worker"));
        waiting.clear();
      },
    },
  );
  return <J extends FileJobName>(
    job: J,
    wants: FileJobTable[J]["wants"],
    onProgress: OnProgress,
    signal?: AbortSignal,
  ): Promise<Result<FileJobTable[J]["gives"]>> =>
    new Promise((resolve) => {
      last += 1;
      const n = last;
      const stop = (): void => post({ n, job: "stop" });
      waiting.set(n, {
        onProgress,
        answer: (answer) => {
          signal?.removeEventListener("abort", stop);
          resolve(answer);
        },
      });
      post({ n, job, wants } as FileQuestion);
      if (signal?.aborted === true) stop();
      else signal?.addEventListener("abort", stop);
    });
};

const unheard: OnProgress = () => undefined;
const two = (n: number): string => String(n).padStart(2, "0");

/** Name of the person who uses this device, for the one who receives the file. */
const madeBy = async (connection: Connection): Promise<{ madeBy?: string }> => {
  const settings = await getMeta(connection, SETTINGS);
  const person = settings.ok ? settings.value?.person : undefined;
  if (person === undefined || person === null) return {};
  const record = await readRecord(connection, person);
  const name = record.ok && record.value !== undefined ? shown(record.value)?.body.name : undefined;
  return name === undefined || name === "" ? {} : { madeBy: name };
};

/** The desk over a connection of the page. */
export const filesDesk = (connection: Connection): FilesDesk => {
  const ask = asker();
  return {
    makeCopy: async (onProgress, signal) => {
      const device = await getMeta(connection, DEVICE);
      if (!device.ok) return device;
      const now = new Date();
      const origin = {
        appVersion: APP_VERSION,
        device: device.value ?? newShortId(randomHex),
        ...(await madeBy(connection)),
        madeAtMs: now.getTime(),
        day: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
        archive: newShortId(randomHex),
      };
      const written = await ask("make-copy", origin, onProgress, signal);
      if (!written.ok) return written;
      const { parts, records, photos } = written.value;
      return ok({ parts, records, photos });
    },
    stage: (file, onProgress, signal) =>
      ask("stage", { id: newShortId(randomHex), file }, onProgress, signal),
    bringIn: (id, onProgress) => ask("bring-in", { id }, onProgress),
    leave: (id) => ask("leave", { id }, unheard),
    finish: (onProgress) => ask("finish", null, onProgress),
  };
};
