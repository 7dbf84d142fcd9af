/** Rings and holes that were begun and are not over. Loaded when there are any that were begun lately. */
import { readHole } from "../../../record/hole/reading.ts";
import type { RecordId } from "../../../record/ids.ts";
import { readRing } from "../../../record/ring/reading.ts";
import type { TestOf } from "../../parts/newest-of.ts";
import { spotsOf } from "../../parts/old-grass.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import type { SameField } from "../../parts/same-field.ts";

/** A ring or a hole, from its header alone. */
export type BegunTest = TestOf<"ring"> | TestOf<"hole">;

interface Begun {
  readonly field: Listed<"field">;
  readonly strip: Listed<"strip"> | undefined;
  readonly spot: Listed<"spot"> | undefined;
  /** When it was begun. */
  readonly atMs: number;
}

/** A hole that is not closed. */
export interface OpenHole extends Begun {
  readonly what: "hole";
  readonly id: RecordId<"observation">;
  readonly number: number;
  /** Worms found so far; null while a number is in doubt. */
  readonly worms: number | null;
}

/** A ring that was not ended; the board of its visit shows it with the others. */
export interface OpenRing extends Begun {
  readonly what: "ring";
  readonly visit: RecordId<"visit">;
  readonly letter: string;
  /** False while it waits to be started. */
  readonly running: boolean;
}

/** Reads what was begun, and leaves out what is over and what lies in a field that was deleted. */
export const unfinished = async (
  records: Reader,
  fields: readonly SameField[],
  begun: readonly BegunTest[],
): Promise<readonly (OpenHole | OpenRing)[]> => {
  const [entries, strips, spots, kit] = await Promise.all([
    records.entries(begun.map(({ id }) => id)),
    records.many([...new Set(begun.map(({ body }) => body.strip))]),
    spotsOf(records, begun),
    records.many([...new Set(begun.flatMap(({ body }) => (body.type === "ring" ? [body.ring] : [])))]),
  ]);
  return begun.flatMap(({ id, body }): readonly (OpenHole | OpenRing)[] => {
    const same = fields.find(({ ids }) => ids.includes(body.field));
    if (same === undefined) return [];
    const there = {
      field: same.field,
      strip: strips.find((strip) => strip.id === body.strip),
      spot: body.spot === undefined ? undefined : spots.get(body.spot),
      atMs: body.startedAtMs,
    };
    const own = entries.get(id) ?? [];
    if (body.type === "hole") {
      const { finished, foundTotal, settled } = readHole(own);
      if (finished) return [];
      return [{ ...there, what: "hole", id, number: body.number, worms: settled ? foundTotal : null }];
    }
    const { start, stop } = readRing(own);
    if (stop !== null) return [];
    const letter = kit.find((one) => one.id === body.ring)?.body.name ?? "";
    return [{ ...there, what: "ring", visit: body.visit, letter, running: start !== null }];
  });
};
