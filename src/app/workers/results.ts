/** The worker for results: opens the store for reading, works out a field, hands back what came of it. */
import { ok, type Result } from "../../record/result.ts";
import { coverOfField, type FieldCover } from "../../science/ground-cover/field-cover.ts";
import { type Connection, connect } from "../../store/connection.ts";
import { linesOfField } from "./field-lines.ts";
import type { FieldAnswer, FieldQuestion } from "./results-talk.ts";

// The page hears of a blocked or lost database by its own connection: twice would say nothing new.
const open = (): Promise<Result<Connection>> => connect({ tell: () => undefined });
let opened: Promise<Result<Connection>> | undefined;

const answer = async ({ fields, wanted }: FieldQuestion): Promise<Result<FieldCover>> => {
  opened ??= open();
  const connection = await opened;
  if (!connection.ok) {
    opened = undefined;
    return connection;
  }
  const lines = await linesOfField(connection.value, fields);
  return lines.ok ? ok(coverOfField(lines.value, wanted)) : lines;
};

addEventListener("message", ({ data }: MessageEvent<FieldQuestion>) => {
  void answer(data).then((said) => postMessage({ n: data.n, answer: said } satisfies FieldAnswer));
});
