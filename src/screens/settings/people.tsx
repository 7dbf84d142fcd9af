/** Who is measuring: chosen, added, corrected, forgotten. */

import { useState } from "preact/hooks";
import type { Command } from "../../record/command/command.ts";
import type { RecordId } from "../../record/ids.ts";
import { AskOnce } from "../parts/ask-once.tsx";
import { concerns } from "../parts/concerns.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, Key, WriteLine } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { NotRead } from "../parts/not-read.tsx";
import { useTried } from "../parts/tried.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { SETTINGS_WORDS } from "./words.ts";

type Open = "none" | "add" | "correct";

/** The name on the line, for a new person or a corrected one. */
const NameForm = (props: {
  readonly first: string;
  readonly onKeep: (name: string) => void;
  readonly onLeave: () => void;
}) => {
  const { common } = useHouse().words.value;
  const settings = useWordsOf(SETTINGS_WORDS);
  const [name, setName] = useState(props.first);
  const [tried, triedNow] = useTried();
  const keep = () => {
    if (name.trim() === "") triedNow();
    else props.onKeep(name.trim());
  };
  return (
    <form
      class="keys"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <WriteLine
        label={settings.personName}
        value={name}
        wrong={tried && name.trim() === "" ? settings.personNeedsName : null}
        onWrite={setName}
      />
      <div class="keys two">
        <Key onPress={props.onLeave}>{common.close}</Key>
        <Key look="solid" onPress={keep}>
          {settings.personKeep}
        </Key>
      </div>
    </form>
  );
};

/** The section of Settings. */
export const People = () => {
  const house = useHouse();
  const { common } = house.words.value;
  const words = useWordsOf(SETTINGS_WORDS);
  const chosen = house.settings.value.person;
  const [open, setOpen] = useState<Open>("none");
  const people = useLive(() => house.records.list({ kind: "person" }), [], concerns("person"));
  const person = people?.find(({ id }) => id === chosen);
  const choose = (id: RecordId<"person"> | null) => {
    setOpen("none");
    house.changeSettings({ person: id });
  };
  const write = async (command: Command): Promise<boolean> => {
    const written = await house.write(command);
    if (!written.ok) house.tell(written.problem);
    else setOpen("none");
    return written.ok;
  };
  const add = async (name: string) => {
    const command = house.pen.write("person", { name });
    if (await write(command)) choose(command.id);
  };
  const forget = async (id: RecordId<"person">) => {
    if (!(await write(house.pen.erase(id)))) return;
    house.changeSettings({ person: null });
    house.say(words.forgotten);
  };
  return (
    <section class="settings-part">
      {people === undefined ? (
        <NotRead />
      ) : (
        <Choice
          question={words.whoQuestion}
          options={[
            ...people.map(({ id, body }) => ({
              value: id as string,
              label: body.name === "" ? common.noName : body.name,
            })),
            { value: "", label: words.nobody },
          ]}
          chosen={person?.id ?? ""}
          onChoose={(id) => choose(id === "" ? null : (id as RecordId<"person">))}
        />
      )}
      <div class="keys">
        {open === "add" ? (
          <NameForm first="" onLeave={() => setOpen("none")} onKeep={(name) => void add(name)} />
        ) : (
          <Key onPress={() => setOpen("add")}>{words.addPerson}</Key>
        )}
        {person === undefined ? null : open === "correct" ? (
          <NameForm
            first={person.body.name}
            onLeave={() => setOpen("none")}
            onKeep={(name) => void write(house.pen.change(person.id, { name }))}
          />
        ) : (
          <Key onPress={() => setOpen("correct")}>{words.correctPerson}</Key>
        )}
        {person === undefined ? null : (
          <AskOnce
            key={person.id}
            label={words.forgetPerson}
            question={words.forgetTitle(person.body.name === "" ? common.noName : person.body.name)}
            hint={words.forgetAsk}
            yes={words.forgetYes}
            onYes={() => forget(person.id)}
          />
        )}
      </div>
    </section>
  );
};
