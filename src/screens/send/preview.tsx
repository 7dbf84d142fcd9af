/** What a file would do, before anything is done. */

import { sentenceFor } from "../catalogue.ts";
import type { Preview } from "../parts/files-desk.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { writeMoment } from "./moment.ts";
import { SEND_WORDS, type SendWords } from "./words.ts";

type Row = keyof SendWords["send"]["rows"];

/** Figures that are always shown, also at 0; the others only when there are any. */
const ALWAYS: ReadonlySet<Row> = new Set(["new", "changed", "same"]);

const figuresOf = (preview: Preview): readonly (readonly [Row, number])[] => {
  const { records, photos, sideBySide, twoAnswers, refusedCount } = preview;
  const all: readonly (readonly [Row, number])[] = [
    ["new", records.new],
    ["changed", records.changed],
    ["same", records.same],
    ["photos", photos.new],
    ["sideBySide", sideBySide],
    ["twoAnswers", twoAnswers.marks],
    ["refused", refusedCount],
  ];
  return all.filter(([row, count]) => count > 0 || ALWAYS.has(row));
};

/** The preview with its two answers. */
export const FilePreview = (props: {
  readonly preview: Preview;
  readonly onTake: () => void;
  readonly onLeave: () => void;
}) => {
  const words = useHouse().words.value;
  const { send } = useWordsOf(SEND_WORDS);
  const { preview } = props;
  const { file, records, photos, twoAnswers, refused, refusedCount } = preview;
  const nothing = records.new + records.changed + photos.new === 0;
  return (
    <div class="desk">
      <h3>{send.preview}</h3>
      <p>
        <b>{file.name}</b>
      </p>
      <p>
        {send.made(
          file.madeAtMs === null ? null : writeMoment(file.madeAtMs, words.common.tongue),
          file.madeBy,
        )}
      </p>
      <table class="figures">
        <tbody>
          {figuresOf(preview).map(([row, count]) => (
            <tr key={row}>
              <th scope="row">{send.rows[row]}</th>
              <td class="number">{writeNumber(count, TONGUE)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {preview.sideBySide > 0 ? <p>{send.sideBySideNote}</p> : null}
      {twoAnswers.marks > 0 ? <p>{send.twoAnswersNote(twoAnswers.marks, twoAnswers.lines)}</p> : null}
      {refusedCount === 0 ? null : (
        <>
          <h3>{send.refusedTitle}</h3>
          <ul>
            {refused.map(({ what, problem }) => (
              <li key={what}>
                <p>{`${what}: ${sentenceFor(words, problem)}`}</p>
              </li>
            ))}
          </ul>
          {refusedCount > refused.length ? <p>{send.refusedMore(refusedCount - refused.length)}</p> : null}
        </>
      )}
      <p role="status">{nothing ? send.allSame : send.nothingYet}</p>
      <div class="keys two">
        <Key onPress={props.onLeave}>{send.leave}</Key>
        <Key look="straw" off={nothing} onPress={props.onTake}>
          {send.take}
        </Key>
      </div>
    </div>
  );
};
