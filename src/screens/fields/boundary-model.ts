/** The draft of a boundary as it is stored, and the boundary once it is kept. */
import { type Signal, signal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { ok } from "../../record/result.ts";
import { fieldSize } from "../../science/position/field-size.ts";
import { getMeta } from "../../store/meta.ts";
import { inTransaction } from "../../store/transaction.ts";
import { type House, useHouse } from "../parts/house.ts";
import { type BoundaryDraft, type Corner, closedEdge, draftKey } from "./boundary-draft.ts";

/** A draft that is open on a screen. */
export interface OpenDraft {
  /** What is stored; null when nothing is being made, undefined while it is read. */
  readonly stored: Signal<BoundaryDraft | null | undefined>;
  /**
   * Changes what is stored, in the order asked for; it is shown only once it is on the disk.
   *
   * @param change a function of the stored draft, so that two windows do not lose each other's corners; the
   * same draft changes nothing, null takes it away
   */
  readonly change: (change: (draft: BoundaryDraft | null) => BoundaryDraft | null) => Promise<boolean>;
}

/** Opens the draft of a field. */
const openDraft = (house: House, field: RecordId<"field">): OpenDraft & { readonly read: () => void } => {
  const key = draftKey(field);
  const { connection } = house.records;
  const stored = signal<BoundaryDraft | null | undefined>(undefined);
  let last: Promise<boolean> = Promise.resolve(true);
  const write = async (change: (draft: BoundaryDraft | null) => BoundaryDraft | null): Promise<boolean> => {
    const written = await connection.use((db) =>
      inTransaction(db, ["meta"], key.durability, async (tx) => {
        const found = await tx.get("meta", key.name);
        const before = (found === undefined ? undefined : key.read(found)) ?? null;
        const next = change(before);
        if (next === null) tx.remove("meta", key.name);
        else if (next !== before) tx.put("meta", next, key.name);
        return ok(next);
      }),
    );
    if (written.ok) stored.value = written.value;
    else house.tell(written.problem);
    return written.ok;
  };
  return {
    stored,
    change: (change) => {
      last = last.then(
        () => write(change),
        () => write(change),
      );
      return last;
    },
    read: () => {
      void getMeta(connection, key).then((found) => {
        if (!found.ok) house.tell(found.problem);
        else if (stored.value === undefined) stored.value = found.value ?? null;
      });
    },
  };
};

/** The draft of a field, for a screen. */
export const useDraft = (field: RecordId<"field">): OpenDraft => {
  const house = useHouse();
  const draft = useMemo(() => openDraft(house, field), [house, field]);
  useEffect(draft.read, [draft]);
  return draft;
};

/** Area and length of an edge, in SI; null while it encloses none. */
export const sizeOf = (
  corners: readonly Pick<Corner, "latitudeDeg" | "longitudeDeg">[],
): { readonly areaM2: number; readonly perimeterM: number } | null => {
  const { boundary } = closedEdge(
    corners.map(({ latitudeDeg, longitudeDeg }) => ({
      latitudeDeg,
      longitudeDeg,
      accuracyM: null,
      atMs: null,
    })),
  );
  const size = boundary.ok ? fieldSize(boundary.value) : boundary;
  return size.ok ? { areaM2: size.value.areaM2, perimeterM: size.value.perimeterM } : null;
};

/** Writes the boundary of a field; null takes it away. */
export const writeBoundary = async (
  house: House,
  field: RecordId<"field">,
  corners: readonly Corner[] | null,
): Promise<boolean> => {
  const boundary = corners?.map(({ latitudeDeg, longitudeDeg }) => ({ latitudeDeg, longitudeDeg })) ?? null;
  const written = await house.write(house.pen.change(field, { boundary }));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};
