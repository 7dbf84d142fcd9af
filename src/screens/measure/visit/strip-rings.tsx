/** Soaked in on one strip: the mean of its rings after half an hour, one and three, each with its range. */
import { WorkedOutKey, workedByAll } from "../../findings/method-list.tsx";
import { SENTENCES } from "../../findings/sentences.ts";
import { useHouse } from "../../parts/house.ts";
import { writeClock, writeNumber } from "../../parts/numbers.ts";
import { ownSentence } from "../../parts/own-units.ts";
import { href } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf, useWordsWith } from "../../parts/words-of.ts";
import type { DayRing } from "../rings/day.ts";
import { depthFigure, depthText } from "../rings/figures.ts";
import { resultOf } from "../rings/result.ts";
import { PREFERRED_MINUTES, type RingsTogether, type SoakAfter } from "./rings-together.ts";
import { DAY_WORDS, type DayWords } from "./words.day.ts";
import { VISIT_WORDS } from "./words.ts";

/** Said of every ring by its letter already. */
const NAMED: ReadonlySet<string> = new Set([
  "science/ring-burrow",
  "science/ring-crack",
  "science/ring-leaked",
]);

type Said = Extract<SoakAfter["mean"], { ok: true }>["value"];

const minutesOf = (minutes: number): string => writeNumber(minutes, TONGUE);
const lettersOf = (rings: readonly DayRing[]): readonly string[] => rings.map(({ letter }) => letter);

/** The range of a mean over rings in words, or why there is none. */
export const useSoakRange = (): ((mean: Said) => string) => {
  const words = useWordsOf(DAY_WORDS);
  const { habits } = useHouse().settings.value;
  return ({ range, n }) => {
    if (range.ok)
      return words.range(
        depthFigure(range.value.lower, habits).value,
        depthText(range.value.upper, habits),
        n,
      );
    return range.problem.code === "science/rings-all-alike" ? words.alike(n) : words.tooFew(n);
  };
};

/** The mean that a strip is spoken of by; null while no ring can say. */
export const spokenOf = ({
  after,
}: RingsTogether): { readonly minutes: number; readonly mean: Said } | null => {
  for (const minutes of PREFERRED_MINUTES) {
    const found = after.find((one) => one.minutes === minutes);
    if (found?.mean.ok === true) return { minutes, mean: found.mean.value };
  }
  return null;
};

export const StripRings = (props: {
  readonly soak: RingsTogether;
  /** Guessed millimetres after an hour, or null. */
  readonly guessMm: number | null;
}) => {
  const house = useHouse();
  const words = useWordsOf(DAY_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const { habits } = house.settings.value;
  const { soak, guessMm } = props;
  const rangeWords = useSoakRange();
  if (soak.rings.length === 0) return null;
  const spoken = spokenOf(soak);
  const others = soak.after.filter(({ minutes }) => minutes !== spoken?.minutes);
  const means = soak.after.flatMap(({ mean }) => (mean.ok ? [mean.value] : []));
  const rings = soak.rings.flatMap((ring) => {
    const { headlines } = resultOf(ring);
    return headlines.flatMap(({ depth }) => (depth.ok ? [depth.value] : []));
  });
  const cautions = [
    ...(spoken?.mean.cautions ?? []).filter(({ code }) => !code.startsWith("science/rings-with-")),
    ...soak.cautions.filter(({ code }) => !NAMED.has(code)),
  ];
  return (
    <section class="strip-rings">
      <h3>{words.soaked}</h3>
      {spoken === null ? (
        <p>{words.nothingYet}</p>
      ) : (
        <div class="figure">
          <p class="big">
            {depthFigure(spoken.mean.value, habits).value}
            <small> {depthFigure(spoken.mean.value, habits).unit}</small>
          </p>
          <p>
            {words.soFar(minutesOf(spoken.minutes))}
            <br />
            <b>{rangeWords(spoken.mean)}</b>
          </p>
        </div>
      )}
      {guessMm === null ? null : (
        <p>{words.guess(`${depthText(guessMm, habits)} ${words.after(minutesOf(60))}`)}</p>
      )}
      {spoken === null ? null : (
        <table class="figures soak-table">
          <tbody>
            {others.map(({ minutes, mean, without }) => (
              <tr key={minutes}>
                <th scope="row">{words.after(minutesOf(minutes))}</th>
                <td class="number">
                  {mean.ok ? (
                    <>
                      {depthText(mean.value.value, habits)}
                      <small>{rangeWords(mean.value)}</small>
                    </>
                  ) : (
                    <small>{words.notSoLong(lettersOf(without))}</small>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <Named soak={soak} words={words} />
      {cautions.map((caution) => (
        <p class="said-beside" key={caution.code}>
          {ownSentence(house.words.value, habits, caution, sentences)}
        </p>
      ))}
      <ul class="rows">
        {soak.rings.map((ring) => (
          <li key={ring.id}>
            <RingRow ring={ring} />
          </li>
        ))}
      </ul>
      {means.length === 0 ? null : (
        <>
          <p class="aside">{words.comparing}</p>
          <WorkedOutKey of={words.soaked} {...workedByAll([...rings, ...means])} />
        </>
      )}
    </section>
  );
};

/** Burrows, cracks, leaks and pours that have not drained, by the letters of their rings. */
const Named = ({ soak, words }: { readonly soak: RingsTogether; readonly words: DayWords }) => {
  const sentences = [
    ...(soak.withBurrow.length === 0 ? [] : [words.burrow(lettersOf(soak.withBurrow))]),
    ...(soak.withCrack.length === 0 ? [] : [words.crack(lettersOf(soak.withCrack))]),
    ...(soak.leaked.length === 0 ? [] : [words.leaked(lettersOf(soak.leaked))]),
    ...(soak.notDrained.length === 0 ? [] : [words.notDrained(lettersOf(soak.notDrained))]),
  ];
  return (
    <>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </>
  );
};

/** A ring of the day. */
export const RingRow = ({ ring }: { readonly ring: DayRing }) => {
  const house = useHouse();
  const words = useWordsOf(DAY_WORDS);
  const { common, place, visit } = useWordsWith(VISIT_WORDS);
  const { habits } = house.settings.value;
  const { header, reading } = ring;
  const over = reading.stop !== null;
  const { soFar } = resultOf(ring);
  return (
    <a class="row" href={href(over ? { at: "ring-sheet", ring: ring.id } : { at: "ring", ring: ring.id })}>
      <span>
        <b>
          {words.ringRow(ring.letter)}
          {over ? "" : ` · ${words.goOn}`}
        </b>
        <small>
          {[
            writeClock(header.startedAtMs, common.tongue),
            header.place === null ? visit.placeNotSaid : place[header.place],
            ...(soFar === null ? [] : [words.after(minutesOf(Math.floor(soFar.atMin)))]),
          ].join(" · ")}
        </small>
      </span>
      {soFar === null ? null : (
        <span class="value">
          {depthFigure(soFar.mm, habits).value}
          <small> {depthFigure(soFar.mm, habits).unit}</small>
        </span>
      )}
    </a>
  );
};
