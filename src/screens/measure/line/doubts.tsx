/** Two phones gave two answers: which one? Nothing of it counts until one is chosen. */
import type { TotalsEntry } from "../../../record/entry.ts";
import type { EndEntry } from "../../../record/line/entries.ts";
import type { LineReading } from "../../../record/line/reading.ts";
import type { Catalogue } from "../../catalogue.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import type { LineModel } from "./model.ts";
import { coverWords } from "./say.ts";

/** How many questions of a line wait for a choice. */
export const doubtsOf = (reading: LineReading): number =>
  [...reading.marks.values()].filter(({ answers }) => answers.length > 1).length +
  reading.thicknessInDoubt.size +
  Math.min(1, reading.totalsInDoubt.length) +
  Math.min(1, reading.endsInDoubt.length);

/** Leads to the questions that wait for a choice. */
export const DoubtsKey = ({
  model,
  reading,
}: {
  readonly model: LineModel;
  readonly reading: LineReading;
}) => {
  const words = useHouse().words.value.line;
  const count = doubtsOf(reading);
  return count === 0 ? null : (
    <button type="button" class="key straw doubts" data-opens="doubts" onClick={() => model.ask("doubts")}>
      {words.doubts(count)}
    </button>
  );
};

const totalsWords = (words: Catalogue, fifthKey: string | null, totals: TotalsEntry): string => {
  const { line } = words;
  const parts: readonly (readonly [number, string])[] = [
    [totals.flat, line.kinds.flat],
    [totals.standing, line.kinds.standing],
    [totals.green, line.cover.green],
    [totals.bare, line.cover.bare],
    [totals.stone, line.cover.stone],
    [totals.own, fifthKey ?? line.cover.own],
  ];
  return parts
    .filter(([count]) => count > 0)
    .map(([count, kind]) => `${kind} ${count}`)
    .join(" · ");
};

const endWords = ({ line }: Catalogue, { mark, rest }: EndEntry): string => {
  if (rest === undefined) return line.did.end(mark);
  return `${line.did.end(mark)}, ${rest === "flat" ? line.restFlat : line.restStanding}`;
};

/** Every question with its answers as keys. */
export const Doubts = (props: { readonly model: LineModel; readonly fifthKey: string | null }) => {
  const { model } = props;
  const { words } = useHouse();
  const reading = model.reading.value;
  if (reading === undefined) return null;
  const marks = [...reading.marks].filter(([, { answers }]) => answers.length > 1);
  return (
    <>
      <main class="rope-marks">
        <h2 class="running-question" tabIndex={-1}>
          {words.value.line.doubtsTitle}
        </h2>
        {doubtsOf(reading) === 0 ? <p>{words.value.line.doubtsNone}</p> : null}
        {marks.map(([mark, { answers }]) => (
          <section key={mark}>
            <h3>{words.value.line.twoAnswers(mark)}</h3>
            <div class="keys">
              {answers.map((answer) => (
                <Key
                  key={answer.id}
                  left
                  onPress={() => void model.settle(mark, answer.cover, answer.stance ?? "flat")}
                >
                  {coverWords(words.value, props.fifthKey, answer)}
                </Key>
              ))}
            </div>
          </section>
        ))}
        {[...reading.thicknessInDoubt].map(([mark, answers]) => (
          <section key={`thickness-${mark}`}>
            <h3>{words.value.line.twoThicknesses(mark)}</h3>
            <div class="keys">
              {answers.map((answer) => (
                <Key key={answer.id} left onPress={() => void model.choose(answer)}>
                  {answer.typed} {answer.unit}
                </Key>
              ))}
            </div>
          </section>
        ))}
        {reading.totalsInDoubt.length === 0 ? null : (
          <section>
            <h3>{words.value.line.twoTotals}</h3>
            <div class="keys">
              {reading.totalsInDoubt.map((answer) => (
                <Key key={answer.id} left onPress={() => void model.choose(answer)}>
                  {totalsWords(words.value, props.fifthKey, answer)}
                </Key>
              ))}
            </div>
          </section>
        )}
        {reading.endsInDoubt.length === 0 ? null : (
          <section>
            <h3>{words.value.line.twoEnds}</h3>
            <div class="keys">
              {reading.endsInDoubt.map((answer) => (
                <Key key={answer.id} left onPress={() => void model.choose(answer)}>
                  {endWords(words.value, answer)}
                </Key>
              ))}
            </div>
          </section>
        )}
      </main>
      <div class="count-keys">
        <Key look="solid" onPress={() => model.ask("marks")}>
          {words.value.common.done}
        </Key>
      </div>
    </>
  );
};
