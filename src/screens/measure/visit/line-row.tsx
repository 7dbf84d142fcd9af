/** A line of the day: which one, where, how far it has come, and its own share. */
import { useHouse } from "../../parts/house.ts";
import { groundCoverOf } from "../../parts/line-counts.ts";
import { progressOf } from "../../parts/line-progress.ts";
import { dayOf, writeClock, writeDay, writePercent } from "../../parts/numbers.ts";
import { href } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsWith } from "../../parts/words-of.ts";
import type { NumberedLine } from "./model.ts";
import { VISIT_WORDS } from "./words.ts";

export const LineRow = (props: {
  readonly one: NumberedLine;
  /** The day of the visit; the clock time alone says enough for lines of that day only. */
  readonly day: string;
  readonly place: string;
}) => {
  const { settings } = useHouse();
  const words = useWordsWith(VISIT_WORDS);
  const { line, index } = props.one;
  const { startedAtMs } = line.header;
  const { tongue } = words.common;
  const begunOn = dayOf(startedAtMs);
  const clock = writeClock(startedAtMs, tongue);
  const { share, read } = groundCoverOf(line.reading.tally, settings.value.stonesCount);
  const shown = line.finished || line.header.way === "mark-by-mark";
  const route = line.finished
    ? ({ at: "line-sheet", line: line.id } as const)
    : ({ at: "line", line: line.id } as const);
  return (
    <a class="row" href={href(route)}>
      <span>
        <b>
          {words.line.title(index)}
          {line.finished ? "" : ` · ${words.visit.goOn}`}
        </b>
        <small>
          {[
            begunOn === props.day ? clock : words.visit.onAnotherDay(writeDay(begunOn, tongue), clock),
            props.place,
            line.finished ? words.common.marks(read) : progressOf(words, line),
          ].join(" · ")}
        </small>
      </span>
      {share === null || !shown ? null : (
        <span class="value">
          {writePercent(share, TONGUE)}
          <small> {words.common.percent}</small>
        </span>
      )}
    </a>
  );
};
