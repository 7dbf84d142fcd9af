/** Two or three fields that one may be standing at. They are offered; nothing opens by itself. */
import type { RecordId } from "../../../record/ids.ts";
import { FIELD_NEAR_M } from "../../../science/constants/plans.ts";
import { WorkedOutLater } from "../../findings/worked-out-later.tsx";
import { accuracyWords } from "../../parts/accuracy.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useLastShown } from "../../parts/last-shown.ts";
import { lengthWords } from "../../parts/lengths.ts";
import { useLive } from "../../parts/live.ts";
import { useHere } from "../../parts/map/here.ts";
import { goneBy } from "../../parts/map/words.ts";
import { fieldName } from "../../parts/names.ts";
import { farWords } from "../../parts/own-units.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type NearNow, readNear } from "./near-model.ts";
import { NEAR_WORDS } from "./words.near.ts";

/** Metres beyond which a position hardly tells one field from the next (own choice, no source). */
const COARSE_M = 100;
/** The fields are looked for anew about every 11 metres of a walk (own choice, no source). */
const PLACES_DECIMALS = 4;

export const NearHere = (props: { readonly onChoose: (fields: readonly RecordId<"field">[]) => void }) => {
  const house = useHouse();
  const words = house.words.value;
  const says = useWordsOf(NEAR_WORDS);
  const { habits } = house.settings.value;
  const here = useHere(true, true);
  const { fix, oldForMs, why } = here;
  const known = fix !== null && oldForMs === null ? fix : null;
  const about =
    known === null
      ? null
      : `${known.latitudeDeg.toFixed(PLACES_DECIMALS)} ${known.longitudeDeg.toFixed(PLACES_DECIMALS)}`;
  const found = useLastShown(
    useLive(async () => (known === null ? undefined : readNear(house.records, known)), [about]),
  );
  const fields = found?.fields;
  if (!here.asking) return <Key onPress={here.start}>{says.ask}</Key>;
  const long = (metres: number): string => lengthWords("distance", metres, habits);
  const said = (): string => {
    if (why === "denied") return words.noPosition.denied;
    if (fix !== null && oldForMs !== null) return says.old(goneBy(oldForMs));
    if (known === null) return why === null ? says.looking : words.noPosition[why];
    if (fields !== undefined && fields.length === 0) return says.none(farWords(FIELD_NEAR_M / 1000, habits));
    return known.accuracyM > COARSE_M
      ? says.coarse(long(known.accuracyM))
      : says.goodTo(accuracyWords(known.accuracyM, known.accuracyMeans, words.standing, habits));
  };
  const where = ({ near }: NearNow): string => {
    if (near.by === "measurements") return says.toMeasured(long(near.distanceM));
    return near.distanceM === 0 ? says.inside : says.toEdge(long(near.distanceM));
  };
  return (
    <section>
      <h3>{says.title}</h3>
      <p role="status">{said()}</p>
      {known === null ? null : (
        <ul class="rows">
          {(fields ?? []).map((one) => (
            <li key={one.same.field.id}>
              <button type="button" class="row" onClick={() => props.onChoose(one.same.ids)}>
                <span>
                  <b>{fieldName(words, one.same.field)}</b>
                  <small>
                    {[
                      one.farm?.body.name ?? says.noFarm,
                      ...(one.areaM2 === null ? [] : [lengthWords("area", one.areaM2, habits)]),
                      where(one),
                    ].join(" · ")}
                  </small>
                </span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {known === null || found === undefined || found.fields.length === 0 ? null : (
        <WorkedOutLater of={says.title} methods={found.methods} sources={found.sources} />
      )}
    </section>
  );
};
