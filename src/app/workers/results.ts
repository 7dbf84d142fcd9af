/** The worker for results: works out fields, lines and curves, keeps what came of a field, and hands it back. */
import { ok, type Result } from "../../record/result.ts";
import { FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION } from "../../science/constants.ts";
import { type FieldResults, resultsOfField } from "../../science/field-results.ts";
import { type Connection, connect } from "../../store/connection.ts";
import { keepSummary, sweepSummaries } from "../../store/field-states.ts";
import { sweepPhotos } from "../../store/photos.ts";
import { testsOfField } from "./field-tests.ts";
import { sumsOfLines } from "./line-sums.ts";
import type { ResultsAnswer, ResultsQuestion, ResultsTable } from "./results-talk.ts";
import { curvesOfRing } from "./ring-curves.ts";

// The page hears of a blocked or lost database by its own connection: twice would say nothing new.
const open = (): Promise<Result<Connection>> => connect({ tell: () => undefined });
let opened: Promise<Result<Connection>> | undefined;

const resultsOf = async (
  connection: Connection,
  { field, fields, wanted, keepUnder }: ResultsTable["field"]["wants"],
): Promise<Result<FieldResults>> => {
  const tests = await testsOfField(connection, fields);
  if (!tests.ok) return tests;
  const results = resultsOfField(tests.value, wanted);
  const { cover, ...others } = results;
  // Losing them loses nothing, so nobody waits for them and a full device is no reason to say so here. Apart,
  // because most screens want the cover alone; and here, because copying them would hold up the page.
  void keepSummary(connection, field, FIELD_COVER_VERSION, keepUnder.cover, cover);
  void keepSummary(connection, field, HOLES_AND_RINGS_VERSION, keepUnder.others, others);
  return ok(results);
};

const answer = async (question: ResultsQuestion): Promise<ResultsAnswer["answer"]> => {
  opened ??= open();
  const connection = await opened;
  if (!connection.ok) {
    opened = undefined;
    return connection;
  }
  if (question.job === "lines") return sumsOfLines(connection.value, question.wants);
  return question.job === "ring"
    ? curvesOfRing(connection.value, question.wants.ring, question.wants.ground)
    : resultsOf(connection.value, question.wants);
};

/**
 * Behind the first answer, once in the life of a page: results of earlier versions go (after an update nothing is
 * kept under the new ones, so whoever looks at results asks here), and bytes of photos whose record never came.
 */
let swept = false;
const sweepOnce = async (): Promise<void> => {
  const connection = await opened;
  if (swept || !connection?.ok) return;
  swept = true;
  await sweepSummaries(connection.value, [FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION]);
  await sweepPhotos(connection.value, Date.now());
};

addEventListener("message", ({ data }: MessageEvent<ResultsQuestion>) => {
  void answer(data)
    .then((said) => postMessage({ n: data.n, answer: said } satisfies ResultsAnswer))
    // The page hears of it and tells whoever asked, who would wait for ever.
    .catch(reportError)
    .then(sweepOnce)
    // Nobody waits for it, and the next page sweeps again: no reason to end the worker under other questions.
    .catch(() => undefined);
});
