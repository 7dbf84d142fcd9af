/** Reading records for screens: the version that is shown, and entries in their order. */
import type { Entry } from "../../record/entry.ts";
import { type Kind, kindOf, type RecordId } from "../../record/ids.ts";
import type { Join } from "../../record/kinds/join.ts";
import { type Revision, shown } from "../../record/record.ts";
import type { Problem, Result } from "../../record/result.ts";
import type { ChangeListener } from "../../store/changes.ts";
import type { Connection } from "../../store/connection.ts";
import { type ListOf, type ListPart, list, listDeleted, listJoins } from "../../store/list.ts";
import { readEntries, readHeaders } from "../../store/read.ts";
import type { HeaderRow } from "../../store/schema.ts";

/** A record as lists show it. */
export interface Listed<K extends Kind = Kind> {
  readonly id: RecordId<K>;
  readonly revision: Revision<K>;
  readonly body: Revision<K>["body"];
  readonly deleted: boolean;
  /** How many versions stand side by side. */
  readonly versions: number;
  readonly row: HeaderRow<K>;
}

/** A query could not be answered; the screen says why and keeps what it showed. */
export class ReadFailed extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.code);
    this.problem = problem;
  }
}

/** What screens read by. Every function rejects with `ReadFailed` when the store cannot answer. */
export interface Reader {
  readonly connection: Connection;
  readonly subscribe: (listener: ChangeListener) => () => void;
  readonly one: <K extends Kind>(id: RecordId<K>) => Promise<Listed<K> | undefined>;
  readonly many: <K extends Kind>(ids: readonly RecordId<K>[]) => Promise<readonly Listed<K>[]>;
  readonly list: <K extends Kind>(of: ListOf<K>, part?: ListPart) => Promise<readonly Listed<K>[]>;
  readonly deleted: () => Promise<readonly Listed[]>;
  readonly joins: () => Promise<readonly Join[]>;
  readonly entries: (ids: readonly RecordId[]) => Promise<ReadonlyMap<RecordId, readonly Entry[]>>;
}

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new ReadFailed(result.problem);
  return result.value;
};

const listed = <K extends Kind>(rows: readonly HeaderRow<K>[]): Listed<K>[] =>
  rows.flatMap((row) => {
    const revision = shown(row);
    return revision === undefined
      ? []
      : [
          {
            id: row.id,
            revision,
            body: revision.body,
            deleted: revision.deleted === true,
            versions: row.revs.length,
            row,
          },
        ];
  });

/** Joinings are few, and every part of a page asks for them: they are read once until one of them changes. */
const joinsOnce = (connection: Connection): Reader["joins"] => {
  let read: Promise<readonly Join[]> | undefined;
  const forget = (): void => {
    read = undefined;
  };
  connection.subscribe((changed) => {
    if (changed === "everything" || changed.some((id) => kindOf(id) === "join")) forget();
  });
  return () => {
    if (read !== undefined) return read;
    const now = listJoins(connection).then(got);
    read = now;
    // What could not be read is asked for again.
    now.catch(() => {
      if (read === now) forget();
    });
    return now;
  };
};

/** A reader over a connection. */
export const newReader = (connection: Connection): Reader => ({
  connection,
  subscribe: connection.subscribe,
  one: async (id) => listed(got(await readHeaders(connection, [id])))[0],
  many: async (ids) => listed(got(await readHeaders(connection, ids))),
  list: async (of, part) => listed(got(await list(connection, of, part))),
  deleted: async () => listed(got(await listDeleted(connection))),
  joins: joinsOnce(connection),
  entries: async (ids) => got(await readEntries(connection, ids)),
});
