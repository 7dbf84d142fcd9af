/** The farm of a field: one that is known, another one, or none said. */
import type { Command } from "../../record/command/command.ts";
import type { RecordId } from "../../record/ids.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, WriteLine } from "../parts/keys.tsx";
import type { Pen } from "../parts/pen.ts";
import type { Listed } from "../parts/reader.ts";

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
  const words = useHouse().words.value.fields;
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
