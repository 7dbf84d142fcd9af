/** The specialist's sheet of one ring: every reading, how it stood, what it says, and how it was worked out. */

import type { RecordId } from "../../../record/ids.ts";
import { DemoNote } from "../../demo/demo-note.tsx";
import { MethodList } from "../../findings/method-list.tsx";
import { SENTENCES } from "../../findings/sentences.ts";
import { AskOnce } from "../../parts/ask-once.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { groundName } from "../../parts/ground-name.ts";
import { useHouse } from "../../parts/house.ts";
import { LinkKey } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { fieldName } from "../../parts/names.ts";
import { ownSentence } from "../../parts/own-units.ts";
import { Page } from "../../parts/page.tsx";
import { PhotoPart } from "../../parts/photos/photo-part.tsx";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { Curve } from "./curve.tsx";
import { readRingSheet } from "./sheet-model.ts";
import { SheetHeadline, SheetPours, SheetReadings } from "./sheet-parts.tsx";
import { SheetConditions } from "./sheet-stands.tsx";
import { ForSpecialist } from "./specialist.tsx";
import { RING_WORDS } from "./words.ts";
import "./rings.css";

export const RingSheetScreen = (props: { readonly ring: RecordId<"observation"> }) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(RING_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const sheet = useLive(() => readRingSheet(house, props.ring), [props.ring]);
  if (sheet === undefined) return <div class="frame" aria-busy="true" />;
  if (sheet === null || sheet.ring.deleted)
    return (
      <Page title={words.sheet.title} back={href({ at: "measure" })} area="measure">
        <p class="question">{sheet === null ? words.ring.notHere : words.ring.deleted}</p>
      </Page>
    );
  const { ring, result, cautions } = sheet;
  const { visit } = ring.header;
  const remove = async () => {
    const goInstead = fromHere(house.goInstead);
    const written = await house.write(house.pen.remove(ring.id));
    if (written.ok) goInstead({ at: "rings", visit });
    else house.tell(written.problem);
  };
  return (
    <Page
      title={`${fieldName(catalogue, sheet.field)} · ${groundName(catalogue, ring.strip, ring.spot)}`}
      under={words.board.ringOf(ring.letter)}
      back={href({ at: "ring", ring: ring.id })}
      area="measure"
      foot={
        <div class="keys two">
          <LinkKey to={href({ at: "rings", visit })}>{words.sheet.board}</LinkKey>
          <LinkKey to={href({ at: "ring", ring: ring.id })} look="solid">
            {words.sheet.toRing}
          </LinkKey>
        </div>
      }
    >
      <DemoNote id={ring.header.field} />
      <SheetHeadline sheet={sheet} />
      <section class="ruled">
        <Curve points={result.soaking.ok ? result.soaking.value.curve : []} highPx={220} table />
      </section>
      <section class="ruled">
        <h2>{words.sheet.cautions}</h2>
        {cautions.length === 0 ? <p>{words.sheet.noCautions}</p> : null}
        <ul class="caution-list">
          {cautions.map((caution) => (
            <li key={caution.code}>
              {ownSentence(catalogue, house.settings.value.habits, caution, sentences)}
            </li>
          ))}
        </ul>
      </section>
      <SheetReadings sheet={sheet} />
      <SheetPours sheet={sheet} />
      <SheetConditions sheet={sheet} />
      <PhotoPart of={ring.id} />
      {sheet.methods.length === 0 ? null : (
        <section class="ruled">
          <h2>{words.sheet.workedOut}</h2>
          <MethodList methods={sheet.methods} sources={sheet.sources} />
        </section>
      )}
      <ForSpecialist sheet={sheet} />
      <section class="ruled keys">
        <AskOnce
          label={words.sheet.delete}
          question={words.sheet.delete}
          hint={words.sheet.deleteAsk}
          yes={catalogue.common.delete}
          onYes={remove}
        />
      </section>
    </Page>
  );
};
