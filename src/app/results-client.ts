/** The page's end of the worker for results: asks it only for what is not kept. */

import type { RecordId } from "../record/ids.ts";
import { failed, type Problem, type Result } from "../record/result.ts";
import { FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION } from "../science/constants.ts";
import type { FieldResults, HolesAndRings } from "../science/field-results.ts";
import type { CoverWanted, FieldCover } from "../science/ground-cover/field-cover.ts";
import { ReadFailed } from "../screens/parts/reader.ts";
import type { ResultsDesk } from "../screens/parts/results-desk.ts";
import type { Connection } from "../store/connection.ts";
import { fieldToken, keptSummary } from "../store/field-states.ts";
import type {
  ResultsAnswer,
  ResultsJob,
  ResultsQuestion,
  ResultsTable,
  Tokens,
} from "./workers/results-talk.ts";

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

/** Ground cover came with the same message: it is drawn first, and this in a task of its own. */
const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

type ReadKept<T> = (field: RecordId<"field">, token: string) => Promise<T | undefined>;

/**
 * What was kept is large, and several parts of a page ask for the same at once: it is read once for each state
 * of the field. What was not kept is asked for again.
 */
const readOnce = <T>(read: ReadKept<T>): ReadKept<T> => {
  let last: { readonly of: string; readonly found: Promise<T | undefined> } | undefined;
  return (field, token) => {
    const of = `${field} ${token}`;
    if (last?.of === of) return last.found;
    const now = { of, found: read(field, token) };
    last = now;
    const forget = (): void => {
      if (last === now) last = undefined;
    };
    now.found.then((value) => value === undefined && forget(), forget);
    return now.found;
  };
};

const NO_COVER: FieldCover = { lines: 0, unfinished: [], onDays: [], oldGrass: [] };
const NO_HOLES_OR_RINGS: HolesAndRings = { worms: [], soaked: [], oldGrass: { worms: [], soaked: [] } };

/** The desk over a connection of the page. */
export const resultsDesk = (connection: Connection): ResultsDesk => {
  const ask = asker();
  const running = new Map<string, Promise<FieldResults>>();
  const got = <T>(result: Result<T>): T => {
    if (!result.ok) throw new ReadFailed(result.problem);
    return result.value;
  };
  const tokensOf = async (
    fields: readonly RecordId<"field">[],
    { stoneCounts, target }: CoverWanted,
  ): Promise<Tokens> => {
    // Read before the tests are: a result is then never taken for newer than it is.
    const state = got(await fieldToken(connection, fields));
    return { cover: [state, stoneCounts, target].join(" "), others: state };
  };
  const onceWorkedOut = (
    field: RecordId<"field">,
    fields: readonly RecordId<"field">[],
    wanted: CoverWanted,
    tokens: Tokens,
  ): Promise<FieldResults> => {
    const job = `${field} ${tokens.cover}`;
    const there = running.get(job);
    if (there !== undefined) return there;
    const work = ask("field", { field, fields, wanted, keepUnder: tokens })
      .then(got)
      .finally(() => running.delete(job));
    running.set(job, work);
    return work;
  };
  const keptCover = readOnce(
    async (field, token) =>
      got(await keptSummary(connection, field, FIELD_COVER_VERSION, token)) as FieldCover | undefined,
  );
  const keptOthers = readOnce(
    async (field, token) =>
      got(await keptSummary(connection, field, HOLES_AND_RINGS_VERSION, token)) as HolesAndRings | undefined,
  );
  return {
    field: async (fields, wanted) => {
      const [field] = fields;
      if (field === undefined) return NO_COVER;
      const tokens = await tokensOf(fields, wanted);
      const kept = await keptCover(field, tokens.cover);
      return kept ?? (await onceWorkedOut(field, fields, wanted, tokens)).cover;
    },
    all: async (fields, wanted) => {
      const [field] = fields;
      if (field === undefined) return { cover: NO_COVER, ...NO_HOLES_OR_RINGS };
      const tokens = await tokensOf(fields, wanted);
      const [cover, others] = await Promise.all([
        keptCover(field, tokens.cover),
        keptOthers(field, tokens.others),
      ]);
      if (cover !== undefined && others !== undefined) return { cover, ...others };
      const results = await onceWorkedOut(field, fields, wanted, tokens);
      await nextTask();
      return results;
    },
    ring: (ring, ground) => ask("ring", { ring, ground }),
    lines: async (asked) => (asked.length === 0 ? [] : got(await ask("lines", asked))),
  };
};
