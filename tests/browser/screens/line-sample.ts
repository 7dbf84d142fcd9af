/** Lines in every state that the counting screen can meet, and the address of each. */
import { ENTRY_VERSION, type Entry } from "../../../src/record/entry.ts";
import type { LineHeader } from "../../../src/record/kinds/observation.ts";
import { href } from "../../../src/screens/parts/route.ts";
import { beginSample, fieldOf, lineOf, marksRead, type Rows, sampleStartMs } from "../../bench/seed.ts";

/** A name that takes two lines on a key. */
export const longName = "dung and moss and old maize cobs";

/** An end at this mark, the `n`-th entry, told apart by the phone it was made on. */
const endAt = (mark: number, n: number, phone: string): Entry => ({
  v: ENTRY_VERSION,
  type: "end",
  id: `${phone.repeat(8)}${n.toString(16).padStart(8, "0")}`,
  n,
  mark,
  lookedAtMs: sampleStartMs + n * 1000,
  enteredAtMs: sampleStartMs + n * 1000,
  monoMs: 5000 + n * 1000,
  page: phone.repeat(16),
  device: phone.repeat(16),
  by: null,
});

export interface LineSample {
  readonly rows: Rows;
  readonly addresses: Readonly<
    Record<
      "counted" | "fifth" | "thick" | "misses" | "missesFifth" | "totals" | "unread" | "twoEnds" | "visit",
      string
    >
  >;
}

/** Makes the sample: a rope of 20 marks. */
export const lineSample = (): LineSample => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom below the old oak"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "A", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 20, spacingM: 0.3 });
  const line = (more: Partial<LineHeader> = {}, entries: readonly Entry[] = []) =>
    href({
      at: "line",
      line: add("observation", lineOf({ visit, field, strip, rope }, more), { entries }),
    });
  return {
    addresses: {
      counted: line({}, marksRead("rrrb")),
      fifth: line({ fifthKey: longName }, marksRead("rrrb")),
      thick: line({ askThickness: true }, marksRead("rrrrrrrrr")),
      misses: line({ way: "misses-only" }),
      missesFifth: line({ way: "misses-only", fifthKey: longName }),
      totals: line({ way: "totals", fifthKey: longName }),
      unread: line({}, [endAt(0, 1, "a")]),
      twoEnds: line({}, [...marksRead("rrrbbrrr"), endAt(6, 9, "a"), endAt(8, 9, "b")]),
      visit: href({ at: "visit", visit }),
    },
    rows: rows(),
  };
};
