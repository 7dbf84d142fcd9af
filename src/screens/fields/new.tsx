/** Adding a field: its name is enough, and even that can come later. */
import { useState } from "preact/hooks";
import { fromHere } from "../parts/from-here.ts";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey, WriteLine } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { fieldsNamed } from "../parts/same-name.ts";
import { Brought, Typed, useForget, useKeeping, useTyped } from "../parts/typed.tsx";
import { todaysVisit } from "../parts/visits.ts";
import { type FarmChoice, Farms, farmChoice } from "./farms.tsx";
import { addField } from "./model.ts";
import "./fields.css";
import { useWordsOf } from "../parts/words-of.ts";
import { FIELD_WORDS } from "./words.ts";

export const NewFieldScreen = () => (
  <Typed form="field">
    <Form />
  </Typed>
);

const Form = () => {
  const house = useHouse();
  const words = useWordsOf(FIELD_WORDS).fields;
  const [name, setName] = useTyped("name", "");
  const [choice, setChoice] = useTyped<FarmChoice>("farm", farmChoice(null));
  const forget = useForget();
  const keeping = useKeeping();
  const [busy, setBusy] = useState(false);
  const farms = useLive(() => house.records.list({ kind: "farm" }), []);
  const keep = async (thenMeasure: boolean) => {
    if (busy) return;
    const goInstead = fromHere(house.goInstead);
    setBusy(true);
    const field = await keeping(() => addField(house, name, choice));
    // It is on record, whatever becomes of its visit.
    if (field !== null) forget();
    const visit = field !== null && thenMeasure ? await todaysVisit(house, [field]) : null;
    setBusy(false);
    if (visit !== null) goInstead({ at: "visit", visit });
    else if (field !== null) goInstead({ at: "fields" });
  };
  return (
    <Page
      title={words.newTitle}
      back={href({ at: "fields" })}
      area="fields"
      foot={
        <div class="keys two">
          <Key
            onPress={() => {
              if (name.trim() !== "") void keep(false);
              else {
                forget();
                house.go({ at: "fields" });
              }
            }}
            off={busy}
          >
            {words.backToList}
          </Key>
          <Key look="solid" onPress={() => void keep(true)} off={busy}>
            {words.measureHere}
          </Key>
        </div>
      }
    >
      <Brought />
      <WriteLine label={words.name} hint={words.keptHint} value={name} onWrite={setName} />
      <HereAlready name={name} />
      {farms === undefined ? null : <Farms farms={farms} choice={choice} onChoose={setChoice} />}
    </Page>
  );
};

/** Fields that are called so already: one may be about to add the same field a second time. */
const HereAlready = (props: { readonly name: string }) => {
  const { records } = useHouse();
  const says = useWordsOf(FIELD_WORDS).fields;
  const named = useLive(
    async () => (props.name.trim() === "" ? [] : fieldsNamed(records, props.name, null)),
    [props.name],
  );
  return (
    <div class="keys here-already">
      {(named ?? []).map(({ field, farm }) => (
        <LinkKey key={field.id} to={href({ at: "field", field: field.id })} look="straw">
          {says.hereAlready(field.body.name, farm?.body.name ?? null)}
        </LinkKey>
      ))}
    </div>
  );
};
