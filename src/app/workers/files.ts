/** The worker for files: writes and reads archives and brings them in, so that no touch waits for it. */
import { type FileJobs, fileJobs } from "../../exchange/archive/jobs.ts";
import type { FileProgress, Watch } from "../../exchange/archive/reports.ts";
import { ok, type Result } from "../../record/result.ts";
import { connect } from "../../store/connection.ts";
import type { FileAnswer, FileQuestion } from "./files-talk.ts";

// The page hears of a blocked or lost database by its own connection: twice would say nothing new.
const open = async (): Promise<Result<FileJobs>> => {
  const connected = await connect({ tell: () => undefined });
  return connected.ok ? ok(fileJobs(connected.value)) : connected;
};
let opened: Promise<Result<FileJobs>> | undefined;
const stops = new Map<number, AbortController>();

const say = (answer: FileAnswer): void => postMessage(answer);

const run = (jobs: FileJobs, question: Exclude<FileQuestion, { job: "stop" }>, watch: Watch) => {
  switch (question.job) {
    case "make-copy":
      return jobs.makeCopy(question.wants, watch);
    case "stage":
      return jobs.stage(question.wants.id, question.wants.file, watch);
    case "bring-in":
      return jobs.bringIn(question.wants.id, watch.onProgress);
    case "leave":
      return jobs.leave(question.wants.id);
    case "finish":
      return jobs.finish(watch.onProgress);
  }
};

/** Least time between two messages of progress: more would only keep the page busy. */
const PROGRESS_EVERY_MS = 100;

const watchOf = (n: number, signal: AbortSignal): Watch => {
  let lastAtMs = 0;
  let lastStep: FileProgress["step"] | undefined;
  return {
    signal,
    onProgress: (progress) => {
      const nowMs = performance.now();
      const isLast = progress.done === progress.of;
      if (progress.step === lastStep && !isLast && nowMs - lastAtMs < PROGRESS_EVERY_MS) return;
      lastAtMs = nowMs;
      lastStep = progress.step;
      say({ n, progress });
    },
  };
};

const answer = async (question: Exclude<FileQuestion, { job: "stop" }>): Promise<void> => {
  const { n } = question;
  const stop = new AbortController();
  stops.set(n, stop);
  try {
    opened ??= open();
    const jobs = await opened;
    if (!jobs.ok) opened = undefined;
    say({ n, answer: jobs.ok ? await run(jobs.value, question, watchOf(n, stop.signal)) : jobs });
  } finally {
    stops.delete(n);
  }
};

/** A bug ends the worker loudly, and the page then says so: a promise that nobody hears would hang it. */
const fail = (error: unknown): void => {
  setTimeout(() => {
    throw error;
  });
};

addEventListener("message", ({ data }: MessageEvent<FileQuestion>) => {
  if (data.job === "stop") stops.get(data.n)?.abort();
  else answer(data).catch(fail);
});
