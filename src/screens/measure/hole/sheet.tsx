/** The sheet of one hole: worms per hole, then per m²; where they were found, who they are, what was touched. */

import { useState } from "preact/hooks";
import { LAYERS, WORM_GROUPS } from "../../../record/hole/entries.ts";
import type { RecordId } from "../../../record/ids.ts";
import { sentenceFor } from "../../catalogue.ts";
import { DemoNote } from "../../demo/demo-note.tsx";
import { MethodList } from "../../findings/method-list.tsx";
import { SENTENCES } from "../../findings/sentences.ts";
import { AskOnce } from "../../parts/ask-once.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { Page } from "../../parts/page.tsx";
import { PhotoPart } from "../../parts/photos/photo-part.tsx";
import { href } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { holeHeading } from "./holes-of-day.ts";
import { TheHole } from "./sheet-hole.tsx";
import { type HoleSheet, readHoleSheet } from "./sheet-model.ts";
import { Raw } from "./sheet-raw.tsx";
import { sidesWords, sizeWords } from "./sizes.ts";
import { HOLE_WORDS } from "./words.ts";
import "./hole.css";

export const HoleSheetScreen = (props: { readonly hole: RecordId<"observation"> }) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const sheet = useLive(() => readHoleSheet(house, props.hole), [props.hole]);
  const heading = useLive(() => holeHeading(house, words, props.hole), [props.hole, words]);
  if (sheet === undefined || (sheet !== null && heading === undefined))
    return <div class="frame" aria-busy="true" />;
  if (sheet === null || sheet.deleted)
    return (
      <Page title={words.sheetTitle} back={href({ at: "measure" })} area="measure">
        <p class="question">{sheet === null ? words.gone : words.deleted}</p>
      </Page>
    );
  const { hole } = sheet;
  const { visit, number } = hole.header;
  const again = href({ at: "hole", hole: hole.id });
  return (
    <Page
      title={heading?.title ?? ""}
      under={heading?.under}
      end={words.title(number)}
      back={href({ at: "visit", visit })}
      area="measure"
      foot={
        hole.reading.finished ? (
          <div class="keys two">
            <LinkKey to={href({ at: "visit", visit })}>{words.sheets.today}</LinkKey>
            <LinkKey to={href({ at: "hole-new", visit })} look="solid">
              {words.next}
            </LinkKey>
          </div>
        ) : (
          <LinkKey to={again} look="solid">
            {words.reopen}
          </LinkKey>
        )
      }
    >
      <DemoNote id={hole.header.field} />
      <Figure sheet={sheet} />
      <Cautions sheet={sheet} />
      <Found sheet={sheet} />
      <Placed sheet={sheet} />
      <TheHole sheet={sheet} />
      <PhotoPart of={hole.id} />
      <Raw sheet={sheet} />
      <WorkedOut sheet={sheet} />
      <section class="ruled keys">
        <LinkKey to={again}>{words.sheets.correct}</LinkKey>
        <AskOnce
          label={words.sheets.delete}
          question={words.sheets.deleteAsk}
          hint={words.sheets.deleteHint}
          yes={house.words.value.common.delete}
          onYes={async () => {
            const goInstead = fromHere(house.goInstead);
            const written = await house.write(house.pen.remove(hole.id));
            if (written.ok) goInstead({ at: "visit", visit });
            else house.tell(written.problem);
          }}
        />
      </section>
    </Page>
  );
};

type Part = { readonly sheet: HoleSheet };

const Figure = ({ sheet }: Part) => {
  const { habits } = useHouse().settings.value;
  const words = useWordsOf(HOLE_WORDS);
  const { perHole, perM2, hole, count, guess } = sheet;
  if (!perHole.ok)
    return <p class="question">{hole.reading.settled ? words.sheets.nothing : words.sheets.inDoubt}</p>;
  return (
    <section class="hole-figure">
      <h2 class="out-of-sight">{words.sheetTitle}</h2>
      <div class="figure">
        <p class="big">{writeNumber(perHole.value.value, TONGUE)}</p>
        <p>
          {words.sheets.perHole}
          <br />
          {perM2.ok ? (
            <b>
              {words.sheets.perM2(writeNumber(perM2.value.value, TONGUE))},{" "}
              {words.sheets.perM2Area(sidesWords(words, count.sidesM, habits))}
            </b>
          ) : null}
        </p>
      </div>
      {guess === null ? null : <p>{words.sheets.guess(writeNumber(guess, TONGUE, 1))}</p>}
      <p class="aside">{hole.reading.finished ? words.sheets.oneHole : words.sheets.notFinished}</p>
    </section>
  );
};

const Cautions = ({ sheet }: Part) => {
  const house = useHouse();
  const sentences = useWordsOf(SENTENCES);
  const words = useWordsOf(HOLE_WORDS);
  const { perHole, hole } = sheet;
  const cautions = [...hole.reading.cautions, ...(perHole.ok ? perHole.value.cautions : [])];
  if (cautions.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.sheets.cautions}</h2>
      {cautions.map((caution) => (
        <p class="hole-caution" key={caution.code}>
          {sentenceFor(house.words.value, caution, sentences)}
        </p>
      ))}
    </section>
  );
};

const Found = ({ sheet }: Part) => {
  const words = useWordsOf(HOLE_WORDS);
  const { found } = sheet.hole.reading;
  return (
    <section class="ruled">
      <h2>{words.sheets.found}</h2>
      <table class="figures">
        <tbody>
          {LAYERS.map((layer) => (
            <tr key={layer}>
              <th scope="row">{words.layer[layer]}</th>
              <td class="number">
                {found[layer].inDoubt.length > 0
                  ? "?"
                  : found[layer].looked
                    ? writeNumber(found[layer].count, TONGUE)
                    : words.sheets.notLooked}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

const Placed = ({ sheet }: Part) => {
  const words = useWordsOf(HOLE_WORDS);
  const { placed, placedTotal, foundTotal, left } = sheet.hole.reading;
  const grown = placedTotal - placed.young.count;
  if (foundTotal === 0 && placedTotal === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.sheets.placed}</h2>
      {placedTotal === 0 ? (
        <p>{words.sheets.totalAlone}</p>
      ) : (
        <>
          <table class="figures">
            <tbody>
              {WORM_GROUPS.map((group) => (
                <tr key={group}>
                  <th scope="row">{words.sheets.kind[group]}</th>
                  <td class="number">{writeNumber(placed[group].count, TONGUE)}</td>
                </tr>
              ))}
              {left === 0 ? null : (
                <tr>
                  <th scope="row">{words.sheets.notPlaced}</th>
                  <td class="number">{writeNumber(left, TONGUE)}</td>
                </tr>
              )}
            </tbody>
          </table>
          {grown === 0 ? <p>{words.sheets.notDetermined}</p> : null}
        </>
      )}
    </section>
  );
};

const WorkedOut = ({ sheet }: Part) => {
  const { habits } = useHouse().settings.value;
  const words = useWordsOf(HOLE_WORDS);
  const [open, setOpen] = useState(false);
  const { perM2, perHole, areaM2, count } = sheet;
  if (!perHole.ok) return null;
  const worked = perM2.ok ? perM2.value : perHole.value;
  return (
    <section class="ruled">
      <h2>{words.sheets.workedOut}</h2>
      {perM2.ok && areaM2.ok ? (
        <p>
          {words.sheets.readings(
            perHole.value.value,
            sizeWords(words, count, habits),
            writeNumber(areaM2.value, TONGUE, 4),
            writeNumber(perM2.value.value, TONGUE),
          )}
        </p>
      ) : null}
      {open ? (
        <MethodList methods={worked.methods} sources={worked.sources} />
      ) : (
        <Key onPress={() => setOpen(true)}>{words.sheets.formulas}</Key>
      )}
    </section>
  );
};
