/** The map of a field as a screen of its own. */
import type { RecordId } from "../../../record/ids.ts";
import { DemoNote } from "../../demo/demo-note.tsx";
import { FIELD_WORDS } from "../../fields/words.ts";
import { useHouse } from "../house.ts";
import { useLive } from "../live.ts";
import { fieldName } from "../names.ts";
import { Page } from "../page.tsx";
import { href } from "../route.ts";
import { sameField } from "../same-field.ts";
import { useWordsOf, useWordsWith } from "../words-of.ts";
import { FieldMap, useOnField } from "./field-map.tsx";
import { MAP_WORDS } from "./words.ts";

export const MapScreen = (props: {
  readonly field: RecordId<"field">;
  readonly visit: RecordId<"visit"> | null;
}) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const map = useWordsOf(MAP_WORDS);
  const { field, visit } = props;
  const on = useOnField(field, visit);
  const same = useLive(async () => (await sameField(house.records, field)) ?? null, [field]);
  return (
    <Page
      title={same === null ? words.fields.gone : map.title}
      under={same === undefined || same === null ? undefined : fieldName(words, same.field)}
      back={visit === null ? href({ at: "field", field }) : href({ at: "visit", visit })}
      area={visit === null ? "fields" : "measure"}
    >
      {same === undefined || same === null ? null : (
        <>
          <DemoNote id={same.field.id} />
          <FieldMap field={field} visit={visit} on={on} whole />
        </>
      )}
    </Page>
  );
};
