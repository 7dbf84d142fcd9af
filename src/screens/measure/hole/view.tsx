/** A spade hole while it is sorted: what was found on top, one large key under the thumb. */
import { useEffect, useMemo } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { useScreenOn } from "../../parts/can-ring.ts";
import { type House, useHouse } from "../../parts/house.ts";
import { BackDrawing } from "../../parts/icons.tsx";
import { useLive } from "../../parts/live.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { ScreenDark } from "../../parts/screen-words.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { cue } from "../line/cues.ts";
import { changesBeside } from "../line/heading.ts";
import { cueOf } from "./cue-of.ts";
import { useKeys } from "./hands.ts";
import { type HoleHeading, holeHeading } from "./holes-of-day.ts";
import { Doubts, Numbers, SoilConditions } from "./lists.tsx";
import { type HoleModel, holeModel } from "./model.ts";
import { useHoleFocus, usePanelSteps } from "./panel-steps.ts";
import { CountAtOnce, Litres, People, Temperature } from "./panels.tsx";
import { sayEntry } from "./say.ts";
import { isCounted, type StoredHole } from "./stand.ts";
import { Keys } from "./task-keys.tsx";
import { HOLE_WORDS } from "./words.ts";
import "../line/line.css";
import "./hole.css";

/** The running screen of one hole, by its address. */
export const HoleScreen = (props: { readonly hole: RecordId<"observation"> }) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const model = useMemo(() => holeModel(house, props.hole), [house, props.hole]);
  const heading = useLive(
    () => holeHeading(house, words, props.hole),
    [props.hole, words],
    changesBeside(props.hole),
  );
  useEffect(() => {
    void model.refresh();
    return house.records.subscribe((changed) => {
      if (changed === "everything" || (changed.includes(props.hole) && !model.isWriting()))
        void model.refresh();
    });
  }, [house, model, props.hole]);
  useKeys(house, model);
  usePanelSteps(model);
  useHoleFocus(model);
  // Hands are muddy and the eyes are on the ground.
  useScreenOn();
  const stored = model.stored.value;
  if (stored === undefined) return <div class="frame" aria-busy="true" />;
  if (stored === null || stored.deleted)
    return (
      <Page
        title={stored === null ? words.gone : words.deleted}
        back={href({ at: "measure" })}
        area="measure"
      >
        {null}
      </Page>
    );
  return <Sorting house={house} model={model} stored={stored} heading={heading} hole={props.hole} />;
};

const Sorting = (props: {
  readonly house: House;
  readonly model: HoleModel;
  readonly stored: StoredHole;
  readonly heading: HoleHeading | undefined;
  readonly hole: RecordId<"observation">;
}) => {
  const { house, model, stored, heading, hole } = props;
  const words = useWordsOf(HOLE_WORDS);
  const { common } = house.words.value;
  const { visit } = stored.header;
  const last = model.last.value;
  useEffect(() => {
    if (last === null) return;
    const { habits } = house.settings.value;
    cue(house.settings.value, last.how === "took" ? cueOf(last.entry) : "undo");
    house.say(sayEntry(words, habits, last));
  }, [house, last, words]);
  return (
    <div class="count hole" data-living={model.reading.value?.living ?? 0}>
      <header class="head">
        <a
          class="back"
          href={href({ at: "visit", visit })}
          aria-label={common.back}
          onClick={(event) => {
            if (model.panel.value.name === "none") return;
            event.preventDefault();
            model.leave();
          }}
        >
          <BackDrawing />
        </a>
        <div>
          <h1>{heading?.title ?? ""}</h1>
          <p>{heading?.under ?? ""}</p>
        </div>
        {model.reading.value?.closed === null ? <ScreenDark /> : null}
      </header>
      <PanelOf model={model} visit={visit} hole={hole} />
      {model.panel.value.name === "none" ? <Keys model={model} stored={stored} hole={hole} /> : null}
    </div>
  );
};

/** The panel that stands in for the keys, if one is open. */
const PanelOf = (props: {
  readonly model: HoleModel;
  readonly visit: RecordId<"visit">;
  readonly hole: RecordId<"observation">;
}) => {
  const { model } = props;
  const { name, about } = model.panel.value;
  switch (name) {
    case "count":
    case "number":
      return isCounted(about) ? <CountAtOnce key={about} model={model} counted={about} /> : null;
    case "numbers":
      return <Numbers model={model} />;
    case "people":
      return <People model={model} />;
    case "litres":
      return <Litres model={model} pouring={about} />;
    case "conditions":
      return <SoilConditions model={model} visit={props.visit} hole={props.hole} />;
    case "temperature":
      return <Temperature model={model} />;
    case "doubts":
      return <Doubts model={model} />;
    case "none":
      return null;
  }
};
