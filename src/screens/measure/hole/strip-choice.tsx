/** Which strip the hole lies in: chosen, added, or the whole field. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key } from "../../parts/keys.tsx";
import { stripName } from "../../parts/names.ts";
import { useOnce } from "../../parts/once.ts";
import type { Listed } from "../../parts/reader.ts";
import { STRIP_FORM, StripForm, type StripSaid } from "../../parts/strip-form.tsx";
import { typedHere } from "../../parts/typed-store.ts";
import { addStrip } from "../set-out/model.ts";

export const StripChoice = (props: {
  readonly field: RecordId<"field">;
  readonly strips: readonly Listed<"strip">[];
  readonly chosen: RecordId<"strip"> | null;
  readonly onChoose: (strip: RecordId<"strip">) => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const { field, strips } = props;
  const [adding, setAdding] = useState(() => typedHere(STRIP_FORM).length > 0);
  const [busy, once] = useOnce();
  const add = async (said: StripSaid) => {
    const id = await addStrip(house, field, said);
    if (id === null) return false;
    props.onChoose(id);
    setAdding(false);
    return true;
  };
  return (
    <>
      {strips.length > 0 ? (
        <Choice
          question={words.setOut.strip}
          options={strips.map((one) => ({ value: one.id, label: stripName(words, one) }))}
          chosen={props.chosen}
          onChoose={props.onChoose}
        />
      ) : (
        <h2 class="question">{words.setOut.strip}</h2>
      )}
      {adding ? (
        <StripForm onKeep={add} onClose={() => setAdding(false)} />
      ) : (
        <div class="keys two beside">
          {strips.some(({ body }) => body.wholeField) ? null : (
            <Key
              off={busy}
              onPress={() =>
                once(async () => {
                  await add({ name: "", done: [], wholeField: true, rep: null });
                })
              }
            >
              {words.setOut.wholeField}
            </Key>
          )}
          <Key onPress={() => setAdding(true)}>{words.setOut.addStrip}</Key>
        </div>
      )}
    </>
  );
};
