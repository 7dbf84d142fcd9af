/** One picture to hand over at the gate: looked at first, then shared or saved; the same in plain words. */
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { DemoNote } from "../../demo/demo-note.tsx";
import { SENTENCES } from "../../findings/sentences.ts";
import { SIDE_WORDS } from "../../findings/side-by-side/words.ts";
import { BESIDE_WORDS } from "../../findings/words.beside.ts";
import { useHouse } from "../../parts/house.ts";
import { LinkKey } from "../../parts/keys.tsx";
import { useLastShown } from "../../parts/last-shown.ts";
import { useLive } from "../../parts/live.ts";
import { fieldName } from "../../parts/names.ts";
import { NotRead } from "../../parts/not-read.tsx";
import { writeDay } from "../../parts/numbers.ts";
import { Page } from "../../parts/page.tsx";
import { href, type Route } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { Choices } from "./choices.tsx";
import { type Content, captionOf, contentOf, fileName, textOf } from "./content.ts";
import { HIGH_PX, WIDE_PX } from "./draw.ts";
import { HandOver } from "./hand-over.tsx";
import { type MadePicture, makePictureFile } from "./make.ts";
import { type Chosen, type PictureNow, pictureOf, readPictureDay } from "./model.ts";
import { PICTURE_WORDS } from "./words.ts";
import "./picture.css";

export const PictureScreen = (props: { readonly visit: RecordId<"visit"> }) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(PICTURE_WORDS);
  const settings = house.settings.value;
  const [chosen, setChosen] = useState<Chosen>({});
  const read = useLastShown(
    useLive(() => readPictureDay(house, settings, props.visit), [props.visit, settings]),
  );
  const now = useMemo(
    () => (read === undefined || read === null ? read : pictureOf(read.day, read.visit, settings, chosen)),
    [read, settings, chosen],
  );
  const under =
    read === undefined || read === null
      ? "\u00a0"
      : `${fieldName(catalogue, read.day.same.field)} · ${writeDay(read.visit.body.day, catalogue.common.tongue)}`;
  return (
    <Page title={words.title} under={under} back={href({ at: "visit", visit: props.visit })} area="send">
      {read === null ? (
        <h2>{words.gone}</h2>
      ) : now === null ? (
        <h2>{words.none}</h2>
      ) : now === undefined ? null : (
        <>
          <DemoNote id={now.day.same.field.id} />
          <Preview now={now} />
          <Choices now={now} chosen={chosen} onChoose={setChosen} />
        </>
      )}
    </Page>
  );
};

type Made = (MadePicture & { readonly address: string }) | "failed" | null;

/** The file of what is to be seen. It is made before the touch that sends it: sharing must follow at once. */
const useMade = (content: Content, photos: Parameters<typeof makePictureFile>[2], name: string): Made => {
  const { records } = useHouse();
  const [made, setMade] = useState<Made>(null);
  const by = `${JSON.stringify(content)} ${photos.map(({ photo, caption }) => `${photo.body.sha256} ${caption}`).join(" ")}`;
  const shown = useRef<string | null>(null);
  // The same words and photos are the same picture, however often the day is read again.
  useEffect(() => {
    let over = false;
    void makePictureFile(records.connection, content, photos, name).then((picture) => {
      if (over) return;
      const before = shown.current;
      shown.current = picture === null ? null : URL.createObjectURL(picture.file);
      setMade(picture === null || shown.current === null ? "failed" : { ...picture, address: shown.current });
      // The one before is let go only now: taken away earlier, the screen would show a broken picture.
      if (before !== null) URL.revokeObjectURL(before);
    });
    return () => {
      over = true;
    };
  }, [records, by, name]);
  useEffect(
    () => () => {
      if (shown.current !== null) URL.revokeObjectURL(shown.current);
    },
    [],
  );
  return made;
};

/** The same two strips side by side. */
const besideRoute = ({ visit, halves }: PictureNow): Route => {
  const of = halves[0]?.of;
  const strip = of === undefined || of === "old-grass" ? null : of.id;
  return { at: "side-by-side", visit: visit.id, strip };
};

const likePicture = new File(["-"], "picture.png", { type: "image/png" });

const Preview = ({ now }: { readonly now: PictureNow }) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(PICTURE_WORDS);
  const side = useWordsOf(SIDE_WORDS);
  const beside = useWordsOf(BESIDE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const { habits } = house.settings.value;
  const content = contentOf(now, { catalogue, picture: words, side, beside, sentences, habits });
  const { day } = now.visit.body;
  const photos = now.photos.map((photo) => ({ photo, caption: captionOf(now, photo, catalogue, words) }));
  const made = useMade(content, photos, fileName(content.field, day, "png"));
  const text = textOf(content);
  const textFile = useMemo(
    () => new File([text], fileName(content.field, day, "txt"), { type: "text/plain" }),
    [text, content.field, day],
  );
  return (
    <>
      <div class="paper-frame" style={{ aspectRatio: `${WIDE_PX} / ${HIGH_PX}` }}>
        {made === null ? (
          <p>{words.making}</p>
        ) : made === "failed" ? (
          <p>{words.failed}</p>
        ) : (
          <img src={made.address} alt={words.alt(text)} width={WIDE_PX} height={HIGH_PX} draggable={false} />
        )}
      </div>
      {now.canLookByPlace ? <LinkKey to={href(besideRoute(now))}>{words.byPlace}</LinkKey> : null}
      {made === null ? <NotRead /> : null}
      {made !== null && made !== "failed" && made.photosLost > 0 ? (
        <p class="notice">{words.photoLost}</p>
      ) : null}
      {made === "failed" ? null : (
        <HandOver
          key={made?.address}
          file={made?.file ?? likePicture}
          waits={made === null}
          share={words.share}
          save={words.save}
          look="straw"
        />
      )}
      <HandOver key={text} file={textFile} share={words.shareWords} save={words.saveWords} look="plain" />
    </>
  );
};
