/** Photos of a whole field or of a whole day: beside each stands what it is of. */
import type { RecordId } from "../../../record/ids.ts";
import { concerns } from "../concerns.ts";
import { useHouse } from "../house.ts";
import { useLastShown } from "../last-shown.ts";
import { useLive } from "../live.ts";
import { stripName } from "../names.ts";
import type { Listed, Reader } from "../reader.ts";
import { useWordsOf } from "../words-of.ts";
import { readFieldPhotos } from "./model.ts";
import { PhotoKey } from "./photo-key.tsx";
import { PhotoRows } from "./photos.tsx";
import { PHOTO_WORDS } from "./words.ts";

/** What photos are of, with the strips that it lies on. */
const readOf = async (records: Reader, of: readonly RecordId[]): Promise<ReadonlyMap<RecordId, Listed>> => {
  const taken = await records.many(of);
  const strips = taken.flatMap(({ row }) => (row.keys.strip === undefined ? [] : [row.keys.strip]));
  const lie = await records.many([...new Set(strips)] as RecordId<"strip">[]);
  return new Map([...taken, ...lie].map((one) => [one.id, one] as const));
};

const useCaptions = (photos: readonly Listed<"photo">[]): ((photo: Listed<"photo">) => string) => {
  const { records, words: catalogue } = useHouse();
  const { of: words } = useWordsOf(PHOTO_WORDS).photos;
  const ids = [...new Set(photos.map(({ body }) => body.of))];
  const known = useLastShown(useLive(() => readOf(records, ids), [ids.join(" ")]));
  return ({ body }) => {
    const of = known?.get(body.of)?.body;
    if (of === undefined) return "";
    if ("oldGrass" in of) return words.spot(of.name);
    if (!("type" in of && "visit" in of)) return "";
    if (of.type === "note") return of.text === "" ? words.note : of.text;
    return words[of.type](stripName(catalogue.value, known?.get(of.strip) as Listed<"strip"> | undefined));
  };
};

/** The photos of a day; nothing at all while there are none. */
export const DayPhotos = (props: { readonly photos: readonly Listed<"photo">[] }) => {
  const words = useWordsOf(PHOTO_WORDS).photos;
  const captionOf = useCaptions(props.photos);
  if (props.photos.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.title}</h2>
      <PhotoRows photos={props.photos} captionOf={captionOf} />
    </section>
  );
};

/** All photos of a field, the newest first, and the keys to take one of the field itself. */
export const FieldPhotos = (props: {
  /** The field, then all that are the same. */
  readonly fields: readonly RecordId<"field">[];
}) => {
  const { records } = useHouse();
  const words = useWordsOf(PHOTO_WORDS).photos;
  const { fields } = props;
  const photos = useLastShown(
    useLive(() => readFieldPhotos(records, fields), [fields.join(" ")], concerns("photo")),
  );
  const captionOf = useCaptions(photos ?? []);
  const [field] = fields;
  if (field === undefined) return null;
  return (
    <section class="ruled">
      <h2>{words.title}</h2>
      {photos?.length === 0 ? <p>{words.none}</p> : null}
      <PhotoRows photos={photos ?? []} captionOf={captionOf} />
      <PhotoKey of={field} />
    </section>
  );
};
