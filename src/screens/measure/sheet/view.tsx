/** The sheet of one line: what lay at its marks, its own range, where it lay, and what comes next. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import { DemoNote } from "../../demo/demo-note.tsx";
import { CorrectedSince } from "../../kit/corrected-since.tsx";
import { kitOf } from "../../kit/kit-list.ts";
import { moreSentence, stripSentence } from "../../parts/cover-words.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { lengthWords } from "../../parts/lengths.ts";
import { useLive } from "../../parts/live.ts";
import { MovePositionOf } from "../../parts/move-position.tsx";
import { NotRead } from "../../parts/not-read.tsx";
import { writeNumber, writePercent } from "../../parts/numbers.ts";
import { Page } from "../../parts/page.tsx";
import { PhotoPart } from "../../parts/photos/photo-part.tsx";
import { href } from "../../parts/route.ts";
import { StandingWords, useStanding } from "../../parts/standing.tsx";
import { stripCover } from "../../parts/strip-cover.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { DeleteLine } from "../line/delete-line.tsx";
import { lineHeading } from "../line/heading.ts";
import { Lies } from "../set-out/lies.tsx";
import { type LineSheet, readSheet } from "./model.ts";

export const LineSheetScreen = (props: { readonly line: RecordId<"observation"> }) => {
  const house = useHouse();
  const settings = house.settings.value;
  const sheet = useLive(() => readSheet(house, props.line, settings), [props.line, settings]);
  const heading = useLive(() => lineHeading(house, props.line), [props.line]);
  const words = house.words.value;
  if (sheet === undefined || heading === undefined) return <div class="frame" aria-busy="true" />;
  if (sheet === null || sheet.deleted)
    return (
      <Page title={words.sheet.title} back={href({ at: "measure" })} area="measure">
        <p class="question">{sheet === null ? words.line.gone : words.line.deleted}</p>
      </Page>
    );
  const { header } = sheet.line;
  const { visit, strip } = header;
  return (
    <Page
      title={heading.title}
      under={heading.under}
      end={words.line.title(heading.index)}
      back={href({ at: "visit", visit })}
      area="measure"
      foot={
        sheet.line.finished ? (
          <div class="keys two">
            <LinkKey to={href({ at: "visit", visit })}>{words.sheet.today}</LinkKey>
            <LinkKey to={href({ at: "line-new", visit })} look="solid">
              {words.sheet.another}
            </LinkKey>
          </div>
        ) : (
          <LinkKey to={href({ at: "line", line: props.line })} look="solid">
            {words.line.goOn}
          </LinkKey>
        )
      }
    >
      <DemoNote id={sheet.line.header.field} />
      <Kinds sheet={sheet} />
      <section class="ruled">
        <h2>{heading.oldGrass ? words.sheet.oldGrass : words.sheet.strip}</h2>
        <StripWords header={header} />
        {/* How old grass was worked out stands with the yardstick of the day. */}
        <LinkKey to={href(heading.oldGrass ? { at: "visit", visit } : { at: "worked-out", strip, visit })}>
          {words.sheet.workedOut}
        </LinkKey>
        <Lies test={{ id: props.line, header, ropeMarks: sheet.line.frame.ropeMarks }} />
      </section>
      <section class="ruled">
        <h2>{words.sheet.positions}</h2>
        <Ends sheet={sheet} />
      </section>
      <PhotoPart of={props.line} />
      <section class="ruled keys">
        <LinkKey to={href({ at: "line", line: props.line })}>{words.sheet.correct}</LinkKey>
        <DeleteLine line={props.line} visit={visit} />
      </section>
    </Page>
  );
};

const Kinds = ({ sheet }: { readonly sheet: LineSheet }) => {
  const { words, settings } = useHouse();
  const { cover, line, thicknessMm } = sheet;
  const { habits } = settings.value;
  return (
    <section>
      <h2>{words.value.sheet.cover}</h2>
      {cover.ok ? (
        <div class="figure">
          <p class="big">
            {writePercent(cover.value.value, TONGUE)}
            <small> %</small>
          </p>
          <p>
            {cover.value.range.ok
              ? words.value.sheet.wilson(
                  writePercent(cover.value.range.value.lower, TONGUE),
                  writePercent(cover.value.range.value.upper, TONGUE),
                )
              : ""}
            <br />
            <b>
              {words.value.line.read(cover.value.n, line.frame.ropeMarks)}
              {line.counts.notRead > 0 ? `, ${words.value.line.notRead(line.counts.notRead)}` : ""}
            </b>
          </p>
        </div>
      ) : (
        <p class="question">{words.value.line.nothingRead}</p>
      )}
      <p class="aside">{line.finished ? words.value.sheet.wilsonHint : words.value.sheet.notFinished}</p>
      <table class="figures" hidden={sheet.kinds.length === 0}>
        <thead>
          <tr>
            <th>{words.value.sheet.kinds}</th>
            <th class="number">{words.value.sheet.marks}</th>
            <th class="number">{words.value.sheet.share}</th>
          </tr>
        </thead>
        <tbody>
          {sheet.kinds.map(({ kind, marks, percent }) => (
            <tr key={kind}>
              <td>
                {kind === "own"
                  ? (line.header.fifthKey ?? words.value.sheet.kind.own)
                  : words.value.sheet.kind[kind]}
              </td>
              <td class="number">{writeNumber(marks, TONGUE)}</td>
              <td class="number">{writeNumber(percent, TONGUE)} %</td>
            </tr>
          ))}
        </tbody>
      </table>
      {thicknessMm?.ok === true ? (
        <p>
          {words.value.sheet.thickness(
            lengthWords("mulchThickness", thicknessMm.value.value / 1000, habits),
            thicknessMm.value.n,
          )}
        </p>
      ) : null}
      <CorrectedSince kit={kitOf(line.header)} sinceMs={line.header.startedAtMs} />
    </section>
  );
};

const StripWords = ({ header }: { readonly header: LineHeader }) => {
  const { records, settings, words } = useHouse();
  const now = settings.value;
  const found = useLive(
    () => stripCover(records, now, header),
    [header.visit, header.strip, header.spot, now],
  );
  if (found === undefined) return <NotRead />;
  return <p>{`${stripSentence(words.value, found)} ${moreSentence(words.value, found, now)}`}</p>;
};

/** Start and end of the line; each can be moved by hand, or taken again while standing there, now or never. */
const Ends = ({ sheet }: { readonly sheet: LineSheet }) => {
  const house = useHouse();
  const words = house.words.value;
  const { habits } = house.settings.value;
  const [taking, setTaking] = useState<"start" | "end" | null>(null);
  const { start, end } = sheet.line.header;
  return (
    <>
      <h3>{words.sheet.start}</h3>
      <MovePositionOf test={sheet.line.id} which="start" stood={start} />
      <h3>{words.sheet.end}</h3>
      <MovePositionOf test={sheet.line.id} which="end" stood={end} />
      {sheet.lengthM === null ? null : (
        <p>{words.sheet.length(lengthWords("distance", sheet.lengthM, habits))}</p>
      )}
      {taking === null ? (
        <div class="keys">
          <Key onPress={() => setTaking("end")}>{words.setOut.takeEnd}</Key>
          <Key onPress={() => setTaking("start")}>{words.setOut.takeStart}</Key>
        </div>
      ) : (
        <TakePosition line={sheet.line.id} which={taking} onDone={() => setTaking(null)} />
      )}
    </>
  );
};

const TakePosition = (props: {
  readonly line: RecordId<"observation">;
  readonly which: "start" | "end";
  readonly onDone: () => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const standing = useStanding();
  const keep = async () => {
    const written = await house.write(house.pen.change(props.line, { [props.which]: standing.stood }));
    if (written.ok) props.onDone();
    else house.tell(written.problem);
  };
  return (
    <>
      <StandingWords
        standing={standing}
        question={props.which === "start" ? words.setOut.stand : words.setOut.standEnd}
      />
      <div class="keys two">
        <Key onPress={props.onDone}>{words.common.close}</Key>
        <Key look="solid" off={standing.stood.position === null} onPress={() => void keep()}>
          {words.setOut.stopHere}
        </Key>
      </div>
    </>
  );
};
