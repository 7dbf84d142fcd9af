/** The board of the day: each ring changes by itself, so that one reading redraws one row. */
import { batch, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import { kindOf, type RecordId } from "../../../record/ids.ts";
import type { Changed } from "../../../store/changes.ts";
import type { House } from "../../parts/house.ts";
import { useHouse } from "../../parts/house.ts";
import { ReadFailed } from "../../parts/reader.ts";
import { type DayRing, type RingDay, readRingDay } from "./day.ts";

/** A ring of the board. The object stays the same as long as the ring is on the board. */
export interface BoardRing {
  readonly id: RecordId<"observation">;
  readonly ring: ReadonlySignal<DayRing>;
}

export interface Board {
  readonly visit: RingDay["visit"];
  readonly field: RingDay["field"];
}

export interface BoardModel {
  /** undefined while it is read, null when the visit is not on this device. */
  readonly board: ReadonlySignal<Board | null | undefined>;
  readonly rings: ReadonlySignal<readonly BoardRing[]>;
  readonly hear: (changed: Changed) => void;
}

interface Kept {
  readonly id: RecordId<"observation">;
  readonly ring: Signal<DayRing>;
}

/** What can change a board; a mark on a line cannot. */
const CONCERNS = new Set(["observation", "kit", "strip", "visit", "field", "join"]);

/** Makes the board of a visit. */
export const boardModel = (house: Pick<House, "records" | "tell">, visit: RecordId<"visit">): BoardModel => {
  const board = signal<Board | null | undefined>(undefined);
  const rings = signal<readonly Kept[]>([]);
  let stale: "all" | Set<RecordId> = "all";
  let reading = false;

  const show = (day: RingDay | null): void => {
    batch(() => {
      if (day === null) {
        board.value = null;
        return;
      }
      const now = board.value;
      const same =
        now?.visit.revision.rev === day.visit.revision.rev &&
        now.field.revision.rev === day.field.revision.rev;
      if (!same) board.value = { visit: day.visit, field: day.field };
      const before = new Map(rings.value.map((kept) => [kept.id, kept]));
      const next = day.rings
        .filter(({ deleted }) => !deleted)
        .map((ring): Kept => {
          const kept = before.get(ring.id);
          if (kept === undefined) return { id: ring.id, ring: signal(ring) };
          kept.ring.value = ring;
          return kept;
        });
      const unchanged =
        next.length === rings.value.length && next.every((kept, at) => kept === rings.value[at]);
      if (!unchanged) rings.value = next;
    });
  };

  const read = async (): Promise<void> => {
    if (reading) return;
    reading = true;
    try {
      while (stale === "all" || stale.size > 0) {
        const old: "all" | ReadonlySet<RecordId> = stale;
        stale = new Set();
        const known = new Map(rings.value.map(({ id, ring }) => [id as RecordId, ring.value]));
        show(await readRingDay(house.records, visit, known, (id) => old !== "all" && !old.has(id)));
      }
    } catch (error) {
      if (!(error instanceof ReadFailed)) throw error;
      house.tell(error.problem);
    } finally {
      reading = false;
    }
  };

  return {
    board,
    rings,
    hear: (changed) => {
      if (changed === "everything") stale = "all";
      else {
        const concerned = changed.filter((id) => CONCERNS.has(kindOf(id)));
        if (concerned.length === 0) return;
        if (stale !== "all") for (const id of concerned) stale.add(id);
      }
      void read();
    },
  };
};

/** The board of a visit, kept up to date while the screen stands. */
export const useBoard = (visit: RecordId<"visit">): BoardModel => {
  const house = useHouse();
  const model = useMemo(() => boardModel(house, visit), [house, visit]);
  useEffect(() => {
    model.hear("everything");
    return house.records.subscribe(model.hear);
  }, [house, model]);
  return model;
};
