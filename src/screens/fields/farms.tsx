/** The farm of a field: one that is known, another one, or none said. Its name can be changed. */
import { useState } from "preact/hooks";
import type { Command } from "../../record/command/command.ts";
import type { RecordId } from "../../record/ids.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, Key, WriteLine } from "../parts/keys.tsx";
import { useOnce } from "../parts/once.ts";
import type { Pen } from "../parts/pen.ts";
import type { Listed } from "../parts/reader.ts";
import { useWordsOf, useWordsWith } from "../parts/words-of.ts";
import { DETAILS_WORDS } from "./words.details.ts";
import { FIELD_WORDS } from "./words.ts";

/** What was chosen: a farm, `none`, or `new` with a name. */
export interface FarmChoice {
  readonly which: RecordId<"farm"> | "none" | "new";
  readonly name: string;
}

/** The choice that a field has now. */
export const farmChoice = (farm: RecordId<"farm"> | null): FarmChoice => ({
  which: farm ?? "none",
  name: "",
});

/** The farm that a choice means, and what must be written for it to exist. */
export const farmOf = (
  pen: Pen,
  choice: FarmChoice,
): { readonly farm: RecordId<"farm"> | null; readonly commands: readonly Command[] } => {
  if (choice.which !== "new") return { farm: choice.which === "none" ? null : choice.which, commands: [] };
  const name = choice.name.trim();
  if (name === "") return { farm: null, commands: [] };
  const command = pen.write("farm", { name });
  return { farm: command.id, commands: [command] };
};

export const Farms = (props: {
  readonly farms: readonly Listed<"farm">[];
  readonly choice: FarmChoice;
  readonly onChoose: (choice: FarmChoice) => void;
}) => {
  const words = useWordsOf(FIELD_WORDS).fields;
  const { choice, onChoose } = props;
  return (
    <>
      <Choice
        question={words.farm}
        options={[
          ...props.farms.map(({ id, body }) => ({ value: id as FarmChoice["which"], label: body.name })),
          { value: "new" as const, label: words.farmNew },
          { value: "none" as const, label: words.farmNone },
        ]}
        chosen={choice.which}
        onChoose={(which) => onChoose({ ...choice, which })}
      />
      {choice.which === "new" ? (
        <WriteLine
          label={words.farmName}
          value={choice.name}
          onWrite={(name) => onChoose({ ...choice, name })}
        />
      ) : null}
    </>
  );
};

const plain = (name: string): string => name.trim().normalize("NFC").toLocaleLowerCase("en");

/** The name of a farm above its fields, and the way to change it. */
export const FarmHeading = (props: { readonly farm: Listed<"farm"> }) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const says = useWordsOf(DETAILS_WORDS);
  const { farm } = props;
  const [name, setName] = useState<string | null>(null);
  const [taken, setTaken] = useState<string | null>(null);
  const [busy, once] = useOnce();
  const keep = (wanted: string) =>
    once(async () => {
      // Two farms of one name could not be told apart at a gateway. One may want it all the same: asked once.
      const others = await house.records.list({ kind: "farm" });
      const same = others.find(({ id, body }) => id !== farm.id && plain(body.name) === plain(wanted));
      if (same !== undefined && taken !== wanted) {
        setTaken(wanted);
        return;
      }
      const written = await house.write(house.pen.change(farm.id, { name: wanted.trim() }));
      if (written.ok) setName(null);
      else house.tell(written.problem);
    });
  if (name === null)
    return (
      <div class="farm-heading">
        <h2>{farm.body.name}</h2>
        <button
          type="button"
          class="key small"
          aria-label={says.renameFarmOf(farm.body.name)}
          onClick={() => setName(farm.body.name)}
        >
          {says.renameFarm}
        </button>
      </div>
    );
  return (
    <div class="farm-heading open">
      <WriteLine
        label={says.farmName}
        value={name}
        wrong={taken !== null && taken === name ? says.farmTaken(name.trim()) : null}
        onWrite={setName}
      />
      <div class="keys two beside">
        <Key onPress={() => setName(null)}>{words.common.close}</Key>
        <Key look="solid" off={busy || name.trim() === ""} onPress={() => keep(name)}>
          {words.common.done}
        </Key>
      </div>
    </div>
  );
};
