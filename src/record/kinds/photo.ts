import { isRecordId, type RecordId } from "../ids.ts";
import { wallMs, whole } from "../shapes.ts";
import * as z from "../zod.ts";

const anyId = z.string().check(z.refine((id) => isRecordId(id), { error: "not a record id" }));

/** A photo's header. The bytes lie apart, under their digest, and are never rewritten. */
export const version = 1;
export const body = z.strictObject({
  of: anyId as unknown as z.Schema<RecordId>,
  /** SHA-256 of the bytes, in hexadecimal. */
  sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
  byteCount: whole(1, 50_000_000),
  widthPx: whole(1, 100_000),
  heightPx: whole(1, 100_000),
  takenAtMs: wallMs,
});
export type Photo = z.Infer<typeof body>;
