/** The newest tests of one type: rings, holes and notes between them take no line's place in a list. */
import type { RecordId } from "../../record/ids.ts";
import type { Observation } from "../../record/kinds/observation.ts";
import type { Listed, Reader } from "./reader.ts";

type Type = Observation["type"];

/** A test of one type with its header. */
export type TestOf<T extends Type> = Listed<"observation"> & {
  readonly body: Extract<Observation, { readonly type: T }>;
};

/** What was found. */
export interface Newest<T extends Type> {
  /** Newest first. */
  readonly tests: readonly TestOf<T>[];
  /** There are older ones. */
  readonly more: boolean;
  /** Older headers were not looked at: there may be more behind them, or none. */
  readonly unread: boolean;
}

/**
 * Reads the newest tests of one type, from headers alone and in growing parts, so that a list of lines costs no
 * more than its lines where there is nothing else.
 *
 * @param of a field, or null for all of them
 * @param most how many are wanted
 * @param among how many headers are looked through for them, a few more at the most: a field may hold
 *   thousands of another type and none of this one
 */
export const newestOf = async <T extends Type>(
  records: Reader,
  of: RecordId<"field"> | null,
  type: T,
  { most, among }: { readonly most: number; readonly among: number },
): Promise<Newest<T>> => {
  const tests: TestOf<T>[] = [];
  let looked = 0;
  let size = most + 1;
  let last: Listed<"observation"> | undefined;
  do {
    const part: readonly Listed<"observation">[] = await records.list(
      of === null ? { kind: "observation" } : { field: of, kind: "observation" },
      { newestFirst: true, limit: size, ...(last === undefined ? {} : { after: last.row }) },
    );
    tests.push(...part.filter((test): test is TestOf<T> => test.body.type === type));
    looked += part.length;
    last = part.length === size ? part.at(-1) : undefined;
    size = Math.min(2 * size, Math.max(most + 1, among - looked));
  } while (last !== undefined && tests.length <= most && looked < among);
  return { tests: tests.slice(0, most), more: tests.length > most, unread: last !== undefined };
};
