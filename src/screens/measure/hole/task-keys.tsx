import type { Layer } from "../../../record/hole/entries.ts";
import type { HoleReading } from "../../../record/hole/reading.ts";
import type { RecordId } from "../../../record/ids.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type Flash, GroupKeys, LayerSwitch, WormKey } from "./keys.tsx";
import type { HoleModel } from "./model.ts";
import { OpenHoles } from "./open-holes.tsx";
import { Running } from "./running.tsx";
import type { StoredHole } from "./stand.ts";
import { HOLE_WORDS } from "./words.ts";
import "../line/line.css";
import "./hole.css";

const layersOf = ({ header }: StoredHole, reading: HoleReading): readonly Layer[] =>
  header.mustardMin === null && !reading.found["mustard-water"].looked
    ? ["mulch", "soil"]
    : ["mulch", "soil", "mustard-water"];

export const Keys = (props: {
  readonly model: HoleModel;
  readonly stored: StoredHole;
  readonly hole: RecordId<"observation">;
}) => {
  const { model, stored, hole } = props;
  const { common } = useHouse().words.value;
  const words = useWordsOf(HOLE_WORDS);
  const reading = model.reading.value;
  const last = model.last.value;
  const flash: Flash = ((): Flash => {
    if (last === null || last.how !== "took") return null;
    const { entry, count } = last;
    if (entry.type === "worm") return { answer: "worm", count };
    return entry.type === "placed" ? { answer: entry.group, count } : null;
  })();
  const keys = () => {
    if (reading.closed !== null) return <ClosedKeys model={model} stored={stored} hole={hole} />;
    if (model.task.value === "place")
      return (
        <>
          <GroupKeys
            reading={reading}
            flash={flash}
            onPlace={(group, atMs) => void model.place(group, atMs)}
          />
          <div class="keys two">
            <Key onPress={() => model.turnTo("find")}>{words.toFind}</Key>
            <button type="button" class="key" data-opens="numbers" onClick={() => model.open("numbers")}>
              {words.numbers}
            </button>
          </div>
        </>
      );
    return (
      <>
        <LayerSwitch
          layers={layersOf(stored, reading)}
          reading={reading}
          chosen={model.layer.value}
          onChoose={(layer) => void model.lookAt(layer)}
        />
        <WormKey flash={flash} onWorm={(atMs) => void model.worm(atMs)} />
        <div class="keys two">
          <button
            type="button"
            class="key"
            data-opens="count"
            onClick={() => model.open("count", model.layer.value)}
          >
            {words.atOnce}
          </button>
          <Key onPress={() => model.turnTo("place")}>{words.toPlace}</Key>
        </div>
      </>
    );
  };
  return (
    <>
      <OpenHoles hole={hole} visit={stored.header.visit} />
      <Running model={model} stored={stored} hole={hole} />
      <div class="tools">
        <button type="button" onClick={() => void model.undo()} disabled={reading.undoable === null}>
          {common.undo}
        </button>
        <button type="button" onClick={() => void model.redo()} disabled={reading.redoable === null}>
          {common.redo}
        </button>
        <button type="button" data-opens="numbers" onClick={() => model.open("numbers")}>
          {words.correct}
        </button>
        <button type="button" disabled={reading.closed !== null} onClick={() => void model.close()}>
          {words.close}
        </button>
      </div>
      <div class={`count-keys hole-keys ${reading.closed === null ? "" : "closed"}`}>{keys()}</div>
    </>
  );
};

/** The keys of a closed hole, in the place of the counting keys. */
const ClosedKeys = (props: {
  readonly model: HoleModel;
  readonly stored: StoredHole;
  readonly hole: RecordId<"observation">;
}) => {
  const { model, stored } = props;
  const words = useWordsOf(HOLE_WORDS);
  const { undoable } = model.reading.value;
  return (
    <>
      <LinkKey to={href({ at: "hole-sheet", hole: props.hole })} look="straw">
        {words.sheet}
      </LinkKey>
      <LinkKey to={href({ at: "hole-new", visit: stored.header.visit })}>{words.next}</LinkKey>
      <Key off={undoable?.type !== "closed"} onPress={() => void model.undo()}>
        {words.reopen}
      </Key>
    </>
  );
};
