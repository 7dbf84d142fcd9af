/** A line for one number: read as it is typed, and an odd one is kept only after "yes, I read that". */
import type { PlausibleBounds, ReadNumber } from "../../record/number.ts";
import { readNumber } from "../../record/number.ts";
import { type Catalogue, sentenceFor } from "../catalogue.ts";
import { useHouse } from "./house.ts";
import { Key, WriteLine } from "./keys.tsx";

/** What was typed, and whether an odd number was said to be right. */
export interface NumberDraft {
  readonly typed: string;
  readonly confirmed: boolean;
}

/** What a number has to be. */
export interface NumberRule {
  readonly bounds: PlausibleBounds;
  /** A sentence for a number that cannot be kept at all, else null. */
  readonly refuse: (value: number) => string | null;
}

/** A draft as it stands: a number to keep, a question about an odd one, or a sentence why not. */
export type NumberState =
  | { readonly is: "good"; readonly value: number }
  | { readonly is: "odd"; readonly read: ReadNumber; readonly meant: readonly number[] }
  | { readonly is: "wrong"; readonly sentence: string };

/**
 * Reads a draft.
 *
 * @example
 * numberState(words, { typed: "12,5", confirmed: false }, rule) // => { is: "good", value: 12.5 }
 */
export const numberState = (words: Catalogue, draft: NumberDraft, rule: NumberRule): NumberState => {
  const read = readNumber(draft.typed, rule.bounds);
  if (!read.ok) return { is: "wrong", sentence: sentenceFor(words, read.problem) };
  const { value, unusual, asThousands } = read.value;
  if (unusual.length > 0 && !draft.confirmed) {
    // "1,234" may be refused as 1.234 and be right as 1234: then it is asked, not refused.
    const meant = [value, ...(asThousands === null ? [] : [asThousands])];
    const possible = meant.filter((one) => rule.refuse(one) === null);
    if (possible.length > 0) return { is: "odd", read: read.value, meant: possible };
  }
  const refused = rule.refuse(value);
  return refused === null ? { is: "good", value } : { is: "wrong", sentence: refused };
};

/** The line. Sentences and questions show once `tried`: nobody is told off in the middle of a number. */
export const NumberLine = (props: {
  readonly label: string;
  readonly unit: string;
  readonly hint?: string;
  readonly draft: NumberDraft;
  readonly onDraft: (draft: NumberDraft) => void;
  readonly state: NumberState;
  readonly tried: boolean;
}) => {
  const { draft, state, tried, unit } = props;
  const words = useHouse().words.value.unusual;
  const odd = tried && state.is === "odd" ? state : null;
  return (
    <>
      <WriteLine
        label={props.label}
        numeric
        value={draft.typed}
        wrong={tried && state.is === "wrong" ? state.sentence : null}
        {...(props.hint === undefined ? {} : { hint: props.hint })}
        onWrite={(typed) => props.onDraft({ typed, confirmed: false })}
      />
      {odd === null ? null : (
        <fieldset class="keys">
          <p class="wrong" role="alert">
            {words.ask(draft.typed.trim(), unit)}
          </p>
          {odd.read.asThousands === null ? (
            <Key onPress={() => props.onDraft({ ...draft, confirmed: true })}>{words.yes}</Key>
          ) : (
            odd.meant.map((value) => (
              <Key key={value} onPress={() => props.onDraft({ typed: String(value), confirmed: true })}>
                {`${value} ${unit}`}
              </Key>
            ))
          )}
        </fieldset>
      )}
    </>
  );
};
