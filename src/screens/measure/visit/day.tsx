/** The day of a visit, corrected: a device whose clock was wrong wrote it under another one. */
import { useId, useState } from "preact/hooks";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { writeDay } from "../../parts/numbers.ts";
import { useWordsWith } from "../../parts/words-of.ts";
import { correctDay, type VisitNow } from "./model.ts";
import { VISIT_WORDS } from "./words.ts";

const isDay = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text);

export const CorrectDay = ({ now }: { readonly now: VisitNow }) => {
  const house = useHouse();
  const { visit: words, common } = useWordsWith(VISIT_WORDS);
  const [chosen, setChosen] = useState<string | null>(null);
  const [wrong, setWrong] = useState(false);
  const id = useId();
  const keep = async (day: string) => {
    if (!isDay(day)) setWrong(true);
    else if (await correctDay(house, now.visits, day)) setChosen(null);
  };
  return (
    <section class="ruled">
      <h2>{words.day}</h2>
      <p>{writeDay(now.visit.body.day, common.tongue)}</p>
      {chosen === null ? (
        <Key
          onPress={() => {
            setWrong(false);
            setChosen(now.visit.body.day);
          }}
        >
          {words.dayCorrect}
        </Key>
      ) : (
        <>
          <label class="write">
            {words.dayLabel}
            <input
              type="date"
              value={chosen}
              aria-invalid={wrong}
              aria-describedby={id}
              onInput={(event) => {
                setChosen(event.currentTarget.value);
                setWrong(false);
              }}
            />
            <span id={id} class={wrong ? "wrong" : "aside"}>
              {wrong || !isDay(chosen) ? words.dayMissing : words.dayHint(writeDay(chosen, common.tongue))}
            </span>
          </label>
          <div class="keys two beside">
            <Key onPress={() => setChosen(null)}>{common.close}</Key>
            <Key look="solid" onPress={() => void keep(chosen)}>
              {common.done}
            </Key>
          </div>
        </>
      )}
    </section>
  );
};
