/** Who is reading just now; every entry carries that person. */
import { useHouse } from "../../parts/house.ts";
import { Choice } from "../../parts/keys.tsx";
import type { Listed } from "../../parts/reader.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { RING_WORDS } from "./words.ts";

export const WhoReads = (props: { readonly people: readonly Listed<"person">[] }) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).board;
  const { common } = house.words.value;
  if (props.people.length === 0) return null;
  return (
    <div class="board-part">
      <Choice
        question={words.whoReads}
        options={[
          ...props.people.map(({ id, body }) => ({
            value: id as string,
            label: body.name === "" ? common.noName : body.name,
          })),
          { value: "", label: words.nobody },
        ]}
        chosen={house.settings.value.person ?? ""}
        onChoose={(chosen) =>
          house.changeSettings({ person: props.people.find(({ id }) => id === chosen)?.id ?? null })
        }
      />
    </div>
  );
};
