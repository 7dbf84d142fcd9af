/** The page's end of the worker for results: asks it only for what is not kept. */

import type { RecordId } from "../record/ids.ts";
import { failed, type Problem, type Result } from "../record/result.ts";
import { FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION } from "../science/constants.ts";
import type { FieldResults, HolesAndRings } from "../science/field-results.ts";
import type { CoverWanted, FieldCover } from "../science/ground-cover/field-cover.ts";
import { ReadFailed } from "../screens/parts/reader.ts";
import type { ResultsDesk } from "../screens/parts/results-desk.ts";
import type { Connection } from "../store/connection.ts";
import { fieldToken, type Kept, type KeptUnder, keptSummary } from "../store/field-states.ts";
import { steadyWorker } from "./steady-worker.ts";
import type {
  KeepUnder,
  ResultsAnswer,
  ResultsJob,
  ResultsQuestion,
  ResultsTable,
} from "./workers/results-talk.ts";

const NO_WORKER: Problem["code"] = "results/no-worker";

type Ask = <J extends ResultsJob>(
  job: J,
  wants: ResultsTable[J]["wants"],
) => Promise<Result<ResultsTable[J]["gives"]>>;

const asker = (): Ask => {
  let last = 0;
  const waiting = new Map<number, (answer: Result<never>) => void>();
  const post = steadyWorker<ResultsQuestion, ResultsAnswer>(
    () => new Worker(new URL("./workers/results.ts", import.meta.url), { type: "module" }),
    {
      answer: ({ n, answer }) => {
        waiting.get(n)?.(answer as Result<never>);
        waiting.delete(n);
      },
      broke: () => {
        for (const answer of waiting.values()) answer(failed(NO_WORKER));
        waiting.clear();
      },
    },
  );
  return (job, wants) =>
    new Promise((resolve) => {
      last += 1;
      waiting.set(last, resolve);
      post({ n: last, job, wants } as ResultsQuestion);
    });
};

/** Ground cover came with the same message: it is drawn first, and this in a task of its own. */
const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** A result that was kept, with the type that its version of the science stands for. */
interface KeptAs<T> extends Kept {
  readonly value: T;
}

type ReadKept = (field: RecordId<"field">, under: KeptUnder) => Promise<Kept | undefined>;

/**
 * What was kept is large, and several parts of a page ask for the same at once: it is read once for each state
 * of the field. What was not kept, or is out of date, is asked for again.
 */
const readOnce = (read: ReadKept): ReadKept => {
  let last: { readonly of: string; readonly found: Promise<Kept | undefined> } | undefined;
  return (field, under) => {
    const of = JSON.stringify([field, under.question, under.state]);
    if (last?.of === of) return last.found;
    const now = { of, found: read(field, under) };
    last = now;
    const forget = (): void => {
      if (last === now) last = undefined;
    };
    now.found.then((kept) => kept?.upToDate !== true && forget(), forget);
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
  const underNow = async (
    fields: readonly RecordId<"field">[],
    { stoneCounts, target }: CoverWanted,
  ): Promise<KeepUnder> => {
    // Read before the tests are: a result is then never taken for newer than it is.
    const state = got(await fieldToken(connection, fields));
    return { cover: { question: `${stoneCounts} ${target}`, state }, others: { question: "", state } };
  };
  const onceWorkedOut = (
    field: RecordId<"field">,
    fields: readonly RecordId<"field">[],
    wanted: CoverWanted,
    keepUnder: KeepUnder,
  ): Promise<FieldResults> => {
    const job = JSON.stringify([field, keepUnder.cover]);
    const there = running.get(job);
    if (there !== undefined) return there;
    const work = ask("field", { field, fields, wanted, keepUnder })
      .then(got)
      .finally(() => running.delete(job));
    running.set(job, work);
    return work;
  };
  const keptIn = (science: string): ReadKept =>
    readOnce(async (field, under) => got(await keptSummary(connection, field, science, under)));
  const keptCover = keptIn(FIELD_COVER_VERSION);
  const keptOthers = keptIn(HOLES_AND_RINGS_VERSION);
  return {
    field: async (fields, wanted, meanwhile) => {
      const [field] = fields;
      if (field === undefined) return NO_COVER;
      const under = await underNow(fields, wanted);
      const kept = (await keptCover(field, under.cover)) as KeptAs<FieldCover> | undefined;
      if (kept?.upToDate) return kept.value;
      const work = onceWorkedOut(field, fields, wanted, under);
      if (kept !== undefined) meanwhile?.(kept.value);
      return (await work).cover;
    },
    all: async (fields, wanted, meanwhile) => {
      const [field] = fields;
      if (field === undefined) return { cover: NO_COVER, ...NO_HOLES_OR_RINGS };
      const under = await underNow(fields, wanted);
      const [cover, others] = (await Promise.all([
        keptCover(field, under.cover),
        keptOthers(field, under.others),
      ])) as [KeptAs<FieldCover> | undefined, KeptAs<HolesAndRings> | undefined];
      const kept =
        cover === undefined || others === undefined
          ? undefined
          : { value: { cover: cover.value, ...others.value }, upToDate: cover.upToDate && others.upToDate };
      if (kept?.upToDate) return kept.value;
      const work = onceWorkedOut(field, fields, wanted, under);
      if (kept !== undefined) meanwhile?.(kept.value);
      const results = await work;
      await nextTask();
      return results;
    },
    ring: (ring, ground) => ask("ring", { ring, ground }),
    lines: async (asked) => (asked.length === 0 ? [] : got(await ask("lines", asked))),
  };
};
