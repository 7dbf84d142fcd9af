/** The corners so far on the map, and the keys that add, take back and keep them. */
import { useMemo, useRef, useState } from "preact/hooks";
import type { PositionFix } from "../../device/position.ts";
import type { Result } from "../../record/result.ts";
import type { Boundary } from "../../science/position/boundary.ts";
import type { LatitudeLongitude } from "../../science/position/distance.ts";
import { AskOnce } from "../parts/ask-once.tsx";
import { fromHere } from "../parts/from-here.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import type { Ground } from "../parts/map/ground.ts";
import { useHere } from "../parts/map/here.ts";
import { fieldName } from "../parts/names.ts";
import { useOnce } from "../parts/once.ts";
import { ownSentence } from "../parts/own-units.ts";
import { Page } from "../parts/page.tsx";
import type { SameField } from "../parts/same-field.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { BoundaryDoubts, SizeSoFar } from "./boundary-doubts.tsx";
import {
  type BoundaryDraft,
  type Corner,
  closedEdge,
  cornersOf,
  MOST_CORNERS,
  movedCorner,
  redone,
  undone,
  walked,
  withCorner,
} from "./boundary-draft.ts";
import { MakeMap, useDrawing } from "./boundary-map.tsx";
import { type OpenDraft, writeBoundary } from "./boundary-model.ts";
import { ChosenCorner, CornerList } from "./boundary-touch.tsx";
import { Walking, WalkKeys } from "./boundary-walk.tsx";
import { BOUNDARY_WORDS } from "./words.boundary.ts";

/** A corner that was touched on the map. */
export const touched = ({ latitudeDeg, longitudeDeg }: LatitudeLongitude): Corner => ({
  latitudeDeg,
  longitudeDeg,
  accuracyM: null,
  atMs: null,
});

export const MakeBoundary = (props: {
  readonly same: SameField;
  readonly draft: OpenDraft;
  readonly stored: BoundaryDraft;
  readonly walking: boolean;
  readonly onWalking: (walking: boolean) => void;
  readonly back: string;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const says = useWordsOf(BOUNDARY_WORDS);
  const { same, draft, stored, walking, onWalking } = props;
  const [chosen, setChosen] = useState<number | null>(null);
  const [wrong, setWrong] = useState<Result<Boundary> | null>(null);
  const [busy, once] = useOnce();
  const ground = useRef<Ground>(null);
  const corners = useMemo(() => cornersOf(stored), [stored]);
  const byWalking = stored.way === "walk";
  const going = byWalking && walking;
  const take = (fix: PositionFix) => {
    const { latitudeDeg, longitudeDeg, accuracyM, atMs } = fix;
    const corner = { latitudeDeg, longitudeDeg, accuracyM, atMs };
    void draft.change((before) =>
      before === null || walked(cornersOf(before).at(-1) ?? null, corner) !== "taken"
        ? before
        : withCorner(before, corner),
    );
  };
  const here = useHere(true, true, (fix) => {
    if (going) take(fix);
  });
  const goOn = (on: boolean) => {
    onWalking(on);
    // A phone that is not moved may say nothing new: the edge goes on from where it is known to be.
    if (on && here.fix !== null && here.oldForMs === null) take(here.fix);
  };
  const drawing = useDrawing(same, corners, { chosen, movable: !byWalking, wrong }, here);
  const change = (by: (before: BoundaryDraft) => BoundaryDraft) => {
    setWrong(null);
    void draft.change((before) => (before === null ? null : by(before)));
  };
  const add = (place: LatitudeLongitude) => {
    const at = chosen === null ? corners.length : Math.min(chosen + 1, corners.length);
    change((before) => withCorner(before, touched(place), at));
    if (chosen !== null) setChosen(at);
  };
  const keep = () =>
    once(async () => {
      const closed = closedEdge(corners);
      if (!closed.boundary.ok) {
        setWrong(closed.boundary);
        return;
      }
      const goInstead = fromHere(house.goInstead);
      if (!(await writeBoundary(house, same.field.id, closed.corners))) return;
      await draft.change(() => null);
      goInstead({ at: "field", field: same.field.id });
    });
  // A corner's number may be another one's after a step.
  const step = (by: typeof undone) => {
    setChosen(null);
    change(by);
  };
  return (
    <Page
      title={says.title}
      under={fieldName(words, same.field)}
      back={props.back}
      foot={
        <>
          {byWalking ? (
            <WalkKeys
              here={here}
              going={going}
              begun={corners.length > 0}
              onGoing={goOn}
              onCorner={(corner) => change((before) => withCorner(before, corner))}
            />
          ) : (
            <Key
              look="straw"
              onPress={() => {
                const middle = ground.current?.middle();
                if (middle !== undefined) add(middle);
              }}
            >
              {says.cornerAtCross}
            </Key>
          )}
          <div class="keys three">
            <Key off={stored.done === 0} onPress={() => step(undone)}>
              {words.common.undo}
            </Key>
            <Key off={stored.done === stored.steps.length} onPress={() => step(redone)}>
              {words.common.redo}
            </Key>
            <Key look="solid" off={busy || corners.length === 0} onPress={keep}>
              {says.keepIt}
            </Key>
          </div>
        </>
      }
    >
      <div class="making">
        <SizeSoFar corners={corners} />
        {wrong !== null && !wrong.ok ? (
          <p class="wrong" role="alert">
            {ownSentence(words, house.settings.value.habits, wrong.problem, says.problems)}
          </p>
        ) : null}
        {corners.length >= MOST_CORNERS ? <p class="wrong">{says.full(MOST_CORNERS)}</p> : null}
        {byWalking ? <Walking corners={corners} here={here} going={going} /> : <p>{says.touchHint}</p>}
        <MakeMap
          drawing={drawing}
          here={here}
          name={fieldName(words, same.field)}
          ground={ground}
          touching={!byWalking}
          onTouch={(place) => (byWalking ? undefined : add(place))}
          onPickCorner={(at) => (byWalking ? undefined : setChosen(at === chosen ? null : at))}
          onMoveCorner={(at, place) => change((before) => movedCorner(before, at, touched(place)))}
        />
        {chosen === null || byWalking ? null : (
          <ChosenCorner at={chosen} ground={ground} onChange={change} onClose={() => setChosen(null)} />
        )}
        <BoundaryDoubts corners={corners} />
        {byWalking ? null : (
          <CornerList
            corners={corners}
            chosen={chosen}
            onChoose={(at) => {
              setChosen(at);
              const corner = corners[at];
              if (corner !== undefined) ground.current?.goTo(corner);
            }}
          />
        )}
        <div class="keys ruled last-keys">
          <Key
            onPress={() => {
              onWalking(false);
              change((before) => ({ ...before, way: byWalking ? "touch" : "walk" }));
            }}
          >
            {byWalking ? says.touchInstead : says.walkInstead}
          </Key>
          <AskOnce
            label={says.throwAway}
            question={says.throwAwayAsk}
            hint={says.throwAwayHint}
            yes={says.throwAwayYes}
            onYes={async () => {
              await draft.change(() => null);
            }}
          />
        </div>
      </div>
    </Page>
  );
};
