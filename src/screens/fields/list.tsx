/** The fields that are looked after, by farm. */
import { useState } from "preact/hooks";
import { DemoNote } from "../demo/demo-note.tsx";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { fieldName } from "../parts/names.ts";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { useAboutField } from "./about-field.ts";
import { FarmHeading } from "./farms.tsx";
import { type FarmFields, readFields } from "./model.ts";
import "./fields.css";
import { useWordsWith } from "../parts/words-of.ts";
import { FIELD_WORDS } from "./words.ts";

/** Fields shown before "show more". */
const AT_ONCE = 50;

export const FieldsScreen = () => {
  const { records } = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const farms = useLive(() => readFields(records), []);
  return (
    <Page
      title={words.fields.title}
      area="fields"
      foot={
        <LinkKey to={href({ at: "field-new" })} look="solid">
          {words.fields.add}
        </LinkKey>
      }
    >
      {farms === undefined ? null : farms.length === 0 ? (
        <h2>{words.fields.none}</h2>
      ) : (
        <Farms farms={farms} />
      )}
    </Page>
  );
};

/** The first so many fields, farm by farm. */
const upTo = (farms: readonly FarmFields[], most: number): readonly FarmFields[] => {
  let left = most;
  return farms.flatMap((one) => {
    const fields = one.fields.slice(0, left);
    left -= fields.length;
    return fields.length === 0 ? [] : [{ ...one, fields }];
  });
};

const Farms = ({ farms }: { readonly farms: readonly FarmFields[] }) => {
  const words = useWordsWith(FIELD_WORDS);
  const about = useAboutField();
  const [most, setMost] = useState(AT_ONCE);
  const hidden = farms.reduce((sum, { fields }) => sum + fields.length, 0) - most;
  return (
    <>
      {upTo(farms, most).map(({ farm, fields }) => (
        <section key={farm?.id ?? "none"}>
          {farm === undefined ? <h2>{words.fields.noFarm}</h2> : <FarmHeading farm={farm} />}
          <DemoNote id={farm?.id} />
          <ul class="rows">
            {fields.map((one) => (
              <li key={one.same.field.id}>
                <a class="row" href={href({ at: "field", field: one.same.field.id })}>
                  <span>
                    <b>{fieldName(words, one.same.field)}</b>
                    <small>{about(one)}</small>
                  </span>
                </a>
              </li>
            ))}
          </ul>
        </section>
      ))}
      {hidden > 0 ? (
        <Key onPress={() => setMost(most + AT_ONCE)}>{words.fields.more(Math.min(hidden, AT_ONCE))}</Key>
      ) : null}
    </>
  );
};
