/** Panels that are lists: every number of the hole, how the soil was, and answers that contradict each other. */

import { WETNESS } from "../../../record/conditions.ts";
import { fatesOf, inOrder } from "../../../record/entry.ts";
import { LAYERS, WORM_GROUPS } from "../../../record/hole/entries.ts";
import type { RecordId } from "../../../record/ids.ts";
import { RainPlace } from "../../fields/rain-place.tsx";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { writeClock, writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { conditionsBefore, conditionsWords } from "./conditions.ts";
import type { HoleModel } from "./model.ts";
import { litresWords, readDegrees } from "./sizes.ts";
import { type Counted, countedIn, doubtsOf, isLayer } from "./stand.ts";
import { HOLE_WORDS } from "./words.ts";

const Foot = ({ model }: { readonly model: HoleModel }) => {
  const { common } = useHouse().words.value;
  return (
    <div class="count-keys">
      <Key look="solid" onPress={model.leave}>
        {common.done}
      </Key>
    </div>
  );
};

/** Counts where a number that counted before was replaced by a later one. */
const correctedIn = (model: HoleModel): ReadonlySet<string> => {
  const ordered = inOrder(model.entries.value);
  const fates = fatesOf(ordered);
  return new Set(
    ordered.flatMap((entry, at) => {
      if (fates[at] !== "replaced") return [];
      if (entry.type === "worm" || entry.type === "found") return [entry.from];
      return entry.type === "placed" || entry.type === "sorted" ? [entry.group] : [];
    }),
  );
};

/** Every number of the hole, as a target of its own. */
export const Numbers = ({ model }: { readonly model: HoleModel }) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const reading = model.reading.value;
  const corrected = correctedIn(model);
  const { tongue } = house.words.value.common;
  const { habits } = house.settings.value;
  const row = (counted: Counted, label: string) => {
    const { count, standsFor, inDoubt } = countedIn(reading, counted);
    const looked = isLayer(counted) ? reading.found[counted].looked : standsFor.length > 0;
    const value = inDoubt.length > 0 ? "?" : looked ? writeNumber(count, TONGUE) : "–";
    return (
      <li key={counted}>
        <button type="button" data-count={counted} onClick={() => model.open("number", counted)}>
          <span>
            {label}
            {corrected.has(counted) ? <small> {words.list.corrected}</small> : null}
          </span>
          <b>{value}</b>
        </button>
      </li>
    );
  };
  const soil = conditionsWords(words, {
    temperature: reading.soilTemperature?.entry ?? null,
    wetness: reading.wetness?.entry ?? null,
  });
  return (
    <>
      <main class="rope-marks hole-numbers">
        <h2 class="running-question" tabIndex={-1}>
          {words.list.title}
        </h2>
        <h3>{words.list.found}</h3>
        <ul>{LAYERS.map((layer) => row(layer, words.layer[layer]))}</ul>
        <h3>{words.list.placed}</h3>
        <ul>{WORM_GROUPS.map((group) => row(group, words.sheets.kind[group]))}</ul>
        <h3>{words.list.other}</h3>
        <ul>
          {reading.mustard.map(({ entry, poured }) => (
            <li key={entry.id}>
              <button type="button" onClick={() => model.open("litres", entry.id)}>
                <span>{words.list.poured(writeClock(poured.lookedAtMs, tongue))}</span>
                <b>{entry.litres === null ? words.list.noLitres : litresWords(entry.litres, habits)}</b>
              </button>
            </li>
          ))}
          <li>
            <button type="button" data-opens="conditions" onClick={() => model.open("conditions")}>
              <span>{words.list.soil}</span>
              <b>{soil === "" ? words.list.unsaid : soil}</b>
            </button>
          </li>
        </ul>
      </main>
      <Foot model={model} />
    </>
  );
};

/** How cold and how wet the soil was, as before in one touch; and how long ago it rained. */
export const SoilConditions = (props: {
  readonly model: HoleModel;
  readonly hole: RecordId<"observation">;
  readonly visit: RecordId<"visit">;
}) => {
  const { model } = props;
  const { records } = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const { soilTemperature, wetness } = model.reading.value;
  const before = useLive(() => conditionsBefore(records, props.visit, props.hole), [props.visit, props.hole]);
  const said = before === undefined || before === null ? "" : conditionsWords(words, before);
  return (
    <>
      <main class="rope-marks">
        <h2 class="running-question" tabIndex={-1}>
          {words.conditions.title}
        </h2>
        <p>{words.conditions.why}</p>
        <div class="keys as-before">
          {before === undefined || before === null ? null : (
            <Key
              look="straw"
              off={soilTemperature !== null || wetness !== null}
              onPress={() => void model.conditionsAs(before)}
            >
              {words.conditions.asBefore(said)}
            </Key>
          )}
        </div>
        <h3>{words.conditions.wetnessQuestion}</h3>
        <div class="people three">
          {WETNESS.map((is) => (
            <button
              type="button"
              key={is}
              class={`key ${wetness?.value === is ? "solid" : ""}`}
              aria-pressed={wetness?.value === is}
              onClick={() => void model.wetness(is)}
            >
              {words.conditions.wetness[is]}
            </button>
          ))}
        </div>
        <h3>
          {soilTemperature === null
            ? words.conditions.notSaid
            : words.conditions.temperatureIs(readDegrees(soilTemperature.entry))}
        </h3>
        <button type="button" class="key" data-opens="temperature" onClick={() => model.open("temperature")}>
          {words.conditions.temperature}
        </button>
        <RainPlace visit={props.visit} />
      </main>
      <Foot model={model} />
    </>
  );
};

/** Two phones gave two answers: which one? Nothing of it counts until one is chosen. */
export const Doubts = ({ model }: { readonly model: HoleModel }) => {
  const words = useWordsOf(HOLE_WORDS);
  const reading = model.reading.value;
  const { temperaturesInDoubt, wetnessInDoubt } = reading;
  return (
    <>
      <main class="rope-marks">
        <h2 class="running-question" tabIndex={-1}>
          {words.doubtsTitle}
        </h2>
        {doubtsOf(reading) === 0 ? <p>{words.doubtsNone}</p> : null}
        {[...LAYERS, ...WORM_GROUPS].map((counted) => {
          const { inDoubt, oneByOne } = countedIn(reading, counted);
          return inDoubt.length === 0 ? null : (
            <section key={counted}>
              <h3>{words.two.count(counted)}</h3>
              <div class="keys">
                {inDoubt.map((answer) => (
                  <Key key={answer.id} left onPress={() => void model.choose(answer)}>
                    {words.worms(answer.count + oneByOne)}
                    {oneByOne === 0 ? null : <small>{words.two.since(oneByOne)}</small>}
                  </Key>
                ))}
              </div>
            </section>
          );
        })}
        {temperaturesInDoubt.length === 0 ? null : (
          <section>
            <h3>{words.two.temperature}</h3>
            <div class="keys">
              {temperaturesInDoubt.map((answer) => (
                <Key key={answer.id} left onPress={() => void model.choose(answer)}>
                  {readDegrees(answer)}
                </Key>
              ))}
            </div>
          </section>
        )}
        {wetnessInDoubt.length === 0 ? null : (
          <section>
            <h3>{words.two.wetness}</h3>
            <div class="keys">
              {wetnessInDoubt.map((answer) => (
                <Key key={answer.id} left onPress={() => void model.choose(answer)}>
                  {words.conditions.wetness[answer.is]}
                </Key>
              ))}
            </div>
          </section>
        )}
      </main>
      <Foot model={model} />
    </>
  );
};
