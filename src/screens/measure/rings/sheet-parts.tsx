/** Parts of a ring's sheet: the headline, the table of readings, and the pours. */
import { sentenceFor } from "../../catalogue.ts";
import { SENTENCES } from "../../findings/sentences.ts";
import { useHouse } from "../../parts/house.ts";
import { writeClock, writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { depthFigure, depthText, rateFigure, rateText, sinceText } from "./figures.ts";
import { useFlags } from "./readings.tsx";
import { levellingText } from "./result-words.ts";
import { valueText } from "./say.ts";
import type { RingSheet } from "./sheet-model.ts";
import { RING_WORDS } from "./words.ts";

interface Of {
  readonly sheet: RingSheet;
}

/** One line of a table of two columns. */
export const Line = (props: { readonly what: string; readonly children: preact.ComponentChildren }) => (
  <tr>
    <th scope="row">{props.what}</th>
    <td>{props.children}</td>
  </tr>
);

export const SheetHeadline = ({ sheet }: Of) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(RING_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const { habits } = house.settings.value;
  const { headlines, lastHalfHour, levelling } = sheet.result;
  return (
    <section>
      <h2>{words.sheet.headline}</h2>
      <table class="figures sheet-two">
        <tbody>
          {headlines.map(({ minutes, depth }) => (
            <Line key={minutes} what={words.sheet.after(minutes)}>
              {depth.ok ? (
                <b>{depthText(depth.value.value, habits)}</b>
              ) : (
                sentenceFor(catalogue, depth.problem, sentences)
              )}
            </Line>
          ))}
          <Line what={words.sheet.lastHalfHour}>
            {lastHalfHour.ok ? (
              <b>{rateText(lastHalfHour.value.value, habits)}</b>
            ) : (
              sentenceFor(catalogue, lastHalfHour.problem, sentences)
            )}
          </Line>
          <Line what={words.sheet.levelling}>
            {levelling.ok ? (
              <>
                {levellingText(catalogue, words, levelling.value, sheet.ring.set.stepMm, habits, sentences)}{" "}
                {words.sheet.rate3(levelling.value.rates.map((rate) => rateText(rate, habits)).join(", "))}
              </>
            ) : (
              sentenceFor(catalogue, levelling.problem, sentences)
            )}
          </Line>
          <Line what={words.sheet.meanRate}>
            {sheet.rate.ok
              ? rateText(sheet.rate.value.mmPerH, habits)
              : sentenceFor(catalogue, sheet.rate.problem, sentences)}
          </Line>
          {sheet.side === null ? null : (
            <Line what={words.sheet.sideFlow}>
              {sheet.side.ok
                ? words.sheet.times(writeNumber(sheet.side.value.value, TONGUE, 2))
                : sentenceFor(catalogue, sheet.side.problem, sentences)}
            </Line>
          )}
          {sheet.guessMm === null ? null : (
            <Line what={words.sheet.guess}>
              {`${depthText(sheet.guessMm, habits)} ${words.sheet.after(60)}`}
            </Line>
          )}
        </tbody>
      </table>
      <p class="aside">{`${words.sheet.oneRing} ${words.sheet.comparing}`}</p>
    </section>
  );
};

export const SheetReadings = ({ sheet }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const { habits } = house.settings.value;
  const { tongue } = house.words.value.common;
  const flagsOf = useFlags();
  return (
    <section class="ruled">
      <h2>{words.sheet.readings}</h2>
      {sheet.rows.length === 0 ? <p>{words.readings.none}</p> : null}
      <div class="ring-table" hidden={sheet.rows.length === 0}>
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">{words.sheet.since}</th>
              <th scope="col">{words.sheet.read}</th>
              <th scope="col" class="number">
                {words.sheet.inUnit(words.sheet.soaked, habits.depthSoaked)}
              </th>
              <th scope="col" class="number">
                {words.sheet.inUnit(words.sheet.rate, `${habits.rate}/h`)}
              </th>
            </tr>
          </thead>
          <tbody>
            {sheet.rows.map((row) => (
              <tr key={row.entry.id}>
                <td>
                  {sinceText(row.moment.sinceStartMs)}
                  <small>{writeClock(row.moment.lookedAtMs, tongue)}</small>
                </td>
                <td>
                  {valueText(words, row.entry)}
                  {row.old.map((old) => (
                    <s key={old.id}>{valueText(words, old)}</s>
                  ))}
                  <small>
                    {[
                      ...flagsOf(row),
                      ...(row.leftOut === null
                        ? []
                        : [words.sheet.notCounted(words.sheet.leftOut[row.leftOut])]),
                    ].join(" · ")}
                  </small>
                </td>
                <td class="number">{row.mm === null ? "" : depthFigure(row.mm, habits).value}</td>
                <td class="number">{row.mmPerH === null ? "" : rateFigure(row.mmPerH, habits).value}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};

export const SheetPours = ({ sheet }: Of) => {
  const { settings } = useHouse();
  const words = useWordsOf(RING_WORDS).sheet;
  const { habits } = settings.value;
  const { soaking } = sheet.result;
  if (!soaking.ok || soaking.value.pours.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.pours}</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{words.pour}</th>
            <th scope="col" class="number">
              {words.poured}
            </th>
            <th scope="col" class="number">
              {words.took}
            </th>
            <th scope="col" class="number">
              {words.rate}
            </th>
          </tr>
        </thead>
        <tbody>
          {soaking.value.pours.map((pour) => (
            <tr key={pour.number}>
              <td>{pour.wetting ? words.wettingPour : writeNumber(pour.number, TONGUE)}</td>
              <td class="number">{depthText(pour.pouredMm, habits)}</td>
              <td class="number">
                {pour.drained && pour.toMin !== null
                  ? sinceText((pour.toMin - pour.fromMin) * 60_000)
                  : words.notGone}
              </td>
              <td class="number">
                {pour.wetting || pour.mmPerH === null ? "" : rateText(pour.mmPerH, habits)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
