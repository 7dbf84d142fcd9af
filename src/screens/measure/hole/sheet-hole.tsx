/** The hole itself on its sheet: size, method, effort, place, conditions, position. */
import { wormMethod } from "../../../science/earthworms/worm-methods.ts";
import { RainPlace } from "../../fields/rain-place.tsx";
import { CorrectedSince } from "../../kit/corrected-since.tsx";
import { kitOf } from "../../kit/kit-list.ts";
import { useHouse } from "../../parts/house.ts";
import { lengthWords } from "../../parts/lengths.ts";
import { MovePositionOf } from "../../parts/move-position.tsx";
import { writeClock, writeNumber } from "../../parts/numbers.ts";
import { TakePositionOf } from "../../parts/take-position.tsx";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { Lies } from "../set-out/lies.tsx";
import type { HoleSheet } from "./sheet-model.ts";
import { readDegrees, sidesWords } from "./sizes.ts";
import { HOLE_WORDS } from "./words.ts";
import "./hole.css";

export const TheHole = ({ sheet }: { readonly sheet: HoleSheet }) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const { common, place, setOut } = house.words.value;
  const { habits } = house.settings.value;
  const { count, hole } = sheet;
  const { header, reading } = hole;
  const method = header.method === null ? undefined : wormMethod(header.method);
  const rows: readonly (readonly [string, string])[] = [
    [words.sheets.size, sidesWords(words, count.sidesM, habits)],
    [words.sheets.depth, lengthWords("ringSize", header.depthM, habits)],
    [words.sheets.method, method?.name ?? words.sheets.own],
    [
      words.sheets.effort,
      count.personMinutes === null
        ? words.sheets.noEffort
        : words.sheets.minutesOf(
            writeNumber(count.personMinutes, TONGUE, 1),
            header.minutes === null ? null : writeNumber(header.minutes, TONGUE, 1),
          ),
    ],
    [words.sheets.place, header.place === null ? setOut.unplaced : place[header.place]],
    ...(reading.soilTemperature === null
      ? []
      : [[words.sheets.temperature, readDegrees(reading.soilTemperature.entry)] as const]),
    ...(reading.wetness === null
      ? []
      : [[words.sheets.wetness, words.conditions.wetness[reading.wetness.value]] as const]),
    [words.sheets.begun, writeClock(header.startedAtMs, common.tongue)],
  ];
  return (
    <section class="ruled">
      <h2>{words.sheets.hole}</h2>
      <table class="figures">
        <tbody>
          {rows.map(([label, value]) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="aside">{words.sheets.depthHint}</p>
      <CorrectedSince kit={kitOf(header)} sinceMs={header.startedAtMs} />
      <Lies test={{ id: hole.id, header, ropeMarks: 0 }} />
      <RainPlace visit={header.visit} />
      <h3>{words.sheets.position}</h3>
      <MovePositionOf test={hole.id} which="at" stood={header.at} />
      <TakePositionOf test={hole.id} question={words.dig.stand} />
    </section>
  );
};
