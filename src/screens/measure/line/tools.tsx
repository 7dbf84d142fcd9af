/** The row of tools between the running result and the counting keys. */
import type { Way } from "../../../record/kinds/observation.ts";
import type { LineReading } from "../../../record/line/reading.ts";
import { useHouse } from "../../parts/house.ts";
import type { LineModel } from "./model.ts";

export const Tools = (props: {
  readonly model: LineModel;
  readonly reading: LineReading;
  readonly way: Way;
}) => {
  const { words } = useHouse();
  const { model, reading, way } = props;
  // A full line can be read again from a mark on; one that has ended, or may have, cannot.
  const settable = way === "mark-by-mark" && reading.endedAt === null && reading.endsInDoubt.length === 0;
  return (
    <div class="tools">
      <button type="button" onClick={() => void model.undo()} disabled={reading.undoable === null}>
        {words.value.common.undo}
      </button>
      <button type="button" onClick={() => void model.redo()} disabled={reading.redoable === null}>
        {words.value.common.redo}
      </button>
      {way === "misses-only" ? (
        // The number is typed anyway, and on a small phone the rope has no place.
        <button type="button" data-opens="rope" onClick={() => model.ask("rope")}>
          {words.value.line.correct}
        </button>
      ) : (
        <button
          type="button"
          data-opens="set-mark"
          disabled={!settable}
          onClick={() => model.ask("set-mark")}
        >
          {words.value.line.setMark}
        </button>
      )}
      <button
        type="button"
        data-opens="end-at"
        disabled={model.over.value}
        onClick={() => (way === "misses-only" ? model.ask("end-at") : void model.endHere())}
      >
        {words.value.line.endHere}
      </button>
    </div>
  );
};
