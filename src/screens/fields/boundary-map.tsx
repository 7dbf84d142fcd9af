/** The map of a boundary that is being made. */
import type { RefObject } from "preact";
import { useMemo } from "preact/hooks";
import type { Result } from "../../record/result.ts";
import type { Boundary } from "../../science/position/boundary.ts";
import type { LatitudeLongitude } from "../../science/position/distance.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { type Drawing, placesOf } from "../parts/map/drawing.ts";
import { drawField, readOnField } from "../parts/map/field-things.ts";
import type { Ground } from "../parts/map/ground.ts";
import { GroundView } from "../parts/map/ground-view.tsx";
import type { Here } from "../parts/map/here.ts";
import { MAP_WORDS } from "../parts/map/words.ts";
import type { SameField } from "../parts/same-field.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { type Corner, crossingSides } from "./boundary-draft.ts";
import { BOUNDARY_WORDS } from "./words.boundary.ts";

/** The map, or what helps while there is nothing to begin from. */
export const MakeMap = (props: {
  readonly drawing: Drawing;
  readonly here: Here;
  readonly name: string;
  readonly ground: RefObject<Ground | null>;
  readonly touching: boolean;
  readonly onTouch: (place: LatitudeLongitude) => void;
  readonly onPickCorner: (at: number) => void;
  readonly onMoveCorner: (at: number, place: LatitudeLongitude) => void;
}) => {
  const map = useWordsOf(MAP_WORDS);
  const says = useWordsOf(BOUNDARY_WORDS);
  const { drawing, here } = props;
  if (placesOf(drawing).length === 0)
    return props.touching ? (
      <>
        <p>{says.noStart}</p>
        {here.asking ? <p role="status">{map.looking}</p> : <Key onPress={here.start}>{map.whereAmI}</Key>}
      </>
    ) : null;
  return (
    <GroundView
      label={map.label(props.name, drawing.things.length, "nowhere")}
      drawing={drawing}
      here={here}
      cross={props.touching}
      ground={props.ground}
      onTouch={props.onTouch}
      onPickCorner={props.onPickCorner}
      onMoveCorner={props.onMoveCorner}
    />
  );
};

/** What the map of the work shows: what lies on the field, the corners so far, and the person. */
export const useDrawing = (
  same: SameField,
  corners: readonly Corner[],
  now: {
    readonly chosen: number | null;
    readonly movable: boolean;
    readonly wrong: Result<Boundary> | null;
  },
  { fix, oldForMs }: Here,
): Drawing => {
  const house = useHouse();
  const words = house.words.value;
  const map = useWordsOf(MAP_WORDS);
  const on = useLive(() => readOnField(house.records, same.field.id, null), [same.field.id]);
  const field = useMemo(
    () => (on === undefined || on === null ? null : drawField(words, map, on).drawing),
    [on, words, map],
  );
  const { chosen, movable, wrong } = now;
  const shape = useMemo(
    () => ({
      places: corners,
      chosen,
      movable,
      crossing: wrong === null ? [] : crossingSides(wrong),
    }),
    [corners, chosen, movable, wrong],
  );
  const old = oldForMs !== null;
  return useMemo(
    () => ({
      // The edge that stood there before would hide the new one.
      boundary: null,
      things: field?.things ?? [],
      labels: field?.labels ?? [],
      here: fix === null ? null : { at: fix, accuracyM: fix.accuracyM, old },
      corners: shape,
    }),
    [field, shape, fix, old],
  );
};
