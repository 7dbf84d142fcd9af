/** What is said while somebody walks the edge. */
import { useEffect, useState } from "preact/hooks";
import { keepScreenOn, type ScreenOnState } from "../../device/screen-on.ts";
import { accuracyWords } from "../parts/accuracy.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { lengthWords } from "../parts/lengths.ts";
import type { Here } from "../parts/map/here.ts";
import { goneBy, MAP_WORDS } from "../parts/map/words.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { apartFor, COARSE_CORNER_M, type Corner, isRound, walked } from "./boundary-draft.ts";
import { BOUNDARY_WORDS } from "./words.boundary.ts";

export const Walking = (props: {
  readonly corners: readonly Corner[];
  readonly here: Here;
  readonly going: boolean;
}) => {
  const house = useHouse();
  const says = useWordsOf(BOUNDARY_WORDS);
  const map = useWordsOf(MAP_WORDS);
  const { corners, here, going } = props;
  const { habits } = house.settings.value;
  const { noPosition, standing } = house.words.value;
  const screen = useScreenOn(going);
  const long = (metres: number): string => lengthWords("distance", metres, habits);
  const corner = cornerOf(here);
  const whileGoing = (): readonly string[] => {
    if (here.fix !== null && here.oldForMs !== null) return [says.old(goneBy(here.oldForMs))];
    if (corner === null) return [here.why === null ? map.looking : noPosition[here.why]];
    if (corner.accuracyM > COARSE_CORNER_M)
      return [says.coarse(long(corner.accuracyM), long(COARSE_CORNER_M))];
    if (isRound(corners, corner)) return [says.round];
    const still = corners.length > 0 && walked(corners.at(-1) ?? null, corner) === "standing";
    return [
      says.goodTo(
        accuracyWords(corner.accuracyM, here.fix?.accuracyMeans ?? null, standing, habits),
        long(apartFor(corner.accuracyM)),
      ),
      ...(still ? [says.standing] : []),
    ];
  };
  const sentences = (): readonly string[] => {
    if (here.why === "denied") return [says.denied];
    if (going) return whileGoing();
    return corners.length === 0 ? [says.screenStays] : [says.paused, says.straight];
  };
  return (
    <section class="walking">
      <p role="status">{sentences().join(" ")}</p>
      {going ? <p class="aside">{screen === "on" ? says.screenStays : says.screenCannot}</p> : null}
    </section>
  );
};

/** Going on and pausing, and a corner at the very place. */
export const WalkKeys = (props: {
  readonly here: Here;
  readonly going: boolean;
  /** There are corners already. */
  readonly begun: boolean;
  readonly onGoing: (going: boolean) => void;
  readonly onCorner: (corner: Corner) => void;
}) => {
  const says = useWordsOf(BOUNDARY_WORDS);
  const { here, going, begun } = props;
  const corner = cornerOf(here);
  return (
    <div class="keys two">
      <Key
        look={going ? "plain" : "straw"}
        onPress={() => {
          here.start();
          props.onGoing(!going);
        }}
      >
        {going ? says.pause : begun ? says.goOnWalking : says.begin}
      </Key>
      <Key off={corner === null} onPress={() => corner !== null && props.onCorner(corner)}>
        {says.cornerHere}
      </Key>
    </div>
  );
};

/** Where somebody is now as a corner; null while that is not known or has grown old. */
const cornerOf = ({ fix, oldForMs }: Here): (Corner & { readonly accuracyM: number }) | null => {
  if (fix === null || oldForMs !== null) return null;
  const { latitudeDeg, longitudeDeg, accuracyM, atMs } = fix;
  return { latitudeDeg, longitudeDeg, accuracyM, atMs };
};

/** Keeps the screen on while somebody walks. */
const useScreenOn = (going: boolean): ScreenOnState | null => {
  const [state, setState] = useState<ScreenOnState | null>(null);
  useEffect(() => {
    if (!going) return;
    const stop = new AbortController();
    keepScreenOn(setState, stop.signal);
    return () => stop.abort();
  }, [going]);
  return state;
};
