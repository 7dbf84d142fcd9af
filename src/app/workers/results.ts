/** The worker for results: opens the store for reading, works out fields and lines, hands back what came of it. */
import { ok, type Result } from "../../record/result.ts";
import { resultsOfField } from "../../science/field-results.ts";
import { type Connection, connect } from "../../store/connection.ts";
import { testsOfField } from "./field-tests.ts";
import { sumsOfLines } from "./line-sums.ts";
import type { ResultsAnswer, ResultsQuestion } from "./results-talk.ts";

// The page hears of a blocked or lost database by its own connection: twice would say nothing new.
const open = (): Promise<Result<Connection>> => connect({ tell: () => undefined });
let opened: Promise<Result<Connection>> | undefined;

const answer = async (question: ResultsQuestion): Promise<ResultsAnswer["answer"]> => {
  opened ??= open();
  const connection = await opened;
  if (!connection.ok) {
    opened = undefined;
    return connection;
  }
  if (question.job === "lines") return sumsOfLines(connection.value, question.wants);
  const tests = await testsOfField(connection.value, question.wants.fields);
  return tests.ok ? ok(resultsOfField(tests.value, question.wants.wanted)) : tests;
};

addEventListener("message", ({ data }: MessageEvent<ResultsQuestion>) => {
  void answer(data).then((said) => postMessage({ n: data.n, answer: said } satisfies ResultsAnswer));
});
