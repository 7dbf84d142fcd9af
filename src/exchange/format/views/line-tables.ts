/** view/lines.csv and view/marks.csv. Counts only: percentages belong to the app, which knows their range. */

import { stoodCells, yesNo } from "./cells.ts";
import { type Cell, csvHead, csvRow } from "./csv.ts";
import type { LineView } from "./test-view.ts";
import { utcText } from "./utc.ts";

/** First row of view/lines.csv. */
export const linesHead = csvHead([
  "line",
  "field",
  "strip",
  "marked spot",
  "old grass",
  "example",
  "visit day",
  "begun (UTC)",
  "way of counting",
  "rope",
  "marks on the rope",
  "spacing (m)",
  "place against the row",
  "angle to the rows (deg)",
  "ended at mark",
  "marks read",
  "residue flat",
  "residue standing",
  "bare",
  "green",
  "stone",
  "fifth key",
  "fifth key counts",
  "not read",
  "two answers",
  "start latitude (deg)",
  "start longitude (deg)",
  "start accuracy (m)",
  "start accuracy means",
  "end latitude (deg)",
  "end longitude (deg)",
  "end accuracy (m)",
  "end accuracy means",
]);

/** The row of one line. */
export const linesRow = ({
  id,
  field,
  strip,
  spot,
  oldGrass,
  example,
  day,
  rope,
  ropeMarks,
  spacingM,
  header,
  reading,
}: LineView): string => {
  const { tally } = reading;
  const { residueFlat, residueStanding, bare, green, stone, own, notRead, unsettled } = tally;
  return csvRow([
    id,
    field,
    strip,
    spot,
    yesNo(oldGrass),
    yesNo(example),
    day,
    utcText(header.startedAtMs),
    header.way,
    rope,
    ropeMarks,
    spacingM,
    header.place,
    header.angleToRowsDeg,
    reading.endedAt,
    residueFlat + residueStanding + bare + green + stone + own + unsettled,
    residueFlat,
    residueStanding,
    bare,
    green,
    stone,
    header.fifthKey,
    own,
    notRead,
    unsettled,
    ...stoodCells(header.start),
    ...stoodCells(header.end),
  ]);
};

/** First row of view/marks.csv. */
export const marksHead = csvHead([
  "line",
  "field",
  "strip",
  "example",
  "visit day",
  "mark",
  "what lay there",
  "flat or standing",
  "corrected",
  "answers at this mark",
  "looked at (UTC)",
  "mulch thickness",
  "unit of thickness",
]);

/** The rows of one line: one an answer, and one for a thickness at a mark that was not called. */
export const marksRows = ({ id, field, strip, example, day, reading }: LineView): string => {
  const numbers = [...new Set([...reading.marks.keys(), ...reading.thickness.keys()])].sort((a, b) => a - b);
  return numbers
    .map((number) => {
      const where: Cell[] = [id, field, strip, yesNo(example), day, number];
      const thickness = reading.thickness.get(number);
      const mulch: Cell[] = [thickness?.value ?? null, thickness?.unit ?? null];
      const mark = reading.marks.get(number);
      if (mark === undefined) return csvRow([...where, null, null, null, null, null, ...mulch]);
      return mark.answers
        .map((answer) =>
          csvRow([
            ...where,
            answer.cover,
            answer.stance ?? null,
            yesNo(mark.corrected),
            mark.answers.length,
            utcText(answer.lookedAtMs),
            ...mulch,
          ]),
        )
        .join("");
    })
    .join("");
};
