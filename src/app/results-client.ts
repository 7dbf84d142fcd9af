/** The page's end of the worker for results: asks it only for what is not kept. */

import type { RecordId } from "../record/ids.ts";
import { failed, type Problem, type Result } from "../record/result.ts";
import { FIELD_COVER_VERSION } from "../science/constants.ts";
import type { CoverWanted, FieldCover } from "../science/ground-cover/field-cover.ts";
import { ReadFailed } from "../screens/parts/reader.ts";
import type { ResultsDesk } from "../screens/parts/results-desk.ts";
import type { Connection } from "../store/connection.ts";
import { fieldToken, keepSummary, keptSummary } from "../store/field-states.ts";
import type { ResultsAnswer, ResultsJob, ResultsQuestion, ResultsTable } from "./workers/results-talk.ts";

const NO_WORKER: Problem["code"] = "results/no-worker";

type Ask = <J extends ResultsJob>(
  job: J,
  wants: ResultsTable[J]["wants"],
) => Promise<Result<ResultsTable[J]["gives"]>>;

/** A worker that starts at the first question, and again after it broke. */
const asker = (): Ask => {
  let worker: Worker | undefined;
  let last = 0;
  const waiting = new Map<number, (answer: Result<never>) => void>();
  const start = (): Worker => {
    const started = new Worker(new URL("./workers/results.ts", import.meta.url), { type: "module" });
    started.addEventListener("message", ({ data }: MessageEvent<ResultsAnswer>) => {
      waiting.get(data.n)?.(data.answer as Result<never>);
      waiting.delete(data.n);
    });
    started.addEventListener("error", () => {
      started.terminate();
      worker = undefined;
      for (const answer of waiting.values()) answer(failed(NO_WORKER));
      waiting.clear();
    });
    return started;
  };
  return (job, wants) =>
    new Promise((resolve) => {
      worker ??= start();
      last += 1;
      waiting.set(last, resolve);
      worker.postMessage({ n: last, job, wants } as ResultsQuestion);
    });
};

/** The desk over a connection of the page. */
export const resultsDesk = (connection: Connection): ResultsDesk => {
  const ask = asker();
  const running = new Map<string, Promise<FieldCover>>();
  const got = <T>(result: Result<T>): T => {
    if (!result.ok) throw new ReadFailed(result.problem);
    return result.value;
  };
  const workOut = async (
    field: RecordId<"field">,
    fields: readonly RecordId<"field">[],
    wanted: CoverWanted,
    token: string,
  ): Promise<FieldCover> => {
    const cover = got(await ask("field", { fields, wanted }));
    // Losing it loses nothing, so nobody waits for it and a full device is no reason to say so here.
    void keepSummary(connection, field, FIELD_COVER_VERSION, token, cover);
    return cover;
  };
  return {
    field: async (fields, wanted) => {
      const [field] = fields;
      if (field === undefined) return { lines: 0, unfinished: [], onDays: [] };
      const { stoneCounts, target } = wanted;
      // Read before the lines are: a result is then never taken for newer than it is.
      const state = got(await fieldToken(connection, fields));
      const token = [state, stoneCounts, target].join(" ");
      const kept = got(await keptSummary(connection, field, FIELD_COVER_VERSION, token));
      if (kept !== undefined) return kept as FieldCover;
      const job = `${field} ${token}`;
      const there = running.get(job);
      if (there !== undefined) return there;
      const work = workOut(field, fields, wanted, token).finally(() => running.delete(job));
      running.set(job, work);
      return work;
    },
    lines: async (asked) => (asked.length === 0 ? [] : got(await ask("lines", asked))),
  };
};
