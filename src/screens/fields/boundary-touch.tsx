/** Corners on the map, one by one: the one that was chosen, and all of them as a list. */
import type { RefObject } from "preact";
import { useState } from "preact/hooks";
import { middleOf } from "../../science/position/boundary.ts";
import { Key } from "../parts/keys.tsx";
import type { Ground } from "../parts/map/ground.ts";
import { useAway } from "../parts/map/thing-list.tsx";
import { MAP_WORDS } from "../parts/map/words.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { type BoundaryDraft, type Corner, movedCorner, withoutCorner } from "./boundary-draft.ts";
import { BOUNDARY_WORDS } from "./words.boundary.ts";

/** Corners listed before "show more". */
const AT_ONCE = 20;

export const ChosenCorner = (props: {
  readonly at: number;
  readonly ground: RefObject<Ground | null>;
  readonly onChange: (by: (before: BoundaryDraft) => BoundaryDraft) => void;
  readonly onClose: () => void;
}) => {
  const says = useWordsOf(BOUNDARY_WORDS);
  const { at, ground, onChange, onClose } = props;
  return (
    <section class="ruled">
      <h2>{says.chosen(at + 1)}</h2>
      <p>{says.chosenHint}</p>
      <div class="keys two">
        <Key
          onPress={() => {
            const middle = ground.current?.middle();
            if (middle !== undefined)
              onChange((before) => movedCorner(before, at, { ...middle, accuracyM: null, atMs: null }));
          }}
        >
          {says.moveToCross}
        </Key>
        <Key
          onPress={() => {
            onChange((before) => withoutCorner(before, at));
            onClose();
          }}
        >
          {says.removeCorner}
        </Key>
        <Key onPress={onClose}>{says.letGo}</Key>
      </div>
    </section>
  );
};

export const CornerList = (props: {
  readonly corners: readonly Corner[];
  readonly chosen: number | null;
  readonly onChoose: (at: number) => void;
}) => {
  const says = useWordsOf(BOUNDARY_WORDS);
  const map = useWordsOf(MAP_WORDS);
  const away = useAway();
  const [most, setMost] = useState(AT_ONCE);
  const { corners } = props;
  const middle = middleOf(corners);
  const from = middle.ok ? ({ at: middle.value, who: "middle" } as const) : null;
  const hidden = corners.length - most;
  if (corners.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{says.cornerList}</h2>
      <ol class="rows">
        {corners.slice(0, most).map((corner, at) => (
          <li key={`${at} ${corner.latitudeDeg} ${corner.longitudeDeg}`}>
            <button
              type="button"
              class="row"
              aria-pressed={at === props.chosen}
              onClick={() => props.onChoose(at)}
            >
              <span>
                <b>{says.chosen(at + 1)}</b>
                <small>{away(from, corner)}</small>
              </span>
            </button>
          </li>
        ))}
      </ol>
      {hidden > 0 ? (
        <Key onPress={() => setMost(most + AT_ONCE)}>{map.more(Math.min(hidden, AT_ONCE))}</Key>
      ) : null}
    </section>
  );
};
