/** A record: a set of revisions, usually one, and for measurements a set of entries. */
import { type Entry, entry, inOrder } from "./entry.ts";
import type { Kind, RecordId } from "./ids.ts";
import type { BodyOf } from "./kinds/all.ts";
import { idOf, shortId, wallMs, whole } from "./shapes.ts";
import { compareStamps, compareText, type Stamp } from "./stamp.ts";
import * as z from "./zod.ts";

/** Highest number an actor may reach; a file that claims more is refused. */
export const MAX_REVISION_NUMBER = 2 ** 40;
/** Most revisions that may stand side by side, and most entries of one measurement. */
export const MAX_SIDE_BY_SIDE = 1000;
export const MAX_ENTRIES = 20_000;

const revisionNumber = whole(1, MAX_REVISION_NUMBER);

/** Everything of a revision but its body, whose schema depends on the kind. */
export const revisionFrame = {
  /** Random 64-bit id of this revision. */
  rev: shortId,
  /** Who made it (random per start of the app) and that actor's running number. */
  dot: z.tuple([shortId, revisionNumber]),
  /** What it was made from: per actor the highest number it had seen, sorted by actor, own dot excluded. */
  seen: z.array(z.tuple([shortId, revisionNumber])).check(z.maxLength(10_000)),
  stamp: z.strictObject({ wallMs, counter: whole(0, MAX_REVISION_NUMBER), device: shortId }),
  author: z.nullable(idOf("person")),
  v: whole(1, 1_000_000),
  /** Deleted revisions keep their body. */
  deleted: z.exactOptional(z.literal(true)),
} as const;

/** One version of a record. */
export interface Revision<K extends Kind = Kind> {
  readonly rev: string;
  readonly dot: readonly [actor: string, n: number];
  readonly seen: readonly (readonly [actor: string, n: number])[];
  readonly stamp: Stamp;
  readonly author: string | null;
  readonly v: number;
  readonly body: BodyOf[K];
  readonly deleted?: true;
}

/**
 * A record as it is held. `revs` is sorted by `rev` and `entries` by their order, so that equal states
 * are equal texts. An erased record keeps its id and nothing else.
 */
export interface RecordState<K extends Kind = Kind> {
  readonly id: RecordId<K>;
  readonly erased: boolean;
  readonly revs: readonly Revision<K>[];
  readonly entries: readonly Entry[];
}

/** A record that does not exist yet. */
export const emptyRecord = <K extends Kind>(id: RecordId<K>): RecordState<K> => ({
  id,
  erased: false,
  revs: [],
  entries: [],
});

/** What is left when somebody is forgotten: id and kind, on every device that it reaches. */
export const erasedRecord = <K extends Kind>(id: RecordId<K>): RecordState<K> => ({
  ...emptyRecord(id),
  erased: true,
});

/** The highest number of an actor that a revision was made from; 0 for none. */
export const seenOf = (revision: Pick<Revision, "seen">, actor: string): number =>
  revision.seen.find(([who]) => who === actor)?.[1] ?? 0;

/** Was `b` known when `a` was made? Then `a` stands in its place. */
export const supersedes = (a: Revision, b: Revision): boolean =>
  a.rev !== b.rev && seenOf(a, b.dot[0]) >= b.dot[1];

/** Living before deleted, then the later stamp, then the higher `rev`. */
const compareShown = (a: Revision, b: Revision): number =>
  Number(a.deleted === true) - Number(b.deleted === true) ||
  compareStamps(b.stamp, a.stamp) ||
  compareText(b.rev, a.rev);

/** The revisions with the one to show first; the others are offered side by side. */
export const byShown = <K extends Kind>(record: Pick<RecordState<K>, "revs">): Revision<K>[] =>
  [...record.revs].sort(compareShown);

/** The revision to show, or undefined for a record that is erased or has none. */
export const shown = <K extends Kind>(record: Pick<RecordState<K>, "revs">): Revision<K> | undefined =>
  byShown(record)[0];

/** What a new revision made from this record has seen: everything that stands there now. */
export const seenNow = (record: Pick<RecordState, "revs">): [string, number][] => {
  const highest = new Map<string, number>();
  for (const revision of record.revs)
    for (const [actor, n] of [...revision.seen, revision.dot])
      highest.set(actor, Math.max(highest.get(actor) ?? 0, n));
  return [...highest].sort(([a], [b]) => compareText(a, b));
};

/** Revisions and entries in the one order in which they are written down. */
export const arranged = <K extends Kind>(record: RecordState<K>): RecordState<K> => ({
  ...record,
  revs: [...record.revs].sort((a, b) => compareText(a.rev, b.rev)),
  entries: inOrder(record.entries),
});

/** Schema of the entries of one record. */
export const entryList = z.array(entry).check(z.maxLength(MAX_ENTRIES));
