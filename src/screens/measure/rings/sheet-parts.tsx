/** Parts of a ring's sheet: the headline, the table of readings, the pours, and how the ring stood. */
import { standingOf } from "../../../science/infiltration/ring-set.ts";
import { sentenceFor } from "../../catalogue.ts";
import { SENTENCES } from "../../findings/sentences.ts";
import { useHouse } from "../../parts/house.ts";
import { lengthWords } from "../../parts/lengths.ts";
import { writeClock, writeNumber } from "../../parts/numbers.ts";
import { href } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { readDegrees } from "../hole/sizes.ts";
import { conditionsOf } from "./conditions.ts";
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
const Line = (props: { readonly what: string; readonly children: preact.ComponentChildren }) => (
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
                {levellingText(catalogue, words, levelling.value, habits, sentences)}{" "}
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
                ? words.sheet.times(writeNumber(sheet.side.value.ratio, TONGUE, 2))
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

export const SheetConditions = ({ sheet }: Of) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const all = useWordsOf(RING_WORDS);
  const words = all.sheet;
  const { habits } = house.settings.value;
  const { ring, result } = sheet;
  const { header, kit, set } = ring;
  const size = (metres: number): string => lengthWords("ringSize", metres, habits);
  const [first, second] = set.insideM;
  const { insertionMm, outOfLevelMm } = standingOf(set);
  const { wetness, water } = conditionsOf(ring.entries);
  const { position, why } = header.at;
  const name = (text: string): string => (text === "" ? catalogue.common.noName : text);
  return (
    <section class="ruled">
      <h2>{words.conditions}</h2>
      <table class="figures sheet-two">
        <tbody>
          <Line what={words.way}>
            {all.ways[header.way]}
            {header.way === "measured-pour" ? null : `, ${all.setOut.readsWords[header.rulerReads]}`}
          </Line>
          <Line what={words.place}>
            {header.place === null ? words.unknown : catalogue.place[header.place]}
          </Line>
          <Line what={words.mulch}>{header.mulch === null ? words.unknown : all.mulch[header.mulch]}</Line>
          {wetness === null ? null : <Line what={words.wetness}>{all.setOut.wetnesses[wetness]}</Line>}
          {water === null ? null : <Line what={words.waterWarm}>{readDegrees(water)}</Line>}
          <Line what={words.area}>
            {result.soaking.ok ? `${writeNumber(result.soaking.value.areaM2 * 1e4, TONGUE, 1)} cm², ` : ""}
            {words.areaBy(size(first), second === null ? null : size(second))}
          </Line>
          {kit.outer === null ? null : <Line what={words.outer}>{name(kit.outer.name)}</Line>}
          {insertionMm.ok ? <Line what={words.insertion}>{depthText(insertionMm.value, habits)}</Line> : null}
          {outOfLevelMm.ok ? (
            <Line what={words.outOfLevel}>{depthText(outOfLevelMm.value, habits)}</Line>
          ) : null}
          <Line what={words.ruler}>
            {kit.ruler === null
              ? all.setOut.noRuler
              : `${name(kit.ruler.name)}, ${all.setOut.rulerStep(lengthWords("level", kit.ruler.stepM, habits))}`}
          </Line>
          {kit.bottle === null ? null : (
            <Line what={words.bottle}>
              {`${name(kit.bottle.name)}, ${lengthWords("volume", kit.bottle.volumeM3, habits)}`}
            </Line>
          )}
          <Line what={words.position}>
            {position === null
              ? catalogue.noPosition[why ?? "not-asked"]
              : `${position.latitudeDeg.toFixed(5)}, ${position.longitudeDeg.toFixed(5)}`}
          </Line>
          {sheet.person === undefined ? null : <Line what={words.who}>{name(sheet.person.body.name)}</Line>}
          {sheet.follows === null ? null : (
            <Line what={words.follows}>
              <a class="line-link" href={href({ at: "ring-sheet", ring: sheet.follows.id })}>
                {words.olderRing(sheet.follows.letter)}
              </a>
            </Line>
          )}
          {sheet.followedBy === null ? null : (
            <Line what={words.followedBy}>
              <a class="line-link" href={href({ at: "ring-sheet", ring: sheet.followedBy.id })}>
                {words.olderRing(sheet.followedBy.letter)}
              </a>
            </Line>
          )}
        </tbody>
      </table>
    </section>
  );
};
