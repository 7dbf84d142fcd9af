/** The line while it is counted: question and running result on top, keys under the thumb. */
import { useEffect, useMemo } from "preact/hooks";
import { listenForKeys } from "../../../device/keys.ts";
import { keepScreenOn } from "../../../device/screen-on.ts";
import type { RecordId } from "../../../record/ids.ts";
import { type House, useHouse } from "../../parts/house.ts";
import { BackDrawing } from "../../parts/icons.tsx";
import { LinkKey } from "../../parts/keys.tsx";
import { groundCoverOf } from "../../parts/line-counts.ts";
import { useLive } from "../../parts/live.ts";
import { writePercent } from "../../parts/numbers.ts";
import { Page } from "../../parts/page.tsx";
import { RopeDrawing } from "../../parts/rope-drawing.tsx";
import { href } from "../../parts/route.ts";
import type { LineAnswer } from "../../parts/settings.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { answerCue, cue } from "./cues.ts";
import { Doubts, doubtsOf } from "./doubts.tsx";
import { changesBeside, type LineHeading, lineHeading } from "./heading.ts";
import { AnswerKeys, StanceSwitch } from "./keys.tsx";
import { type LineModel, lineModel, type StoredLine } from "./model.ts";
import { CorrectMark, EndAt, MissKeys, RopeMarks, SetMark, Thickness } from "./panels.tsx";
import { sayEntry } from "./say.ts";
import "./line.css";
import { StripSoFar } from "./strip-so-far.tsx";
import { Totals } from "./totals.tsx";

/** The counting screen of one line, by its address. */
export const LineScreen = (props: { readonly line: RecordId<"observation"> }) => {
  const house = useHouse();
  const model = useMemo(() => lineModel(house, props.line), [house, props.line]);
  const heading = useLive(() => lineHeading(house, props.line), [props.line], changesBeside(props.line));
  useEffect(() => {
    void model.refresh();
    return house.records.subscribe((changed) => {
      if (changed === "everything" || (changed.includes(props.line) && !model.isWriting()))
        void model.refresh();
    });
  }, [house, model, props.line]);
  useClicker(house, model);
  useScreenOn();
  const stored = model.stored.value;
  const words = house.words.value;
  if (stored === undefined) return <div class="frame" aria-busy="true" />;
  if (stored === null || stored.deleted)
    return (
      <Page
        title={stored === null ? words.line.gone : words.line.deleted}
        back={href({ at: "measure" })}
        area="measure"
      >
        {null}
      </Page>
    );
  return <Counting house={house} model={model} stored={stored} heading={heading} line={props.line} />;
};

/** The screen stays lit while a line is counted: hands are cold and the eyes are on the ground. */
const useScreenOn = () => {
  useEffect(() => {
    const stop = new AbortController();
    keepScreenOn(() => undefined, stop.signal);
    return () => stop.abort();
  }, []);
};

/** Keys of a keyboard or clicker answer like the keys on the glass. */
const useClicker = (house: House, model: LineModel) => {
  useEffect(() => {
    const stop = new AbortController();
    // While a number is typed, keys belong to the number.
    const counting = () =>
      model.asking.value === "marks" && model.stored.value?.header.way === "mark-by-mark";
    listenForKeys<LineAnswer>(
      () => (counting() ? house.settings.value.clicker : []),
      (answer, atMs) => {
        if (answer === "undo") void model.undo();
        else if (!model.finished.value) void model.touch(answer, atMs);
      },
      stop.signal,
    );
    return () => stop.abort();
  }, [house, model]);
};

const Counting = (props: {
  readonly house: House;
  readonly model: LineModel;
  readonly stored: StoredLine;
  readonly heading: LineHeading | undefined;
  readonly line: RecordId<"observation">;
}) => {
  const { house, model, stored, heading } = props;
  const words = house.words.value;
  const reading = model.reading.value;
  const last = model.last.value;
  useEffect(() => {
    if (last === null) return;
    cue(house.settings.value, last.how === "took" ? answerCue(last.entry) : "undo");
    house.say(sayEntry(words, stored.header.fifthKey, last));
  }, [house, last, stored.header.fifthKey, words]);
  if (reading === undefined) return <div class="frame" aria-busy="true" />;
  const { way, fifthKey } = stored.header;
  const { asking } = model;
  const flash =
    last !== null && last.how === "took" && last.entry.type === "mark"
      ? { cover: last.entry.cover, count: last.count }
      : null;
  const panel = () => {
    switch (asking.value) {
      case "set-mark":
        return <SetMark model={model} marks={stored.rope.marks} />;
      case "end-at":
        return <EndAt model={model} marks={stored.rope.marks} />;
      case "rope":
        return <RopeMarks model={model} marks={stored.rope.marks} fifthKey={fifthKey} />;
      case "correct":
        return <CorrectMark model={model} fifthKey={fifthKey} />;
      case "thickness":
        return <Thickness model={model} />;
      case "doubts":
        return <Doubts model={model} fifthKey={fifthKey} />;
      case "marks":
        return null;
    }
  };
  const open = panel();
  // Totals in doubt are not finished, and there is nothing to count either.
  const over = model.finished.value || way === "totals";
  return (
    <div class="count">
      <header class="head">
        <a
          class="back"
          href={
            heading === undefined
              ? href({ at: "measure" })
              : href({ at: "visit", visit: stored.header.visit })
          }
          aria-label={words.common.back}
        >
          <BackDrawing />
        </a>
        <div>
          <h1>{heading?.title ?? ""}</h1>
          <p>{heading?.under ?? ""}</p>
        </div>
        <div class="head-end">{heading === undefined ? "" : words.line.title(heading.index)}</div>
      </header>
      {open ??
        (way === "totals" && reading.totals === null ? (
          <Totals model={model} marks={stored.rope.marks} fifthKey={fifthKey} />
        ) : (
          <>
            <Running house={house} model={model} stored={stored} line={props.line} />
            <div class="tools">
              <button type="button" onClick={() => void model.undo()} disabled={reading.undoable === null}>
                {words.common.undo}
              </button>
              <button type="button" onClick={() => void model.redo()} disabled={reading.redoable === null}>
                {words.common.redo}
              </button>
              <button
                type="button"
                disabled={way !== "mark-by-mark" || reading.endedAt !== null}
                onClick={() => model.ask("set-mark")}
              >
                {words.line.setMark}
              </button>
              <button
                type="button"
                disabled={model.finished.value}
                onClick={() => (way === "misses-only" ? model.ask("end-at") : void model.endHere())}
              >
                {words.line.endHere}
              </button>
            </div>
            <div class={`count-keys ${over ? "over" : ""}`}>
              {over ? (
                <>
                  <LinkKey to={href({ at: "line-sheet", line: props.line })} look="straw">
                    {words.line.sheet}
                  </LinkKey>
                  <LinkKey to={href({ at: "line-new", visit: stored.header.visit })}>
                    {words.sheet.another}
                  </LinkKey>
                </>
              ) : way === "misses-only" ? (
                <MissKeys model={model} marks={stored.rope.marks} fifthKey={fifthKey} />
              ) : (
                <>
                  <StanceSwitch stance={model.stance.value} onStance={model.setStance} />
                  <AnswerKeys
                    fifthKey={fifthKey}
                    flash={flash}
                    onAnswer={(cover, atMs) => void model.touch(cover, atMs)}
                  />
                </>
              )}
            </div>
          </>
        ))}
    </div>
  );
};

/** The question, the figure and the rope. Their heights are fixed, so no key below them ever moves. */
const Running = (props: {
  readonly house: House;
  readonly model: LineModel;
  readonly stored: StoredLine;
  readonly line: RecordId<"observation">;
}) => {
  const { house, model, stored } = props;
  const words = house.words.value.line;
  const reading = model.reading.value;
  if (reading === undefined) return null;
  const cover = groundCoverOf(reading.tally, house.settings.value.stonesCount);
  const ropeMarks = stored.rope.marks;
  const question = (): string => {
    if (reading.endedAt !== null) return words.ended(reading.endedAt);
    if (stored.header.way === "totals") return words.totalsQuestion;
    if (model.finished.value) return words.full(ropeMarks);
    return stored.header.way === "misses-only" ? words.missQuestion : words.question(reading.next);
  };
  const last = model.last.value;
  // While misses are called the cover is not known: what was not called may still turn out not to be read.
  const calling = stored.header.way === "misses-only" && reading.endedAt === null;
  return (
    <main class={`running ${calling ? "calling" : ""}`}>
      <h2 class="running-question">{question()}</h2>
      <div class="figure" hidden={calling}>
        <p class="big">
          {cover.share === null ? "–" : writePercent(cover.share, TONGUE)}
          <small> %</small>
        </p>
        <p>
          {words.soFar}
          <br />
          <b>
            {words.read(cover.read, ropeMarks)}
            {reading.tally.notRead > 0 ? `, ${words.notRead(reading.tally.notRead)}` : ""}
          </b>
        </p>
      </div>
      <button
        type="button"
        class="rope-key"
        onClick={() => model.ask("rope")}
        disabled={stored.header.way === "totals"}
      >
        <RopeDrawing
          marks={ropeMarks}
          next={model.finished.value ? 0 : reading.next}
          at={(mark) => {
            const read = reading.marks.get(mark);
            return read === undefined
              ? undefined
              : { cover: read.cover, stance: read.stance, twoAnswers: read.answers.length > 1 };
          }}
        />
        <span class="rope-words">{words.correct}</span>
      </button>
      {calling ? <p>{words.missed(reading.marks.size)}</p> : null}
      {doubtsOf(reading) > 0 ? (
        <button type="button" class="key doubts" onClick={() => model.ask("doubts")}>
          {words.doubts(doubtsOf(reading))}
        </button>
      ) : (
        <p class="last">{last === null ? "" : sayEntry(house.words.value, stored.header.fifthKey, last)}</p>
      )}
      {calling ? null : (
        <StripSoFar header={stored.header} line={props.line} finished={model.finished.value} />
      )}
    </main>
  );
};
