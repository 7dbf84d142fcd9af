/** The line while it is counted: question and running result on top, keys under the thumb. */
import { useEffect, useMemo } from "preact/hooks";
import { listenForKeys } from "../../../device/keys.ts";
import { keepScreenOn } from "../../../device/screen-on.ts";
import type { RecordId } from "../../../record/ids.ts";
import { type House, useHouse } from "../../parts/house.ts";
import { BackDrawing } from "../../parts/icons.tsx";
import { useLive } from "../../parts/live.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import type { LineAnswer } from "../../parts/settings.ts";
import { answerCue, cue } from "./cues.ts";
import { Doubts } from "./doubts.tsx";
import { changesBeside, type LineHeading, lineHeading } from "./heading.ts";
import { AnswerKeys, StanceSwitch } from "./keys.tsx";
import { MissKeys } from "./miss-keys.tsx";
import { type LineModel, lineModel, type StoredLine } from "./model.ts";
import { OverKeys } from "./over.tsx";
import { useLineFocus } from "./panel-focus.ts";
import { usePanelSteps } from "./panel-steps.ts";
import { CorrectMark, EndAt, RopeMarks, SetMark, Thickness } from "./panels.tsx";
import { Running } from "./running.tsx";
import { sayEntry } from "./say.ts";
import { Tools } from "./tools.tsx";
import "./line.css";
import "./line-small.css";
import type { Totals } from "./totals.tsx";

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
  usePanelSteps(model);
  useLineFocus(model);
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
        else if (!model.over.value) void model.touch(answer, atMs);
      },
      stop.signal,
    );
    return () => stop.abort();
  }, [house, model]);
};

/** Loaded when it is asked for: the keys of a line that is counted mark by mark must not wait for it. */
const LateTotals = (props: Parameters<typeof Totals>[0]) => {
  const Loaded = useLive(
    async () => (await import("./totals.tsx")).Totals,
    [],
    () => false,
  );
  return Loaded === undefined ? null : <Loaded {...props} />;
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
  const over = model.over.value;
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
          onClick={(event) => {
            if (asking.value === "marks") return;
            event.preventDefault();
            model.leavePanel();
          }}
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
          <LateTotals model={model} marks={stored.rope.marks} fifthKey={fifthKey} />
        ) : (
          <>
            <Running house={house} model={model} stored={stored} line={props.line} />
            <Tools model={model} reading={reading} way={way} />
            <div class={`count-keys ${over ? "over" : ""}`}>
              {over ? (
                <OverKeys model={model} stored={stored} reading={reading} line={props.line} />
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
