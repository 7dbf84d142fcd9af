/** Knows whether anything of a field changed since a result was worked out, and keeps such results. */
import { kindOf, type RecordId } from "../record/ids.ts";
import { fieldOf } from "../record/list-keys.ts";
import type { RecordState } from "../record/record.ts";
import { ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import type { Stores } from "./schema.ts";
import { inTransaction, type Writing } from "./transaction.ts";

// A rope, a ring or a joining belongs to no field and changes the results of many: it counts here, and
// every field's token holds this count too.
const SHARED = "shared";

type SummaryKey = Stores["summaries"]["key"];

const countedFor = (record: RecordState): string | undefined =>
  fieldOf(record) ?? (kindOf(record.id) === "photo" ? undefined : SHARED);

/**
 * Changes the state of each field that these records belong to, in the transaction that writes them.
 *
 * @param last id of what the last command made; undefined for what is brought in, which may be written a
 * second time after a kill and so has no id of its own to go by
 */
export const countChange = async (
  tx: Writing<"fieldStates">,
  touched: readonly RecordState[],
  last: string | undefined,
): Promise<void> => {
  const fields = new Set(touched.map(countedFor).filter((field) => field !== undefined));
  await Promise.all(
    [...fields].map(async (field) => {
      const before = last === undefined ? await tx.get("fieldStates", field) : undefined;
      const now = {
        last: last ?? before?.last ?? "",
        updates: last === undefined ? (before?.updates ?? 0) + 1 : 0,
      };
      tx.put("fieldStates", { field, ...now });
    }),
  );
};

/**
 * A text that is the same as long as nothing changed that the results of these fields rest on. Read it
 * before the records: a result is then never taken for newer than it is.
 *
 * @param fields the field and all that were joined with it
 */
export const fieldToken = (
  connection: Connection,
  fields: readonly RecordId<"field">[],
): Promise<Result<string>> =>
  connection.use(async (db) => {
    const { store } = db.transaction("fieldStates");
    const states = await Promise.all([SHARED, ...[...fields].sort()].map((field) => store.get(field)));
    return ok(states.map((state) => `${state?.last ?? ""}+${state?.updates ?? 0}`).join(" "));
  });

/** What a result that is kept rests on. */
export interface KeptUnder {
  /** What was asked; an answer to another question is no use. */
  readonly question: string;
  /** `fieldToken` of the field. */
  readonly state: string;
}

/** A result that was kept. */
export interface Kept {
  readonly value: unknown;
  /** False when something of the field changed since: it must be worked out again. */
  readonly upToDate: boolean;
}

const asked = ({ question }: KeptUnder): string => `${JSON.stringify(question)} `;
const tokenOf = (under: KeptUnder): string => `${asked(under)}${under.state}`;

/**
 * A result that was kept, also one from before the last changes.
 *
 * @param science version of the science that worked it out
 * @param under the question, and the state of the field now
 * @returns undefined when nothing was kept that answers this question
 */
export const keptSummary = (
  connection: Connection,
  field: RecordId<"field">,
  science: string,
  under: KeptUnder,
): Promise<Result<Kept | undefined>> =>
  connection.use(async (db) => {
    const row = await db.get("summaries", [field, science]);
    if (row === undefined || !row.token.startsWith(asked(under))) return ok(undefined);
    return ok({ value: row.value, upToDate: row.token === tokenOf(under) });
  });

/** Keeps a result until the next one. Losing it loses nothing, so it does not wait for the disk. */
export const keepSummary = (
  connection: Connection,
  field: RecordId<"field">,
  science: string,
  under: KeptUnder,
  value: unknown,
): Promise<Result<undefined>> =>
  connection.use((db) =>
    inTransaction(db, ["summaries"], "relaxed", (tx) => {
      tx.put("summaries", { field, science, token: tokenOf(under), value });
      return ok(undefined);
    }),
  );

/** Rows looked through or dropped in one transaction. */
const SWEPT_AT_ONCE = 20;

const VERSION = /^(.+)-(\d+)$/;

/** Whether it is an earlier version of the same science; later ones belong to a newer app in another window. */
const isEarlier = (science: string, than: string): boolean => {
  const [, name, number] = VERSION.exec(science) ?? [];
  const [, nameNow, numberNow] = VERSION.exec(than) ?? [];
  return name !== undefined && name === nameNow && Number(number) < Number(numberNow);
};

/**
 * Drops results that were kept for earlier versions of the science, which nobody asks for again. It goes by small
 * steps over a store that no touch writes to, so nothing waits for it.
 *
 * @param versions the versions of now, each a name and a number such as `field-cover-2`
 * @returns how many were dropped
 */
export const sweepSummaries = async (
  connection: Connection,
  versions: readonly string[],
): Promise<Result<number>> => {
  let dropped = 0;
  let after: SummaryKey | undefined;
  do {
    const range = after === undefined ? undefined : IDBKeyRange.lowerBound(after, true);
    const keys = await connection.use(async (db) =>
      ok(await db.getAllKeys("summaries", range, SWEPT_AT_ONCE)),
    );
    if (!keys.ok) return keys;
    const earlier = keys.value.filter(([, science]) => versions.some((now) => isEarlier(science, now)));
    // The usual case writes nothing.
    if (earlier.length > 0) {
      const gone = await connection.use((db) =>
        inTransaction(db, ["summaries"], "relaxed", (tx) => {
          for (const key of earlier) tx.remove("summaries", key);
          return ok(undefined);
        }),
      );
      if (!gone.ok) return gone;
    }
    dropped += earlier.length;
    after = keys.value.at(-1);
  } while (after !== undefined);
  return ok(dropped);
};
