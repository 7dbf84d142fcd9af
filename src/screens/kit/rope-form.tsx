/** A rope or tape: its name, its marks, its spacing. New, or corrected. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { useHouse } from "../parts/house.ts";
import { Key, WriteLine } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { NumberLine, numberState } from "../parts/number-line.tsx";
import {
  type KnownSpacing,
  type ListedRope,
  linesByRope,
  marksRule,
  readRopes,
  spacingRule,
  spacingText,
  spacingToKeep,
  USUAL,
} from "./model.ts";
import "./rope-form.css";

/** A size put into the form. */
const sizeIn = (size: { readonly marks: number; readonly spacingM: number }, unit: "cm" | "in") => ({
  marks: String(size.marks),
  spacing: { spacingM: size.spacingM, text: spacingText(size.spacingM, unit) },
});

/**
 * The form. `onDone` gets the rope once it is written down, or null when the form was closed without.
 * With `rope` it corrects that one, and says first how many lines the correction touches.
 */
export const RopeForm = (props: {
  readonly onDone: (id: RecordId<"kit"> | null) => void;
  readonly rope?: ListedRope;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const unit = house.settings.value.habits.spacing;
  const before = props.rope;
  const first = before === undefined ? null : sizeIn(before.rope, unit);
  const [name, setName] = useState(before?.rope.name ?? "");
  const [marks, setMarks] = useState({ typed: first?.marks ?? "", confirmed: first !== null });
  const [spacing, setSpacing] = useState({ typed: first?.spacing.text ?? "", confirmed: first !== null });
  const [known, setKnown] = useState<KnownSpacing | null>(first?.spacing ?? null);
  const [tried, setTried] = useState(false);
  const [busy, setBusy] = useState(false);
  const ropes = useLive(() => readRopes(house.records), []);
  const touched = useLive(
    async () =>
      before === undefined
        ? 0
        : (linesByRope(await house.records.list({ kind: "observation" })).get(before.id) ?? 0),
    [before?.id],
  );
  const taken = ropes?.some(
    ({ id, rope }) =>
      id !== before?.id && rope.name !== "" && rope.name.trim().toLowerCase() === name.trim().toLowerCase(),
  );
  const marksNow = numberState(words, marks, marksRule(words.kit.marksRefused));
  const spacingNow = numberState(words, spacing, spacingRule(unit, words.kit.spacingRefused));
  const usual = (size: (typeof USUAL)[keyof typeof USUAL]) => {
    const put = sizeIn(size, unit);
    setMarks({ typed: put.marks, confirmed: true });
    setSpacing({ typed: put.spacing.text, confirmed: true });
    setKnown(put.spacing);
  };
  const keep = async () => {
    if (marksNow.is !== "good" || spacingNow.is !== "good") {
      setTried(true);
      return;
    }
    const body = {
      type: "rope" as const,
      name: name.trim(),
      marks: marksNow.value,
      spacingM: spacingToKeep(known, spacing.typed, spacingNow.value, unit),
    };
    setBusy(true);
    const written = before === undefined ? house.pen.write("kit", body) : house.pen.change(before.id, body);
    const done = await house.write(written);
    setBusy(false);
    if (done.ok) props.onDone(written.id as RecordId<"kit">);
    else house.tell(done.problem);
  };
  const lines = touched ?? 0;
  return (
    <form
      class="rope-form"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <h2>
        {before === undefined
          ? words.kit.addTitle
          : words.kit.correctTitle(before.rope.name || words.common.noName)}
      </h2>
      <WriteLine
        label={words.kit.name}
        value={name}
        hint={taken === true ? words.kit.nameTaken : words.kit.nameHint}
        onWrite={setName}
      />
      {before === undefined ? (
        <fieldset class="usual">
          <legend>{words.kit.usual}</legend>
          <div class="keys two">
            <Key onPress={() => usual(USUAL.metric)}>{words.kit.usualMetric}</Key>
            <Key onPress={() => usual(USUAL.foot)}>{words.kit.usualFoot}</Key>
          </div>
        </fieldset>
      ) : null}
      <NumberLine
        label={words.kit.marks}
        unit={words.kit.marksUnit}
        draft={marks}
        onDraft={setMarks}
        state={marksNow}
        tried={tried}
      />
      <NumberLine
        label={words.kit.spacing(words.settings.units[unit])}
        unit={unit}
        hint={words.kit.spacingHint}
        draft={spacing}
        onDraft={setSpacing}
        state={spacingNow}
        tried={tried}
      />
      {before === undefined || touched === undefined ? null : (
        <p role="status">
          {words.kit.touches(lines)}
          {lines > 0 && marksNow.is === "good" && marksNow.value < before.rope.marks
            ? ` ${words.kit.fewerMarks(marksNow.value)}`
            : ""}
        </p>
      )}
      <div class="keys two">
        <Key onPress={() => props.onDone(null)}>{words.common.close}</Key>
        <Key
          look="solid"
          off={busy || (before !== undefined && touched === undefined)}
          onPress={() => void keep()}
        >
          {before === undefined ? words.kit.save : words.kit.saveCorrected(lines)}
        </Key>
      </div>
      {before === undefined ? <p class="aside usual-source">{words.kit.usualSource}</p> : null}
    </form>
  );
};
