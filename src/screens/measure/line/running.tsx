/** What a counted line says: the question, the figure, the rope, the last answer. */
import type { RecordId } from "../../../record/ids.ts";
import { endedUnread } from "../../../record/line/finished.ts";
import type { House } from "../../parts/house.ts";
import { groundCoverOf, missesIn } from "../../parts/line-counts.ts";
import { writePercent } from "../../parts/numbers.ts";
import { RopeDrawing } from "../../parts/rope-drawing.tsx";
import { TONGUE } from "../../parts/words.common.ts";
import { DoubtsKey, doubtsOf } from "./doubts.tsx";
import type { LineModel, StoredLine } from "./model.ts";
import { sayEntry } from "./say.ts";
import { StripSoFar } from "./strip-so-far.tsx";

/** The question, the figure and the rope. Their heights are fixed, so no key below them ever moves. */
export const Running = (props: {
  readonly house: House;
  readonly model: LineModel;
  readonly stored: StoredLine;
  readonly line: RecordId<"observation">;
}) => {
  const { house, model, stored } = props;
  const words = house.words.value.line;
  const reading = model.reading.value;
  if (reading === undefined) return null;
  const cover = groundCoverOf(reading.tally, house.settings.value.stonesCount);
  const ropeMarks = stored.rope.marks;
  const question = (): string => {
    if (reading.endsInDoubt.length > 0) return words.endsDiffer;
    if (endedUnread(reading)) return words.nothingRead;
    if (reading.endedAt !== null) return words.ended(reading.endedAt);
    if (stored.header.way === "totals" && cover.read < ropeMarks)
      return cover.read === 0 ? words.totalsQuestion : words.read(cover.read, ropeMarks);
    if (model.finished.value) return words.full(ropeMarks);
    return stored.header.way === "misses-only" ? words.missQuestion : words.question(reading.next);
  };
  const last = model.last.value;
  // While misses are called the cover is not known: what was not called may still turn out not to be read.
  const calling = stored.header.way === "misses-only" && !model.over.value;
  return (
    <main class={`running ${calling ? "calling" : ""}`}>
      <h2 class="running-question" tabIndex={-1}>
        {question()}
      </h2>
      <div class="figure" hidden={calling || endedUnread(reading)}>
        <p class="big">
          {cover.share === null ? "–" : writePercent(cover.share, TONGUE)}
          <small> %</small>
        </p>
        <p>
          {words.soFar}
          <br />
          <b>
            {words.read(cover.read, ropeMarks)}
            {reading.tally.notRead > 0 ? `, ${words.notRead(reading.tally.notRead)}` : ""}
          </b>
        </p>
      </div>
      <button
        type="button"
        class="rope-key"
        data-opens="rope"
        onClick={() => model.ask("rope")}
        disabled={stored.header.way === "totals"}
      >
        <RopeDrawing
          marks={ropeMarks}
          next={model.finished.value ? 0 : reading.next}
          at={(mark) => {
            const read = reading.marks.get(mark);
            return read === undefined
              ? undefined
              : { cover: read.cover, stance: read.stance, twoAnswers: read.answers.length > 1 };
          }}
        />
        <span class="rope-words">{words.correct}</span>
      </button>
      {calling ? <p>{words.missed(missesIn(reading.tally))}</p> : null}
      {doubtsOf(reading) > 0 && !model.over.value ? (
        <DoubtsKey model={model} reading={reading} />
      ) : (
        <p class="last">{last === null ? "" : sayEntry(house.words.value, stored.header.fifthKey, last)}</p>
      )}
      {calling ? null : (
        <StripSoFar header={stored.header} line={props.line} finished={model.finished.value} />
      )}
    </main>
  );
};
