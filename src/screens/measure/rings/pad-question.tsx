/** A question that is answered by a number: typed on the pad, and an odd one only after "yes, I read that". */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { PlausibleBounds } from "../../../record/number.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { type NumberDraft, numberState } from "../../parts/number-line.tsx";
import { NumberPad } from "../../parts/number-pad.tsx";

/** A number that is to be kept. */
export interface PadAnswer {
  readonly read: { readonly value: number; readonly typed: string };
  /** It looked impossible and was said to be right. */
  readonly odd: boolean;
}

export const PadQuestion = (props: {
  readonly question: string;
  readonly hint: string;
  readonly unit: string;
  readonly bounds: PlausibleBounds;
  readonly first?: string;
  readonly onKeep: (answer: PadAnswer) => void;
  /** Keys left of Done. */
  readonly beside: ComponentChildren;
  /** What stands below the question. */
  readonly above?: ComponentChildren;
  /** What stands over the pad: switches, moments. */
  readonly over?: ComponentChildren;
  readonly three?: boolean;
  readonly busy?: boolean;
}) => {
  const words = useHouse().words.value;
  const [draft, setDraft] = useState<NumberDraft>({ typed: props.first ?? "", confirmed: false });
  const [fresh, setFresh] = useState(props.first !== undefined && props.first !== "");
  const [tried, setTried] = useState(false);
  const state = numberState(words, draft, { bounds: props.bounds, refuse: () => null });
  const type = (typed: string) => {
    // The first digit takes the place of what stood there before; erasing works on what stands there.
    const begun = fresh && typed.length > draft.typed.length ? typed.slice(draft.typed.length) : typed;
    setFresh(false);
    setDraft({ typed: begun, confirmed: false });
    setTried(false);
  };
  const keep = (value?: number) => {
    if (value !== undefined) props.onKeep({ read: { value, typed: draft.typed }, odd: true });
    else if (state.is === "good")
      props.onKeep({ read: { value: state.value, typed: draft.typed }, odd: false });
    else setTried(true);
  };
  const odd = tried && state.is === "odd" ? state : null;
  const [only] = odd?.meant.length === 1 ? odd.meant : [];
  return (
    <>
      <main class="running ring-top">
        <h2 class="running-question" tabIndex={-1}>
          {props.question}
        </h2>
        <p role="status" class={tried && state.is !== "good" ? "wrong" : "ring-hint"}>
          {tried && state.is === "wrong"
            ? state.sentence
            : odd !== null
              ? words.unusual.ask(draft.typed, props.unit)
              : props.hint}
        </p>
        {props.above}
      </main>
      <div class="count-keys panel">
        {props.over}
        <NumberPad
          label={props.question}
          typed={draft.typed}
          unit={props.unit}
          decimals
          onType={type}
          onEnter={() => keep(only)}
        />
        <div class={`keys ${props.three === true ? "three" : "two"}`}>
          {odd !== null && odd.meant.length > 1 ? (
            odd.meant.map((value) => (
              <Key key={value} look="solid" onPress={() => keep(value)}>
                {`${value} ${props.unit}`}
              </Key>
            ))
          ) : (
            <>
              {props.beside}
              <Key look="solid" off={props.busy === true} onPress={() => keep(only)}>
                {odd === null ? words.common.done : words.unusual.yes}
              </Key>
            </>
          )}
        </div>
      </div>
    </>
  );
};
