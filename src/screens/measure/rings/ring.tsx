/** One ring while it is read: question and running result on top, keys under the thumb. */
import { useEffect, useMemo } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { groundName } from "../../parts/ground-name.ts";
import { type House, useHouse } from "../../parts/house.ts";
import { BackDrawing } from "../../parts/icons.tsx";
import { useLive } from "../../parts/live.ts";
import { fieldName } from "../../parts/names.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { cue } from "../line/cues.ts";
import { CorrectPanel } from "./correct.tsx";
import type { DayRing } from "./day.ts";
import { DoubtsPanel, RosePanel } from "./doubt-panels.tsx";
import { GonePanel, HappenedPanel, LostPanel, RefillAfter, StartPanel, StopPanel } from "./event-panels.tsx";
import { guessOf } from "./guess.ts";
import { lookNow } from "./hand.ts";
import { OuterKey } from "./outer-key.tsx";
import { LevelPanel, LookNumber, PourPanel } from "./read-number.tsx";
import { ReadingsPanel } from "./readings.tsx";
import { RingKeys } from "./ring-keys.tsx";
import { type RingModel, ringModel } from "./ring-model.ts";
import { useRingFocus, useRingSteps } from "./ring-steps.ts";
import { RingTop } from "./ring-top.tsx";
import { sayLast } from "./say.ts";
import { stageOf } from "./status.ts";
import { useNow } from "./tick.ts";
import { RING_WORDS } from "./words.ts";
import "../line/line.css";
import "./rings.css";

/** The screen of one ring, by its address. */
export const RingScreen = (props: { readonly ring: RecordId<"observation"> }) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const model = useMemo(() => ringModel(house, props.ring), [house, props.ring]);
  useEffect(() => {
    void model.refresh();
    return house.records.subscribe((changed) => {
      if (changed === "everything" || !model.isWriting()) void model.refresh();
    });
  }, [house, model]);
  useRingSteps(model);
  useRingFocus(model);
  const ring = model.ring.value;
  if (ring === undefined) return <div class="frame" aria-busy="true" />;
  if (ring === null || ring.deleted)
    return (
      <Page
        title={ring === null ? words.ring.notHere : words.ring.deleted}
        back={href({ at: "measure" })}
        area="measure"
      >
        {null}
      </Page>
    );
  return <Reading house={house} model={model} ring={ring} />;
};

const useSayings = (house: House, model: RingModel) => {
  const words = useWordsOf(RING_WORDS);
  const last = model.last.value;
  const { tongue } = house.words.value.common;
  useEffect(() => {
    if (last === null) return;
    cue(house.settings.value, last.how === "took" ? "residue" : "undo");
    house.say(sayLast(words, tongue, last));
  }, [house, last, tongue, words]);
};

const Reading = (props: { readonly house: House; readonly model: RingModel; readonly ring: DayRing }) => {
  const { house, model, ring } = props;
  const words = useWordsOf(RING_WORDS);
  const catalogue = house.words.value;
  const now = useNow();
  useSayings(house, model);
  const { header, reading } = ring;
  const field = useLive(() => house.records.one(header.field), [header.field]);
  const guess = useLive(() => guessOf(house.records, header), [header.visit, header.strip]);
  const place = header.place === null ? [] : [catalogue.place[header.place]];
  const double = header.outer !== null;
  const again =
    stageOf(ring) === "running" ? (
      <button
        type="button"
        class="key"
        data-answer="look"
        onClick={() => void model.took(lookNow(house, ring.id))}
      >
        {double ? words.ring.readInner : words.ring.readAgain}
      </button>
    ) : null;
  const panel = () => {
    const shown = model.shown.value;
    switch (shown.is) {
      case "start":
        return <StartPanel model={model} ring={ring} />;
      case "level":
        return (
          <LevelPanel ring={ring} onWritten={(done) => model.took(done, "keys")} onClose={model.close} />
        );
      case "pour":
      case "refill-water": {
        const inRefill = shown.is === "refill-water";
        const next = inRefill ? "refill-after" : "keys";
        return (
          <PourPanel
            key={shown.is}
            ring={ring}
            atStart={false}
            inRefill={inRefill}
            onWritten={(done) => model.took(done, next)}
            onClose={() => model.open(next)}
          />
        );
      }
      case "gone":
        return <GonePanel model={model} ring={ring} />;
      case "refill-after":
        return <RefillAfter model={model} ring={ring} />;
      case "happened":
        return <HappenedPanel model={model} ring={ring} />;
      case "lost":
        return <LostPanel model={model} ring={ring} />;
      case "stop":
        return <StopPanel model={model} ring={ring} />;
      case "rose":
        return <RosePanel model={model} ring={ring} />;
      case "doubts":
        return <DoubtsPanel model={model} ring={ring} />;
      case "readings":
        return <ReadingsPanel model={model} ring={ring} />;
      case "correct":
        return <CorrectPanel model={model} ring={ring} />;
      case "number":
        return (
          <LookNumber
            key={shown.look.look.id}
            ring={ring}
            look={shown.look}
            waiting={reading.openLooks.length}
            behindRefill={model.refillLooks.value.has(shown.look.look.id)}
            onWritten={(done) =>
              model.took(done, model.refillFrom.value === shown.look.look.id ? "refill-water" : "keys")
            }
            onLater={() => model.putOff(true)}
            above={double ? null : again}
            keys={
              double && again ? (
                <>
                  {again}
                  <OuterKey
                    model={model}
                    ring={ring}
                    behindRefill={model.refillLooks.value.has(shown.look.look.id)}
                  />
                </>
              ) : null
            }
          />
        );
      case "first-water":
        return (
          <PourPanel
            ring={ring}
            atStart
            inRefill={false}
            onWritten={(done) => model.took(done, "keys")}
            onClose={() => model.putOff(true)}
          />
        );
      case "keys":
        return null;
    }
  };
  const open = panel();
  return (
    <div class="count ring" data-living={reading.living}>
      <header class="head">
        <a
          class="back"
          href={href({ at: "rings", visit: header.visit })}
          aria-label={catalogue.common.back}
          onClick={(event) => {
            if (model.panel.value === "keys") return;
            event.preventDefault();
            model.close();
          }}
        >
          <BackDrawing />
        </a>
        <div>
          <h1>
            {field === undefined
              ? "\u00a0"
              : `${fieldName(catalogue, field)} · ${groundName(catalogue, ring.strip, ring.spot)}`}
          </h1>
          <p>{[...place, ...(header.mulch === null ? [] : [words.mulch[header.mulch]])].join(" · ")}</p>
        </div>
        <div class="head-end ring-letter">{ring.letter}</div>
      </header>
      {open ?? (
        <>
          <RingTop model={model} ring={ring} now={now} guessMm={guess ?? null} />
          <div class="tools">
            <button type="button" onClick={() => void model.undo()} disabled={reading.undoable === null}>
              {catalogue.common.undo}
            </button>
            <button type="button" onClick={() => void model.redo()} disabled={reading.redoable === null}>
              {catalogue.common.redo}
            </button>
            <button type="button" data-opens="readings" onClick={() => model.open("readings")}>
              {words.ring.allReadings}
            </button>
            <button type="button" onClick={() => house.go({ at: "ring-sheet", ring: ring.id })}>
              {words.ring.sheet}
            </button>
          </div>
          <RingKeys model={model} ring={ring} />
        </>
      )}
    </div>
  );
};
