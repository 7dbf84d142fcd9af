/** Panels that stand in for the counting keys for a moment: a number on the rope, a correction, a thickness. */
import { useState } from "preact/hooks";
import type { Stance } from "../../../record/entry.ts";
import { type ReadNumber, readNumber } from "../../../record/number.ts";
import { sentenceFor } from "../../catalogue.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { NumberPad } from "../../parts/number-pad.tsx";
import { AnswerKeys, StanceSwitch } from "./keys.tsx";
import type { LineModel } from "./model.ts";
import { coverWords } from "./say.ts";

/** Largest mulch thickness that is taken without asking, in each unit (own choice, no source). */
const THICKEST = { mm: 300, in: 12 } as const;

const Panel = (props: {
  readonly question: string;
  readonly hint?: string | undefined;
  readonly wrong?: string | null | undefined;
  readonly children: preact.ComponentChildren;
  readonly keys: preact.ComponentChildren;
}) => (
  <>
    <main class="running">
      <h2 class="running-question" tabIndex={-1}>
        {props.question}
      </h2>
      <p role="status" class={props.wrong === null || props.wrong === undefined ? "" : "wrong"}>
        {props.wrong ?? props.hint ?? ""}
      </p>
    </main>
    <div class="count-keys panel">
      {props.children}
      <div class="keys two">{props.keys}</div>
    </div>
  </>
);

/** A whole number on the rope, typed on the pad. */
const RopeNumber = (props: {
  readonly question: string;
  readonly hint: string;
  readonly marks: number;
  readonly first: number | null;
  readonly onKeep: (mark: number) => void;
  readonly onLeave: () => void;
  readonly children?: preact.ComponentChildren;
}) => {
  const { words } = useHouse();
  const [typed, setTyped] = useState(props.first === null ? "" : String(props.first));
  const [wrong, setWrong] = useState<string | null>(null);
  const keep = () => {
    const mark = Number(typed);
    if (/^\d+$/.test(typed) && mark >= 1 && mark <= props.marks) props.onKeep(mark);
    else setWrong(words.value.line.onTheRope(props.marks));
  };
  return (
    <Panel
      question={props.question}
      hint={props.hint}
      wrong={wrong}
      keys={
        <>
          <Key onPress={props.onLeave}>{words.value.common.close}</Key>
          <Key look="solid" onPress={keep}>
            {words.value.common.done}
          </Key>
        </>
      }
    >
      {props.children}
      <NumberPad label={props.question} typed={typed} onType={setTyped} onEnter={keep} />
    </Panel>
  );
};

/** The rope says another number. */
export const SetMark = (props: { readonly model: LineModel; readonly marks: number }) => {
  const words = useHouse().words.value.line;
  return (
    <RopeNumber
      question={words.setMarkQuestion}
      hint={words.setMarkHint}
      marks={props.marks}
      first={null}
      onKeep={(mark) => void props.model.setMark(mark)}
      onLeave={props.model.leavePanel}
    />
  );
};

/** Where a line of called misses ends, and how the rest lies. */
export const EndAt = (props: { readonly model: LineModel; readonly marks: number }) => {
  const { model } = props;
  const words = useHouse().words.value.line;
  return (
    <RopeNumber
      question={words.endAtQuestion}
      hint=""
      marks={props.marks}
      first={props.marks}
      onKeep={(mark) => void model.endAt(mark)}
      onLeave={model.leavePanel}
    >
      <StanceSwitch stance={model.stance.value} onStance={model.setStance} rest />
    </RopeNumber>
  );
};

/** Every mark of the rope as a target of its own. */
export const RopeMarks = (props: {
  readonly model: LineModel;
  readonly marks: number;
  readonly fifthKey: string | null;
}) => {
  const { words } = useHouse();
  const reading = props.model.reading.value;
  if (reading === undefined) return null;
  const last = Math.min(
    props.marks,
    Math.max(reading.endedAt ?? 0, reading.next - 1, ...reading.marks.keys()),
  );
  return (
    <>
      <main class="rope-marks">
        <h2 class="running-question" tabIndex={-1}>
          {words.value.line.correctTitle}
        </h2>
        <ol>
          {Array.from({ length: last }, (_, index) => {
            const mark = index + 1;
            const read = reading.marks.get(mark);
            const what =
              read === undefined
                ? words.value.line.unread
                : read.answers.length > 1
                  ? words.value.line.twoAnswers(mark)
                  : coverWords(words.value, props.fifthKey, read);
            return (
              <li key={mark}>
                <button type="button" data-mark={mark} onClick={() => props.model.ask("correct", mark)}>
                  <b>{mark}</b> {what}
                  {read?.corrected === true ? <small> {words.value.line.corrected}</small> : null}
                </button>
              </li>
            );
          })}
        </ol>
      </main>
      <div class="count-keys">
        <Key look="solid" onPress={props.model.leavePanel}>
          {words.value.common.done}
        </Key>
      </div>
    </>
  );
};

/** Another answer for one mark; what stood there stays on record. */
export const CorrectMark = (props: { readonly model: LineModel; readonly fifthKey: string | null }) => {
  const { model } = props;
  const { words } = useHouse();
  const mark = model.correcting.value;
  const read = model.reading.value?.marks.get(mark);
  const [stance, setStance] = useState<Stance>(read?.stance ?? model.stance.value);
  const two = read !== undefined && read.answers.length > 1;
  return (
    <>
      <main class="running">
        <h2 class="running-question" tabIndex={-1}>
          {two ? words.value.line.twoAnswers(mark) : words.value.line.correctQuestion(mark)}
        </h2>
        <p>
          {read === undefined
            ? words.value.line.unread
            : read.answers.map((answer) => coverWords(words.value, props.fifthKey, answer)).join(" / ")}
        </p>
        <Key onPress={model.leavePanel}>{words.value.common.close}</Key>
      </main>
      <div class="count-keys">
        <StanceSwitch stance={stance} onStance={setStance} />
        <AnswerKeys
          fifthKey={props.fifthKey}
          flash={null}
          onAnswer={(cover) => void model.correct(mark, cover, stance)}
        />
      </div>
    </>
  );
};

/** Thickness of the mulch at a mark, in the person's unit. */
export const Thickness = (props: { readonly model: LineModel }) => {
  const { model } = props;
  const { words, settings } = useHouse();
  const unit = settings.value.habits.mulchThickness;
  const [typed, setTyped] = useState("");
  const [odd, setOdd] = useState<ReadNumber | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const mark = model.correcting.value;
  const keep = () => {
    const read = readNumber(typed, { min: -Number.MIN_VALUE, max: THICKEST[unit] });
    if (!read.ok) setWrong(sentenceFor(words.value, read.problem));
    else if (read.value.unusual.length > 0 && odd === null) setOdd(read.value);
    else void model.thickness(mark, read.value, unit);
  };
  return (
    <Panel
      question={words.value.line.thicknessQuestion(mark)}
      hint={odd === null ? undefined : words.value.unusual.ask(typed, unit)}
      wrong={wrong}
      keys={
        <>
          <Key onPress={model.leavePanel}>{words.value.common.skip}</Key>
          <Key look="solid" onPress={keep}>
            {odd === null ? words.value.common.done : words.value.unusual.yes}
          </Key>
        </>
      }
    >
      <NumberPad
        label={words.value.line.thicknessQuestion(mark)}
        typed={typed}
        unit={unit}
        decimals
        onType={(text) => {
          setTyped(text);
          setOdd(null);
          setWrong(null);
        }}
        onEnter={keep}
      />
    </Panel>
  );
};
