/** *Misses only*: the number on the rope, then what lies there. */
import { useState } from "preact/hooks";
import type { Cover } from "../../../record/entry.ts";
import { useHouse } from "../../parts/house.ts";
import { NumberPad } from "../../parts/number-pad.tsx";
import { AnswerKeys } from "./keys.tsx";
import type { LineModel } from "./model.ts";

export const MissKeys = (props: {
  readonly model: LineModel;
  readonly marks: number;
  readonly fifthKey: string | null;
}) => {
  const { model } = props;
  const words = useHouse().words.value.line;
  const [typed, setTyped] = useState("");
  const mark = Number(typed);
  const named = /^\d+$/.test(typed) && mark >= 1 && mark <= props.marks;
  const answer = (cover: Cover) => {
    setTyped("");
    void model.miss(mark, cover);
  };
  return (
    <>
      <NumberPad
        label={words.missHint}
        typed={typed}
        onType={setTyped}
        corner={
          // Only a mark that was called can turn out to be residue: all others are residue anyway.
          <button
            type="button"
            class="key after-all"
            data-answer="residue"
            disabled={!named || model.reading.value?.marks.has(mark) !== true}
            onClick={() => answer("residue")}
          >
            {words.afterAll}
          </button>
        }
      />
      <AnswerKeys
        missesOnly
        fifthKey={props.fifthKey}
        off={!named}
        flash={null}
        onAnswer={(cover) => answer(cover)}
      />
    </>
  );
};
