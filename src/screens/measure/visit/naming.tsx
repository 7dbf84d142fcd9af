/** A field that was measured before it had a name: the name can be given right here. */
import { useState } from "preact/hooks";
import { useHouse } from "../../parts/house.ts";
import { Key, WriteLine } from "../../parts/keys.tsx";
import type { Listed } from "../../parts/reader.ts";
import { fieldsNamed, type NameTaken } from "../../parts/same-name.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { joinFields, nameField } from "./model.ts";
import { VISIT_WORDS } from "./words.ts";

/** Asks for the name; when a field is called so already, whether it is the same one. */
export const Naming = ({ field }: { readonly field: Listed<"field"> }) => {
  const house = useHouse();
  const words = useWordsOf(VISIT_WORDS).visit;
  const [name, setName] = useState("");
  const [taken, setTaken] = useState<readonly NameTaken[]>([]);
  const keep = async () => {
    const others = await fieldsNamed(house.records, name, field.id);
    if (others.length === 0) await nameField(house, field.id, name);
    else setTaken(others);
  };
  if (taken.length > 0)
    return (
      <section>
        <h2>{words.same}</h2>
        <p>{words.sameHint}</p>
        <div class="keys">
          {taken.map((one) => (
            <Key
              key={one.field.id}
              look="solid"
              onPress={() => void joinFields(house, field.id, one.field.id).then(() => setTaken([]))}
            >
              {words.sameYes(one.field.body.name, one.farm?.body.name ?? null)}
            </Key>
          ))}
          <Key onPress={() => void nameField(house, field.id, name).then(() => setTaken([]))}>
            {words.sameNo}
          </Key>
        </div>
      </section>
    );
  return (
    <form
      class="naming"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== "") void keep();
      }}
    >
      <WriteLine label={words.nameLabel} hint={words.nameHint} value={name} onWrite={setName} />
      <Key onPress={() => void keep()} off={name.trim() === ""}>
        {words.nameKeep}
      </Key>
    </form>
  );
};
