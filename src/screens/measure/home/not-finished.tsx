/** What was begun and is not over, the newest first: each leads to where one goes on. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { DemoTagPlace } from "../../demo/demo-place.tsx";
import { groundName } from "../../parts/ground-name.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { progressOf } from "../../parts/line-progress.ts";
import { fieldName } from "../../parts/names.ts";
import { dayOf, writeClock, writeDay } from "../../parts/numbers.ts";
import { href } from "../../parts/route.ts";
import { today } from "../../parts/visits.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { HomeNow, OpenLine } from "./model.ts";
import type { OpenHole, OpenRing } from "./open-tests.ts";
import { OPEN_WORDS } from "./words.open.ts";

/** Shown before "show more": the fields below them must stay within reach. */
const AT_ONCE = 3;

interface Row {
  readonly to: string;
  readonly title: string;
  readonly about: readonly string[];
  readonly atMs: number;
  readonly field: RecordId<"field"> | undefined;
}

const useRows = ({ open, openTests }: Pick<HomeNow, "open" | "openTests">): readonly Row[] => {
  const words = useHouse().words.value;
  const says = useWordsOf(OPEN_WORDS);
  const titleOf = ({ field, strip, spot }: Pick<OpenLine, "field" | "strip" | "spot">): string =>
    `${fieldName(words, field)} · ${groundName(words, strip, spot)}`;
  const line = (one: OpenLine): Row => ({
    to: href({ at: "line", line: one.line.id }),
    title: titleOf(one),
    about: [progressOf(words, one.line)],
    atMs: one.line.header.startedAtMs,
    field: one.line.header.field,
  });
  const hole = (one: OpenHole): Row => ({
    to: href({ at: "hole", hole: one.id }),
    title: titleOf(one),
    about: [says.hole(one.number), ...(one.worms === null ? [] : [says.worms(one.worms)])],
    atMs: one.atMs,
    field: one.field.id,
  });
  /** The rings of a visit together: a dozen of them would hide everything else. */
  const board = (visit: RecordId<"visit">, rings: readonly OpenRing[]): Row | null => {
    const oldest = [...rings].sort((a, b) => a.atMs - b.atMs);
    const [first] = oldest;
    if (first === undefined) return null;
    const running = rings.filter((ring) => ring.running).length;
    const waiting = rings.length - running;
    return {
      to: href({ at: "rings", visit }),
      title: rings.length === 1 ? titleOf(first) : fieldName(words, first.field),
      about: [
        says.rings(oldest.map(({ letter }) => letter)),
        ...(running === 0 ? [] : [says.running(running)]),
        ...(waiting === 0 ? [] : [says.waiting(waiting)]),
      ],
      atMs: first.atMs,
      field: first.field.id,
    };
  };
  const boards = new Map<RecordId<"visit">, OpenRing[]>();
  for (const one of openTests)
    if (one.what === "ring") boards.set(one.visit, [...(boards.get(one.visit) ?? []), one]);
  return [
    ...open.map(line),
    ...openTests.flatMap((one) => (one.what === "hole" ? [hole(one)] : [])),
    ...[...boards].flatMap(([visit, rings]) => board(visit, rings) ?? []),
  ].sort((a, b) => b.atMs - a.atMs);
};

export const NotFinished = (props: Pick<HomeNow, "open" | "openTests">) => {
  const words = useHouse().words.value;
  const [most, setMost] = useState(AT_ONCE);
  const rows = useRows(props);
  const hidden = rows.length - most;
  const { tongue } = words.common;
  /** Two of one strip are told apart by when they were begun. */
  const begun = (atMs: number): string => {
    const day = dayOf(atMs);
    const clock = writeClock(atMs, tongue);
    return words.home.begun(day === today() ? clock : `${writeDay(day, tongue)}, ${clock}`);
  };
  if (rows.length === 0) return null;
  return (
    <section class="go-on">
      <h2>{words.home.open}</h2>
      <ul class="keys">
        {rows.slice(0, most).map(({ to, title, about, atMs, field }) => (
          <li key={to}>
            <LinkKey to={to} look="straw">
              <span class="stacked">
                {title}
                <small>{[...about, begun(atMs), words.home.goOn].join(" · ")}</small>
                <DemoTagPlace id={field} />
              </span>
            </LinkKey>
          </li>
        ))}
      </ul>
      {hidden > 0 ? (
        <div class="more-open">
          <Key onPress={() => setMost(rows.length)}>{words.home.more(hidden)}</Key>
        </div>
      ) : null}
    </section>
  );
};
