/** Today on the example farm: three rings run, and a hole waits for its mustard water. */
import { dayOf } from "../parts/numbers.ts";
import type { Piece } from "./lay-out.ts";
import { note } from "./seasons.ts";
import { type Hand, holeHeader, MINUTE_MS, type On, ringHeader, ringReadings } from "./tests.ts";
import type { FarmWords } from "./words.farm.ts";

/** A visit that is going on. */
export const today = (
  hand: Hand,
  words: FarmWords,
  piece: Piece,
  { nowMs, harvestYear }: { readonly nowMs: number; readonly harvestYear: number },
): void => {
  const { pen, kit } = hand;
  const beganMs = nowMs - 50 * MINUTE_MS;
  const visit = pen.write("visit", { field: piece.id, day: dayOf(nowMs), harvestYear }, beganMs);
  const on = (strip: Piece["strawLeft"], minutesAgo: number): On => ({
    visit,
    field: piece.id,
    lie: piece.lie,
    strip,
    atSpot: false,
    atMs: nowMs - minutesAgo * MINUTE_MS,
  });
  const [one, two, three] = kit.rings;
  if (one === undefined || two === undefined || three === undefined) return;

  // Read at 5 and 10 minutes; the reading at 20 is due in two.
  const soon = on(piece.strawLeft, 18);
  const dueSoon = pen.write("observation", ringHeader(hand, soon, one, "between-rows"), soon.atMs);
  pen.read(dueSoon, null, ringReadings(soon.atMs, 58, 10));

  // Read up to 20 minutes; the reading at 30 is four minutes late.
  const before = on(piece.strawOff, 34);
  const late = pen.write("observation", ringHeader(hand, before, two, "between-rows"), before.atMs);
  pen.read(late, null, ringReadings(before.atMs, 40, 20));

  // Looked at after 20 minutes, and the number is still missing.
  const open = on(piece.coverCrop, 23);
  const missing = pen.write("observation", ringHeader(hand, open, three, "between-rows"), open.atMs);
  pen.read(missing, null, [
    ...ringReadings(open.atMs, 66, 10),
    { atMs: open.atMs + 20 * MINUTE_MS, draft: { type: "look", ring: "inner" } },
  ]);

  // Sorted by hand; the mustard water went in six minutes ago.
  const dug = on(piece.strawLeft, 26);
  const waiting = pen.write("observation", holeHeader(hand, dug, 1, { mustardMin: 15 }), dug.atMs);
  const at = (minutes: number): number => dug.atMs + minutes * MINUTE_MS;
  pen.read(waiting, null, [
    { atMs: at(0), draft: { type: "sorting", people: 1, from: "soil" } },
    { atMs: at(2), draft: { type: "found", from: "mulch", count: 1, typed: "1" } },
    { atMs: at(14), draft: { type: "found", from: "soil", count: 8, typed: "8" } },
    { atMs: at(15), draft: { type: "sorting", people: 0, from: "soil" } },
    { atMs: at(20), draft: { type: "mustard", litres: 0.75 } },
  ]);
  note(hand, piece.id, visit, null, words.notes.edge, beganMs - 200 * MINUTE_MS + 3 * MINUTE_MS);
};
