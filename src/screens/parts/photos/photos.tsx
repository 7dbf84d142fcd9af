/** The photos of a record: small ones in rows, each of which opens large. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { concerns } from "../concerns.ts";
import { useHouse } from "../house.ts";
import { Key } from "../keys.tsx";
import { useLastShown } from "../last-shown.ts";
import { useLive } from "../live.ts";
import { dayOf, writeClock, writeDay } from "../numbers.ts";
import type { Listed } from "../reader.ts";
import { useWordsOf } from "../words-of.ts";
import { FullView } from "./full-view.tsx";
import { readPhotos, setDeleted } from "./model.ts";
import { useOpenPhoto } from "./open-photo.ts";
import { Picture } from "./picture.tsx";
import { PHOTO_WORDS } from "./words.ts";
import "./photos.css";

/** So many at first: each picture that is shown takes memory. */
const AT_ONCE = 12;
/** A caption longer than this is heard to its end by nobody. */
const SPOKEN_LENGTH = 120;

type OnDeleted = (photo: RecordId<"photo">, deleted: boolean) => void;

interface PhotosProps {
  readonly of: RecordId;
  /** The words that the photos belong to, such as a note's. */
  readonly caption?: string;
  /** A photo was deleted, or brought back by the key under the photos. */
  readonly onDeleted?: OnDeleted;
}

/** Photos of a record; nothing at all while there are none. */
export const Photos = ({ of, caption = "", onDeleted }: PhotosProps) => {
  const { records } = useHouse();
  const all = useLastShown(useLive(() => readPhotos(records, [of]), [of], concerns("photo")));
  if (all === undefined) return null;
  return (
    <PhotoRows photos={all} captionOf={() => caption} {...(onDeleted === undefined ? {} : { onDeleted })} />
  );
};

/** Photos in rows, in the order given; nothing at all while there are none. */
export const PhotoRows = (props: {
  readonly photos: readonly Listed<"photo">[];
  readonly captionOf: (photo: Listed<"photo">) => string;
  readonly onDeleted?: OnDeleted;
}) => {
  const house = useHouse();
  const { photos: words } = useWordsOf(PHOTO_WORDS);
  const { tongue, undo } = house.words.value.common;
  const { photos: all, captionOf, onDeleted } = props;
  const [most, setMost] = useState(AT_ONCE);
  const [gone, setGone] = useState<RecordId<"photo"> | null>(null);
  const open = useOpenPhoto();
  const taken = ({ body }: Listed<"photo">): string =>
    words.taken(writeDay(dayOf(body.takenAtMs), tongue), writeClock(body.takenAtMs, tongue));
  const alt = (photo: Listed<"photo">): string => {
    const named = words.alt(all.indexOf(photo) + 1, all.length, taken(photo));
    const caption = captionOf(photo);
    return caption === "" ? named : `${named}: ${caption.slice(0, SPOKEN_LENGTH)}`;
  };
  const opened = all.find(({ id }) => id === open.value);
  const close = () => {
    open.value = null;
  };
  const remove = async (id: RecordId<"photo">) => {
    if (!(await setDeleted(house, id, true))) return;
    setGone(id);
    close();
    onDeleted?.(id, true);
  };
  const bringBack = async (id: RecordId<"photo">) => {
    if (!(await setDeleted(house, id, false))) return;
    setGone(null);
    house.say(words.back);
    onDeleted?.(id, false);
  };
  if (all.length === 0 && gone === null) return null;
  return (
    <div class="photos">
      <ul class="photo-rows" aria-label={words.title}>
        {all.slice(0, most).map((photo) => (
          <li key={photo.id}>
            <button
              type="button"
              class="photo"
              onClick={() => {
                open.value = photo.id;
              }}
            >
              <Picture photo={photo} alt={alt(photo)} />
            </button>
          </li>
        ))}
      </ul>
      {all.length > most ? (
        <Key onPress={() => setMost(most + AT_ONCE)}>{words.more(all.length - most)}</Key>
      ) : null}
      {gone === null ? null : (
        <div class="photo-gone">
          <p role="status">{words.deleted}</p>
          <Key onPress={() => void bringBack(gone)}>{undo}</Key>
        </div>
      )}
      {opened === undefined ? null : (
        <FullView
          key={opened.id}
          photo={opened}
          alt={alt(opened)}
          caption={captionOf(opened)}
          taken={taken(opened)}
          onClose={close}
          onDelete={() => remove(opened.id)}
        />
      )}
    </div>
  );
};
