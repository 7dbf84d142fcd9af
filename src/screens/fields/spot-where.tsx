/** Where a spot lies: taken standing still, or put on the map. */
import { useMemo, useRef, useState } from "preact/hooks";
import { readClock } from "../../device/clock.ts";
import type { Position } from "../../record/shapes.ts";
import { accuracyWords } from "../parts/accuracy.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { lengthWords } from "../parts/lengths.ts";
import { type Drawing, placesOf } from "../parts/map/drawing.ts";
import type { Ground } from "../parts/map/ground.ts";
import { GroundView } from "../parts/map/ground-view.tsx";
import { useHere } from "../parts/map/here.ts";
import { wayBetween } from "../parts/map/way.ts";
import { MAP_WORDS } from "../parts/map/words.ts";
import { StandingWords, useStanding } from "../parts/standing.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { measuredOf, placedByHand } from "./spot-place.ts";
import { DETAILS_WORDS } from "./words.details.ts";

type Taking = "standing" | "map" | null;

export const SpotPlace = (props: {
  readonly question: string;
  readonly position: Position | null;
  /** What lies around it. */
  readonly ground: Drawing;
  readonly onPlace: (position: Position) => void;
}) => {
  const says = useWordsOf(DETAILS_WORDS);
  const { position, onPlace } = props;
  const [taking, setTaking] = useState<Taking>(null);
  const measured = position === null ? undefined : measuredOf(position);
  const place = (next: Position) => {
    onPlace(next);
    setTaking(null);
  };
  return (
    <fieldset>
      <legend class="question">{props.question}</legend>
      <PlaceWords position={position} />
      {taking === "standing" ? <TakeStanding onPlace={place} /> : null}
      {taking === "map" ? <PutOnMap position={position} ground={props.ground} onPlace={place} /> : null}
      <div class="keys two beside">
        {taking === "standing" ? null : (
          <Key onPress={() => setTaking("standing")}>
            {position === null ? says.standThere : says.takeAnew}
          </Key>
        )}
        {taking === "map" ? null : (
          <Key onPress={() => setTaking("map")}>{position === null ? says.onTheMap : says.change}</Key>
        )}
        {position?.movedFrom !== undefined && measured !== undefined ? (
          <Key onPress={() => place(measured)}>{says.putBack}</Key>
        ) : null}
      </div>
    </fieldset>
  );
};

/** What is known of a place, and whether somebody moved it. */
const PlaceWords = ({ position }: { readonly position: Position | null }) => {
  const says = useWordsOf(DETAILS_WORDS);
  const map = useWordsOf(MAP_WORDS);
  const { settings, words } = useHouse();
  const { habits } = settings.value;
  const said = (): string => {
    if (position === null) return says.noPlace;
    if (position.how === "standing-still")
      return position.accuracyM === null
        ? says.measuredUnstated
        : says.measured(
            accuracyWords(position.accuracyM, position.accuracyMeans, words.value.standing, habits),
          );
    if (position.movedFrom === undefined) return says.byHand;
    const way = wayBetween(position.movedFrom, position);
    return way === null || way.wind === null
      ? says.movedBy("", "")
      : says.movedBy(lengthWords("distance", way.distanceM, habits), map.winds[way.wind]);
  };
  return <p role="status">{said()}</p>;
};

const TakeStanding = ({ onPlace }: { readonly onPlace: (position: Position) => void }) => {
  const says = useWordsOf(DETAILS_WORDS);
  const standing = useStanding();
  const { position } = standing.stood;
  return (
    <>
      <StandingWords standing={standing} question={says.standThere} />
      <Key
        look="straw"
        off={position === null}
        onPress={() => {
          // Asked for at the touch: what was drawn may be older than half a minute by now.
          const now = standing.stood.position;
          if (now !== null) onPlace(now);
        }}
      >
        {says.takeHere}
      </Key>
    </>
  );
};

const PutOnMap = (props: {
  readonly position: Position | null;
  readonly ground: Drawing;
  readonly onPlace: (position: Position) => void;
}) => {
  const says = useWordsOf(DETAILS_WORDS);
  const map = useWordsOf(MAP_WORDS);
  const ground = useRef<Ground>(null);
  const here = useHere(true, true);
  const { position, onPlace } = props;
  const drawing = useDrawing(props.ground, position, here);
  if (placesOf(drawing).length === 0)
    return (
      <>
        <p>{says.noMap}</p>
        {here.asking ? <p role="status">{map.looking}</p> : <Key onPress={here.start}>{map.whereAmI}</Key>}
      </>
    );
  return (
    <>
      <p>{says.mapHint}</p>
      <GroundView
        label={map.label(says.aSpot, drawing.things.length, "nowhere")}
        drawing={drawing}
        here={here}
        start={position}
        cross
        ground={ground}
        onTouch={(place) => ground.current?.goTo(place)}
      />
      <div class="after-writing">
        <Key
          look="straw"
          onPress={() => {
            const middle = ground.current?.middle();
            if (middle !== undefined) onPlace(placedByHand(position, middle, readClock().wallMs));
          }}
        >
          {says.putHere}
        </Key>
      </div>
    </>
  );
};

/** The ground with the spot as it is now: the map opens there. */
const useDrawing = (
  ground: Drawing,
  position: Position | null,
  { fix, oldForMs }: ReturnType<typeof useHere>,
): Drawing => {
  const says = useWordsOf(DETAILS_WORDS);
  // The ground is made anew at every drawing of the form, the map must not be.
  const kept = useRef(ground);
  const old = oldForMs !== null;
  return useMemo(
    () => ({
      ...kept.current,
      things: [
        ...kept.current.things,
        ...(position === null
          ? []
          : [
              {
                id: "this",
                sign: "spot" as const,
                at: position,
                to: null,
                label: says.takenHere,
                name: says.aSpot,
                about: "",
                href: null,
              },
            ]),
      ],
      here: fix === null ? null : { at: fix, accuracyM: fix.accuracyM, old },
    }),
    [position, fix, old, says],
  );
};
