/** The photos of a record: small ones in rows, each of which opens large. */
import { useState } from "preact/hooks";
import { kindOf, type RecordId } from "../../../record/ids.ts";
import { useHouse } from "../house.ts";
import { Key } from "../keys.tsx";
import { useLastShown } from "../last-shown.ts";
import { useLive } from "../live.ts";
import { dayOf, writeClock, writeDay } from "../numbers.ts";
import type { Listed } from "../reader.ts";
import { useWordsOf } from "../words-of.ts";
import { FullView, useOpenPhoto } from "./full-view.tsx";
import { readPhotos, setDeleted } from "./model.ts";
import { Picture } from "./picture.tsx";
import { PHOTO_WORDS } from "./words.ts";
import "./photos.css";

/** So many at first: each picture that is shown takes memory. */
const AT_ONCE = 12;
/** A caption longer than this is heard to its end by nobody. */
const SPOKEN_LENGTH = 120;

interface PhotosProps {
  /** What the photos are of; several ids for a field that others were joined to. */
  readonly of: RecordId | readonly RecordId[];
  /** The words that the photos belong to, such as a note's. */
  readonly caption?: string;
  /** A photo was deleted, or brought back by the key under the photos. */
  readonly onDeleted?: (photo: RecordId<"photo">, deleted: boolean) => void;
}

/** Photos of a record; nothing at all while there are none. */
export const Photos = ({ of, caption = "", onDeleted }: PhotosProps) => {
  const house = useHouse();
  const { photos: words } = useWordsOf(PHOTO_WORDS);
  const { tongue, undo } = house.words.value.common;
  const ids = typeof of === "string" ? [of] : of;
  const [most, setMost] = useState(AT_ONCE);
  const [gone, setGone] = useState<RecordId<"photo"> | null>(null);
  const { open, show, close } = useOpenPhoto();
  const all = useLastShown(
    useLive(
      () => readPhotos(house.records, ids),
      [ids.join(" ")],
      (changed) => changed === "everything" || changed.some((id) => kindOf(id) === "photo"),
    ),
  );
  if (all === undefined) return null;
  const taken = ({ body }: Listed<"photo">): string =>
    words.taken(writeDay(dayOf(body.takenAtMs), tongue), writeClock(body.takenAtMs, tongue));
  const alt = (photo: Listed<"photo">): string => {
    const named = words.alt(all.indexOf(photo) + 1, all.length, taken(photo));
    return caption === "" ? named : `${named}: ${caption.slice(0, SPOKEN_LENGTH)}`;
  };
  const opened = all.find(({ id }) => id === open);
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
            <button type="button" class="photo" onClick={() => show(photo.id)}>
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
          caption={caption}
          taken={taken(opened)}
          onClose={close}
          onDelete={() => remove(opened.id)}
        />
      )}
    </div>
  );
};
