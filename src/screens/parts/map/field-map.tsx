/** The map of a field inside a screen, and on a screen of its own with the same as a list beneath. */
import { useMemo, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { sizeOf } from "../../fields/boundary-model.ts";
import { BOUNDARY_WORDS } from "../../fields/words.boundary.ts";
import { accuracyWords } from "../accuracy.ts";
import { useHouse } from "../house.ts";
import { LinkKey } from "../keys.tsx";
import { useLastShown } from "../last-shown.ts";
import { lengthWords } from "../lengths.ts";
import { useLive } from "../live.ts";
import { href } from "../route.ts";
import { useWordsOf } from "../words-of.ts";
import { type Drawing, NOTHING_DRAWN, placesOf } from "./drawing.ts";
import { drawField, MOST_TESTS, type OnField, readOnField } from "./field-things.ts";
import { GroundView } from "./ground-view.tsx";
import { type Here, useHere } from "./here.ts";
import { type CountedFrom, type Row, ThingList, ThingRow } from "./thing-list.tsx";
import { goneBy, MAP_WORDS } from "./words.ts";

/** What lies on a field; undefined while it is read, null when the field is not on this device. */
export const useOnField = (
  field: RecordId<"field">,
  visit: RecordId<"visit"> | null,
): OnField | null | undefined => {
  const { records } = useHouse();
  return useLastShown(useLive(() => readOnField(records, field, visit), [field, visit]));
};

export const FieldMap = (props: {
  readonly field: RecordId<"field">;
  /** Only what was measured on this visit; null for the newest of all visits. */
  readonly visit: RecordId<"visit"> | null;
  readonly on: ReturnType<typeof useOnField>;
  /** There is something to draw, whatever it is: its room is kept while it is read. */
  readonly expected?: boolean;
  /** A screen of its own: one finger moves the map, and the list follows. Else it is a part of a page. */
  readonly whole?: boolean;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const map = useWordsOf(MAP_WORDS);
  const { field, visit } = props;
  const whole = props.whole === true;
  const here = useHere(true, whole);
  const [picked, setPicked] = useState<string | null>(null);
  const { on } = props;
  const made = useMemo(
    () => (on === undefined || on === null ? null : drawField(words, map, on)),
    [on, words, map],
  );
  const drawing = useDrawing(made?.drawing, here);
  if (on === undefined && props.expected === true)
    return (
      <>
        <GroundView label="" drawing={NOTHING_DRAWN} waits here={here} still onPick={setPicked}>
          <LinkKey to={href({ at: "map", field, visit })}>{map.larger}</LinkKey>
        </GroundView>
        <p>{"\u00a0"}</p>
      </>
    );
  if (on === undefined || on === null || made === null || drawing === null) return null;
  const ground = placesOf(made.drawing).length > 0;
  if (!(ground || whole)) return null;
  const from = countedFrom(here, made.middle);
  const { things } = made.drawing;
  const chosen = things.find(({ id }) => id === picked);
  return (
    <>
      <GroundView
        label={map.label(made.name, things.length, whole ? "follows" : "behind-key")}
        drawing={drawing}
        here={here}
        still={!whole}
        onPick={setPicked}
        onTouch={() => setPicked(null)}
      >
        {whole ? null : <LinkKey to={href({ at: "map", field, visit })}>{map.larger}</LinkKey>}
      </GroundView>
      <HereWords here={here} />
      {chosen === undefined ? null : (
        <div class="picked" role="status">
          <ThingRow thing={chosen} from={from} />
        </div>
      )}
      {on.more ? <p>{map.newestOnly(MOST_TESTS)}</p> : null}
      {made.without > 0 ? <p>{map.without(made.without)}</p> : on.more || whole ? null : <p>{"\u00a0"}</p>}
      {whole ? <WholeList on={on} drawing={made.drawing} from={from} /> : null}
    </>
  );
};

/** Everything on the map as a list: the boundary and the names of the strips are drawn without a sign. */
const WholeList = (props: {
  readonly on: OnField;
  readonly drawing: Drawing;
  readonly from: CountedFrom | null;
}) => {
  const map = useWordsOf(MAP_WORDS);
  const says = useWordsOf(BOUNDARY_WORDS);
  const { habits } = useHouse().settings.value;
  const { boundary, labels, things } = props.drawing;
  const { field } = props.on.same;
  const size = useMemo(() => (boundary === null ? null : sizeOf(boundary)), [boundary]);
  const sizeWords = (): string => {
    if (boundary === null) return map.noBoundary;
    if (size === null) return says.openArea;
    return says.area(
      lengthWords("area", size.areaM2, habits),
      lengthWords("distance", size.perimeterM, habits),
    );
  };
  const edge: Row = {
    id: "boundary",
    name: map.boundary,
    about: sizeWords(),
    at: null,
    href: href({ at: "boundary", field: field.id }),
  };
  const strips = labels.map(
    ({ id, text, at }): Row => ({
      id,
      name: text,
      about: map.strip,
      at,
      href: href({ at: "field", field: field.id }),
    }),
  );
  return <ThingList things={[edge, ...strips, ...things]} from={props.from} />;
};

/** The drawing with the person on it. */
const useDrawing = (ground: Drawing | undefined, { fix, oldForMs }: Here): Drawing | null => {
  const old = oldForMs !== null;
  return useMemo(
    () =>
      ground === undefined
        ? null
        : { ...ground, here: fix === null ? null : { at: fix, accuracyM: fix.accuracyM, old } },
    [ground, fix, old],
  );
};

/** Distances are from the person while that is known, else from the middle of the field. */
const countedFrom = (here: Here, middle: CountedFrom["at"] | null): CountedFrom | null => {
  if (here.fix !== null && here.oldForMs === null) return { at: here.fix, who: "you" };
  return middle === null ? null : { at: middle, who: "middle" };
};

/** What is known of where the person stands, said plainly. */
export const HereWords = ({ here }: { readonly here: Here }) => {
  const house = useHouse();
  const map = useWordsOf(MAP_WORDS);
  const { habits } = house.settings.value;
  const { noPosition, standing } = house.words.value;
  if (!here.asking) return null;
  const said = (): string => {
    const { fix, oldForMs, why } = here;
    if (why === "denied") return noPosition.denied;
    if (fix !== null && oldForMs !== null) return map.hereOld(goneBy(oldForMs));
    if (fix !== null) return map.hereAt(accuracyWords(fix.accuracyM, fix.accuracyMeans, standing, habits));
    return why === null ? map.looking : noPosition[why];
  };
  return <p role="status">{said()}</p>;
};
