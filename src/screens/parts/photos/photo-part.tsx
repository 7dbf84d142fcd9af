/** The photos of one test on its sheet, with the keys to take more. */
import type { RecordId } from "../../../record/ids.ts";
import { useWordsOf } from "../words-of.ts";
import { PhotoKey } from "./photo-key.tsx";
import { Photos } from "./photos.tsx";
import { PHOTO_WORDS } from "./words.ts";

export const PhotoPart = (props: { readonly of: RecordId }) => (
  <section class="ruled">
    <h2>{useWordsOf(PHOTO_WORDS).photos.title}</h2>
    <Photos of={props.of} />
    <PhotoKey of={props.of} />
  </section>
);
