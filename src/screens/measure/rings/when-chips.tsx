/** When it was looked at: now, some minutes ago, or a time that is typed. */
import { useId } from "preact/hooks";
import { useWordsOf } from "../../parts/words-of.ts";
import { MINUTES_AGO, NOW, type When } from "./when.ts";
import { RING_WORDS } from "./words.ts";

interface Chip {
  readonly label: string;
  readonly when: When;
  readonly on: boolean;
}

export const WhenChips = (props: {
  readonly when: When;
  readonly onWhen: (when: When) => void;
  /** Leaves out *now*, for readings that come late. */
  readonly lateOnly?: boolean;
}) => {
  const words = useWordsOf(RING_WORDS).when;
  const group = useId();
  const { when, onWhen } = props;
  const chips: readonly Chip[] = [
    ...(props.lateOnly === true ? [] : [{ label: words.now, when: NOW, on: when.how === "now" }]),
    ...MINUTES_AGO.map((minutes) => ({
      label: words.ago(minutes),
      when: { how: "minutes-ago" as const, minutes },
      on: when.how === "minutes-ago" && when.minutes === minutes,
    })),
    { label: words.typed, when: { how: "typed", text: "" }, on: when.how === "typed" },
  ];
  return (
    <fieldset class="when">
      <legend class="out-of-sight">{words.legend}</legend>
      <div class={`when-chips ${props.lateOnly === true ? "four" : ""}`}>
        {chips.map((chip) => (
          <label key={chip.label}>
            <input
              class="out-of-sight"
              type="radio"
              name={group}
              checked={chip.on}
              onChange={() => onWhen(chip.when)}
            />
            {chip.label}
          </label>
        ))}
      </div>
      {when.how === "typed" ? (
        <label class="when-typed">
          {words.clock}
          <input
            type="text"
            inputMode="numeric"
            autocomplete="off"
            maxLength={8}
            placeholder={words.clockExample}
            value={when.text}
            onInput={(event) => onWhen({ how: "typed", text: event.currentTarget.value })}
          />
        </label>
      ) : null}
    </fieldset>
  );
};
