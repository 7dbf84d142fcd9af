/** What stands in the picture: which number, of which two places, with which photos. */
import type { RecordId } from "../../../record/ids.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice } from "../../parts/keys.tsx";
import { Picture } from "../../parts/photos/picture.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { captionOf } from "./content.ts";
import { type Chosen, MOST_PHOTOS, type PictureNow, type Second } from "./model.ts";
import { PICTURE_WORDS } from "./words.ts";
import "../../parts/photos/photos.css";

/** Photos offered; more would keep an old phone busy. */
const MOST_OFFERED = 12;

export const Choices = (props: {
  readonly now: PictureNow;
  readonly chosen: Chosen;
  readonly onChoose: (chosen: Chosen) => void;
}) => {
  const catalogue = useHouse().words.value;
  const words = useWordsOf(PICTURE_WORDS);
  const { now, chosen, onChoose } = props;
  const [first] = now.halves;
  const firstId = first === undefined || first.of === "old-grass" ? null : first.of.id;
  const strips = now.able.map(({ id, strip }) => ({ value: id, label: nameWithFate(catalogue, strip) }));
  const seconds: readonly { readonly value: Second; readonly label: string }[] = [
    ...strips.filter(({ value }) => value !== firstId),
    ...(now.hasGrass ? [{ value: "old-grass" as const, label: words.grass }] : []),
    { value: "none", label: words.nothing },
  ];
  return (
    <section class="ruled">
      <h2>{words.choose}</h2>
      {now.measures.length < 2 ? null : (
        <Choice
          question={words.measure}
          options={now.measures.map((one) => ({ value: one, label: words.measures[one] }))}
          chosen={now.measure}
          onChoose={(measure) => onChoose({ ...chosen, measure })}
        />
      )}
      {strips.length < 2 ? null : (
        <Choice
          question={words.first}
          options={strips}
          chosen={firstId}
          onChoose={(strip) => onChoose({ ...chosen, first: strip })}
        />
      )}
      {seconds.length < 2 ? null : (
        <Choice
          question={words.second}
          options={seconds}
          chosen={now.second}
          onChoose={(second) => onChoose({ ...chosen, second })}
        />
      )}
      <Photos now={now} onChoose={(photos) => onChoose({ ...chosen, photos })} />
    </section>
  );
};

const Photos = (props: {
  readonly now: PictureNow;
  readonly onChoose: (photos: readonly RecordId<"photo">[]) => void;
}) => {
  const catalogue = useHouse().words.value;
  const words = useWordsOf(PICTURE_WORDS);
  const { now } = props;
  const offered = now.day.photos.slice(-MOST_OFFERED);
  const inIt = now.photos.map(({ id }) => id);
  // A third one takes the place of the one chosen longest ago.
  const toggle = (id: RecordId<"photo">): void =>
    props.onChoose(inIt.includes(id) ? inIt.filter((one) => one !== id) : [...inIt, id].slice(-MOST_PHOTOS));
  return (
    <fieldset>
      <legend class="question">{words.photos}</legend>
      {offered.length === 0 ? <p>{words.noPhotos}</p> : null}
      <div class="ticks column">
        {offered.map((photo) => {
          return (
            <label class="tick photo-tick" key={photo.id}>
              <input type="checkbox" checked={inIt.includes(photo.id)} onChange={() => toggle(photo.id)} />
              <span>{captionOf(now, photo, catalogue, words)}</span>
              <Picture photo={photo} alt="" />
            </label>
          );
        })}
      </div>
    </fieldset>
  );
};
