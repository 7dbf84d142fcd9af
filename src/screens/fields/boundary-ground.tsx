/** The ground of a field on its page: the map above, its area, and the way to its boundary. */
import { useMemo } from "preact/hooks";
import { getMeta } from "../../store/meta.ts";
import { useHouse } from "../parts/house.ts";
import { LinkKey } from "../parts/keys.tsx";
import { lengthWords } from "../parts/lengths.ts";
import { useLive } from "../parts/live.ts";
import { FieldMap, useOnField } from "../parts/map/field-map.tsx";
import { hasPlaces } from "../parts/map/field-things.ts";
import { NotRead } from "../parts/not-read.tsx";
import { href } from "../parts/route.ts";
import type { SameField } from "../parts/same-field.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { cornersOf, draftKey } from "./boundary-draft.ts";
import { sizeOf } from "./boundary-model.ts";
import { BOUNDARY_WORDS } from "./words.boundary.ts";

export const FieldGround = ({ same }: { readonly same: SameField }) => {
  const { records, settings } = useHouse();
  const says = useWordsOf(BOUNDARY_WORDS);
  const { habits } = settings.value;
  const { id, body } = same.field;
  const begun = useLive(async () => {
    const draft = await getMeta(records.connection, draftKey(id));
    return draft.ok && draft.value !== undefined ? cornersOf(draft.value).length : null;
  }, [id]);
  const on = useOnField(id, null);
  const mapped = useLive(() => hasPlaces(records, same), [same]);
  const read = mapped !== undefined && begun !== undefined;
  const size = useMemo(() => (body.boundary === null ? null : sizeOf(body.boundary)), [body.boundary]);
  return (
    <section class="field-ground">
      {read ? <FieldMap field={id} visit={null} on={on} expected={mapped} /> : <NotRead />}
      {size === null ? null : (
        <p>
          <b>
            {says.area(
              lengthWords("area", size.areaM2, habits),
              lengthWords("distance", size.perimeterM, habits),
            )}
          </b>
        </p>
      )}
      <div class="after-writing">
        <LinkKey to={href({ at: "boundary", field: id })} look={(begun ?? 0) > 0 ? "straw" : "plain"}>
          {(begun ?? 0) > 0 ? says.goOn(begun ?? 0) : body.boundary === null ? says.make : says.changeIt}
        </LinkKey>
      </div>
    </section>
  );
};
