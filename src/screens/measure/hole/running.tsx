/** What a running hole says: the question, the figure, who sorts, the last touch. */
import type { RecordId } from "../../../record/ids.ts";
import { sentenceFor } from "../../catalogue.ts";
import { useHouse } from "../../parts/house.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { conditionsWords, isLow } from "./conditions.ts";
import type { HoleModel } from "./model.ts";
import { sayEntry } from "./say.ts";
import { MustardRow, SortingRow } from "./sorting-row.tsx";
import { doubtsOf, type StoredHole } from "./stand.ts";
import { HOLE_WORDS } from "./words.ts";

/** The question, the figure and what runs. Their heights are fixed, so no key below them ever moves. */
export const Running = (props: {
  readonly model: HoleModel;
  readonly stored: StoredHole;
  readonly hole: RecordId<"observation">;
}) => {
  const { model, stored } = props;
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const reading = model.reading.value;
  const layer = model.layer.value;
  const placing = model.task.value === "place" && reading.closed === null;
  const last = model.last.value;
  const { foundTotal, placedTotal, left, settled } = reading;
  const question = (): string => {
    if (reading.closed !== null) return words.closedQuestion(stored.header.number);
    return placing ? words.placeQuestion : words.question[layer];
  };
  const hint = (): string => {
    if (reading.closed !== null) return words.closedHint;
    return placing ? words.placeHint : words.headsOnly;
  };
  const figureWords = (): string => {
    if (placing) return left === 0 && foundTotal > 0 ? words.allPlaced : words.left;
    return reading.closed === null ? words.soFar : words.found;
  };
  const beside = () => {
    if (reading.closed !== null) return <Conditions {...props} />;
    return layer === "mustard-water" ? (
      <MustardRow model={model} stored={stored} />
    ) : (
      <SortingRow model={model} stored={stored} />
    );
  };
  const doubts = doubtsOf(reading);
  return (
    <main class="running hole-running">
      <h2 class="running-question" tabIndex={-1}>
        {question()}
      </h2>
      <div class="figure">
        <p class="big">{settled ? writeNumber(placing ? left : foundTotal, TONGUE) : "?"}</p>
        <p>
          {figureWords()}
          <br />
          <b>{placing || placedTotal > 0 ? words.tally(foundTotal, placedTotal, left) : "\u00a0"}</b>
        </p>
      </div>
      <p class="hole-hint">
        {reading.cautions.length === 0
          ? hint()
          : reading.cautions.map((caution) => sentenceFor(house.words.value, caution)).join(" ")}
      </p>
      {beside()}
      {doubts > 0 ? (
        <button type="button" class="key doubts" data-opens="doubts" onClick={() => model.open("doubts")}>
          {words.doubts(doubts)}
        </button>
      ) : (
        <p class="last">{last === null ? "" : sayEntry(words, house.settings.value.habits, last)}</p>
      )}
    </main>
  );
};

/** Temperature and wetness: asked of a closed hole with few worms, open to everybody else. */
const Conditions = (props: {
  readonly model: HoleModel;
  readonly stored: StoredHole;
  readonly hole: RecordId<"observation">;
}) => {
  const { model, stored } = props;
  const words = useWordsOf(HOLE_WORDS);
  const reading = model.reading.value;
  const { header, template } = stored;
  const said = conditionsWords(words, {
    temperature: reading.soilTemperature?.entry ?? null,
    wetness: reading.wetness?.entry ?? null,
  });
  const low = isLow({ id: props.hole, header, template, reading });
  return (
    <div class="beside-count">
      {low || said !== "" ? (
        <>
          <p class="clock-words">
            {low && said === "" ? words.conditions.ask : `${words.list.soil}: ${said}`}
          </p>
          <button type="button" class="key" data-opens="conditions" onClick={() => model.open("conditions")}>
            {words.conditions.open}
          </button>
        </>
      ) : null}
    </div>
  );
};
