/** The page of a field: its strips, what was found on them, its visits and lines. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { DemoNote } from "../demo/demo-note.tsx";
import { AskOnce } from "../parts/ask-once.tsx";
import { fromHere } from "../parts/from-here.ts";
import { type House, useHouse } from "../parts/house.ts";
import { Key, WriteLine } from "../parts/keys.tsx";
import { useLastShown } from "../parts/last-shown.ts";
import { lazyPart } from "../parts/lazy-part.tsx";
import { useLive } from "../parts/live.ts";
import { fieldName } from "../parts/names.ts";
import { useOnce } from "../parts/once.ts";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { Brought, Typed, useForget, useKeeping, useTyped } from "../parts/typed.tsx";
import { typedHere } from "../parts/typed-store.ts";
import { todaysVisit } from "../parts/visits.ts";
import { FieldGround } from "./boundary-ground.tsx";
import { type CoverNow, readCover } from "./cover-model.ts";
import { Details } from "./details.tsx";
import { type FarmChoice, Farms, farmChoice } from "./farms.tsx";
import { LINES_AT_ONCE, Lines, Unfinished } from "./lines.tsx";
import { correctField, type FieldNow, readField, remove } from "./model.ts";
import { Places } from "./places.tsx";
import { SameThing } from "./same-strips.tsx";
import { Strips } from "./strips.tsx";
import { FieldTimeline } from "./timeline.tsx";
import { FieldYears } from "./years.tsx";
import "./fields.css";
import { useWordsWith } from "../parts/words-of.ts";
import { FIELD_WORDS } from "./words.ts";

const FieldPhotos = lazyPart(async () => (await import("../parts/photos/together.tsx")).FieldPhotos);

export const FieldScreen = (props: { readonly field: RecordId<"field"> }) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const settings = house.settings.value;
  const [busy, once] = useOnce();
  const [most, setMost] = useState(LINES_AT_ONCE);
  const now = useLastShown(useLive(() => readField(house.records, props.field, most), [props.field, most]));
  const ids = now?.same.ids.join(" ") ?? "";
  // The results come by themselves: the page does not wait for them.
  const found = useLive<CoverNow | undefined>(
    async (meanwhile) =>
      now === undefined || now === null ? undefined : readCover(house, settings, now.same.ids, meanwhile),
    [ids, settings],
  );
  // What was left undone is not said by results that may not know that it was done since.
  const sure = found?.upToDate === true ? found : undefined;
  const back = href({ at: "fields" });
  if (now === undefined || now === null || now.same.field.deleted)
    return (
      <Page
        title={now === undefined ? "\u00a0" : now === null ? words.fields.gone : words.fields.deleted}
        back={back}
        area="fields"
      >
        {null}
      </Page>
    );
  return (
    <Page
      title={fieldName(words, now.same.field)}
      under={now.farm?.body.name}
      back={back}
      area="fields"
      foot={
        <Key look="solid" off={busy} onPress={() => once(() => measureToday(house, now))}>
          {words.fields.measureToday}
        </Key>
      }
    >
      <DemoNote id={now.same.field.id} />
      <FieldGround same={now.same} />
      <Strips now={now} found={found} />
      <FieldYears fields={now.same.ids} />
      <FieldTimeline field={now.same.field.id} />
      <FieldPhotos fields={now.same.ids} />
      <Lines now={now} found={sure} onMore={() => setMost(most + LINES_AT_ONCE)} />
      <Unfinished found={sure} />
      <Details same={now.same} />
      <Places same={now.same} />
      <SameThing now={now} />
      <section class="ruled keys last-keys">
        <Correct now={now} />
        <AskOnce
          label={words.fields.delete}
          question={words.fields.deleteAsk}
          hint={words.fields.deleteHint}
          yes={words.fields.deleteYes}
          onYes={async () => {
            const goInstead = fromHere(house.goInstead);
            // All that are the same go together: one left behind would stand in the list without its name.
            const living = await house.records.many(now.same.ids);
            const ids = living.filter(({ deleted }) => !deleted).map(({ id }) => id);
            if (await remove(house, ids)) goInstead({ at: "fields" });
          }}
        />
      </section>
    </Page>
  );
};

const measureToday = async (house: House, now: FieldNow): Promise<void> => {
  const go = fromHere(house.go);
  const visit = await todaysVisit(house, now.same.ids);
  if (visit !== null) go({ at: "visit", visit });
};

/** Name and farm can be corrected at any time. */
const Correct = ({ now }: { readonly now: FieldNow }) => {
  const words = useWordsWith(FIELD_WORDS);
  const [open, setOpen] = useState(() => typedHere(NAME_FORM).length > 0);
  if (!open) return <Key onPress={() => setOpen(true)}>{words.fields.correct}</Key>;
  return (
    <Typed form={NAME_FORM}>
      <NameAndFarm now={now} onClose={() => setOpen(false)} />
    </Typed>
  );
};

const NAME_FORM = "name and farm";

const NameAndFarm = ({ now, onClose }: { readonly now: FieldNow; readonly onClose: () => void }) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const { id, body } = now.same.field;
  const [name, setName] = useTyped("name", body.name);
  const [choice, setChoice] = useTyped<FarmChoice>("farm", farmChoice(body.farm));
  const forget = useForget();
  const keeping = useKeeping();
  const close = () => {
    forget();
    onClose();
  };
  return (
    <div>
      <Brought />
      <WriteLine label={words.fields.name} value={name} onWrite={setName} />
      <Farms farms={now.farms} choice={choice} onChoose={setChoice} />
      <div class="keys two after-writing">
        <Key onPress={close}>{words.common.close}</Key>
        <Key
          look="solid"
          onPress={() =>
            void keeping(() => correctField(house, id, name, choice)).then((done) => done && close())
          }
        >
          {words.common.done}
        </Key>
      </div>
    </div>
  );
};
