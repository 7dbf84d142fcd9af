import { isRecordId, kindOf, type RecordId } from "../ids.ts";
import * as z from "../zod.ts";

const anyId = z.string().check(z.refine((id) => isRecordId(id), { error: "not a record id" }));

/**
 * These are the same: two records of one kind that stand for one thing. Resolved when read; no
 * reference is rewritten, so deleting the join undoes it.
 */
export const version = 1;
export const body = z
  .strictObject({ from: anyId as unknown as z.Schema<RecordId>, to: anyId as unknown as z.Schema<RecordId> })
  .check(
    z.refine(({ from, to }) => from !== to && kindOf(from) === kindOf(to), {
      error: "a join ties two different records of one kind",
    }),
  );
export type Join = z.Infer<typeof body>;
