/** The keys of a hole: they never move while worms are counted. */
import { useId } from "preact/hooks";
import { type Layer, WORM_GROUPS, type WormGroup } from "../../../record/hole/entries.ts";
import type { HoleReading } from "../../../record/hole/reading.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { GROUP_DRAWINGS, WormDrawing } from "./drawings.tsx";
import { HOLE_WORDS } from "./words.ts";

/** The answer taken last, with its running number. */
export type Flash = { readonly answer: "worm" | WormGroup; readonly count: number } | null;

// The key stays the same element, or a press that is held while its answer lands would be lost. Two names
// for one motion start it anew when the same answer comes twice.
const flashClass = (flash: Flash, answer: "worm" | WormGroup): string => {
  if (flash?.answer !== answer) return "";
  return flash.count % 2 === 0 ? "flash" : "flash-again";
};

/** Which layer is sorted now, each with its own count. */
export const LayerSwitch = (props: {
  readonly layers: readonly Layer[];
  readonly reading: HoleReading;
  readonly chosen: Layer;
  readonly onChoose: (layer: Layer) => void;
}) => {
  const words = useWordsOf(HOLE_WORDS);
  const group = useId();
  return (
    <fieldset class={`halves layers layers-${props.layers.length}`}>
      <legend class="out-of-sight">{words.layerLabel}</legend>
      {props.layers.map((layer) => {
        const { looked, count, inDoubt } = props.reading.found[layer];
        return (
          <label key={layer} data-layer={layer}>
            <input
              class="out-of-sight"
              type="radio"
              name={group}
              checked={layer === props.chosen}
              onChange={() => props.onChoose(layer)}
            />
            <span>
              {words.layer[layer]}
              <b>{inDoubt.length > 0 ? "?" : looked ? writeNumber(count, TONGUE) : "–"}</b>
            </span>
          </label>
        );
      })}
    </fieldset>
  );
};

/** One very large key: a worm with a head goes into the pot. */
export const WormKey = (props: { readonly flash: Flash; readonly onWorm: (touchedAtMs: number) => void }) => {
  const words = useWordsOf(HOLE_WORDS);
  return (
    <button
      type="button"
      class={`key answer straw worm-key ${flashClass(props.flash, "worm")}`}
      data-answer="worm"
      onClick={(event) => props.onWorm(event.timeStamp)}
    >
      <WormDrawing size={72} />
      <span>{words.worm}</span>
    </button>
  );
};

/** Four kinds of worm, each with its drawing, its words and how many there are. */
export const GroupKeys = (props: {
  readonly reading: HoleReading;
  readonly flash: Flash;
  readonly onPlace: (group: WormGroup, touchedAtMs: number) => void;
}) => {
  const words = useWordsOf(HOLE_WORDS);
  return (
    <div class="group-keys">
      {WORM_GROUPS.map((group) => {
        const Strokes = GROUP_DRAWINGS[group];
        const { count, inDoubt } = props.reading.placed[group];
        return (
          <button
            type="button"
            key={group}
            class={`key answer group-key ${flashClass(props.flash, group)}`}
            data-answer={group}
            onClick={(event) => props.onPlace(group, event.timeStamp)}
          >
            <span class="group-top">
              <Strokes size={46} />
              <b>{inDoubt.length > 0 ? "?" : writeNumber(count, TONGUE)}</b>
            </span>
            <span class="group-name">{words.group[group]}</span>
            <small>{words.groupHint[group]}</small>
          </button>
        );
      })}
    </div>
  );
};
