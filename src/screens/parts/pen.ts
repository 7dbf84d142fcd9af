/** The pen: signs what is written down with who, when and on which device. */
import { randomHex } from "../../device/chance.ts";
import { readClock } from "../../device/clock.ts";
import type { Json } from "../../record/canonical.ts";
import type { Change, Delete, Erase, Moment, Signature, Write } from "../../record/command/command.ts";
import { type Kind, newRecordId, newShortId, type RecordId } from "../../record/ids.ts";
import type { BodyOf } from "../../record/kinds/all.ts";

/** Makes signed commands. */
export interface Pen {
  /** A signature for one revision. */
  readonly sign: () => Signature;
  /** The moment of a reading that is looked at and entered now. */
  readonly moment: () => Moment;
  /** Writes a new record; the id is chosen here. */
  readonly write: <K extends Kind>(kind: K, body: BodyOf[K]) => Write & { readonly id: RecordId<K> };
  /** Changes properties; those that are named in `without` it is to have no more. */
  readonly change: <K extends Kind>(
    id: RecordId<K>,
    patch: Partial<BodyOf[K]>,
    without?: readonly MayLack<BodyOf[K]>[],
  ) => Change;
  readonly remove: (id: RecordId) => Delete;
  readonly restore: (id: RecordId) => Delete;
  readonly erase: (id: RecordId) => Erase;
}

/** The properties that may be left out. */
export type MayLack<T> = T extends unknown
  ? { [P in keyof T]-?: object extends Pick<T, P> ? P : never }[keyof T] & string
  : never;

type Plain = { readonly [key: string]: Json };

/**
 * A pen for one start of the app.
 *
 * @param device id of this installation
 * @param person who is measuring now; read at every signature because it can change in between
 */
export const newPen = (device: string, person: () => RecordId<"person"> | null): Pen => {
  // The actor is new at every start: two cloned phones share a device id and would otherwise lose a revision.
  const actor = newShortId(randomHex);
  let n = 0;
  const sign = (): Signature => {
    n += 1;
    return {
      rev: newShortId(randomHex),
      actor,
      n,
      stamp: { wallMs: readClock().wallMs, counter: n, device },
      author: person(),
    };
  };
  return {
    sign,
    moment: () => {
      const { wallMs, monoMs, pageId } = readClock();
      return {
        id: newShortId(randomHex),
        lookedAtMs: wallMs,
        enteredAtMs: wallMs,
        monoMs,
        page: pageId,
        device,
        by: person(),
      };
    },
    write: (kind, body) => ({
      op: "write",
      id: newRecordId(kind, randomHex) as RecordId & RecordId<typeof kind>,
      by: sign(),
      body: body as unknown as Plain,
    }),
    change: (id, patch, without = []) => ({
      op: "change",
      id,
      by: sign(),
      patch: patch as unknown as Plain,
      ...(without.length === 0 ? {} : { without }),
    }),
    remove: (id) => ({ op: "delete", id, by: sign() }),
    restore: (id) => ({ op: "restore", id, by: sign() }),
    erase: (id) => ({ op: "erase", id }),
  };
};
