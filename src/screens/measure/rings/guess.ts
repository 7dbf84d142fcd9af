/** The grower's guess of what soaks in within an hour, kept beside the result. */
import type { RecordId } from "../../../record/ids.ts";
import type { House } from "../../parts/house.ts";
import type { Listed, Reader } from "../../parts/reader.ts";

const WHAT = "soaked-in-60-min-mm";

/** Where a guess belongs. */
export interface GuessAt {
  readonly visit: RecordId<"visit">;
  readonly field: RecordId<"field">;
  readonly strip: RecordId<"strip">;
}

const isGuess =
  ({ strip, visit }: GuessAt) =>
  ({ body }: Listed<"guess">): boolean =>
    body.what === WHAT && body.strip === strip && body.visit === visit;

/**
 * The guess for a strip on a visit.
 *
 * @returns millimetres after 60 minutes; null when nobody guessed
 */
export const guessOf = async (records: Reader, at: GuessAt): Promise<number | null> => {
  const guesses = await records.list({ field: at.field, kind: "guess" }, { newestFirst: true });
  return guesses.find(isGuess(at))?.body.value ?? null;
};

/** The command that writes a guess down. */
export const guessCommand = (house: House, at: GuessAt, mm: number, atMs: number) =>
  house.pen.write("guess", { ...at, person: house.settings.value.person, what: WHAT, value: mm, atMs });
