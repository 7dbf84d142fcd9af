/** The keys of a ring: the reading largest, everything else below it. They never move while the ring runs. */
import { useRef } from "preact/hooks";
import { isWetGlass, type KeyTouch } from "../../../device/glass.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { lookNow, startRing, waterGone } from "./hand.ts";
import type { Panel, RingModel } from "./ring-model.ts";
import { stageOf } from "./status.ts";
import { NOW } from "./when.ts";
import { RING_WORDS } from "./words.ts";

interface Of {
  readonly model: RingModel;
  readonly ring: DayRing;
}

/** A touch on another key within a quarter of a second comes from wet glass. */
const useDry = (): ((key: string, atMs: number, job: () => void) => void) => {
  const last = useRef<KeyTouch | null>(null);
  return (key, atMs, job) => {
    const touch: KeyTouch = { key, atMs };
    if (isWetGlass(last.current, touch)) return;
    last.current = touch;
    job();
  };
};

export const RingKeys = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).ring;
  const dry = useDry();
  const { way } = ring.header;
  const { visit } = ring.header;
  const stage = stageOf(ring);
  const open = ring.reading.openLooks.length;
  const key = (name: string, label: string, job: () => void, opens?: Panel | "refill") => (
    <button
      type="button"
      class="key"
      key={name}
      data-opens={opens}
      onClick={(event) => dry(name, event.timeStamp, job)}
    >
      {label}
    </button>
  );
  const opens = (panel: Panel, label: string) => key(`open ${panel}`, label, () => model.open(panel), panel);
  const large = (label: string, job: () => void, answer?: "look") => (
    <button
      type="button"
      class="key straw ring-large"
      data-answer={answer}
      onClick={(event) => dry("large", event.timeStamp, job)}
    >
      {label}
    </button>
  );
  if (stage === "stopped")
    return (
      <div class="count-keys over">
        <LinkKey to={href({ at: "rings", visit })} look="straw">
          {words.toBoard}
        </LinkKey>
        <LinkKey to={href({ at: "ring-sheet", ring: ring.id })}>{words.toSheet}</LinkKey>
        {open > 0 ? (
          <Key onPress={() => model.putOff(false)}>{words.writeNumbers(open)}</Key>
        ) : (
          <LinkKey to={href({ at: "ring-new", visit, follows: null })}>{words.another}</LinkKey>
        )}
      </div>
    );
  if (stage === "waiting")
    return (
      <div class="count-keys">
        {large(words.start, () => void model.took(startRing(house, ring, NOW), "keys"))}
        <div class="keys two">
          {opens("start", words.startEarlier)}
          {opens("happened", words.happened)}
        </div>
      </div>
    );
  const earlier = opens("level", words.readEarlier);
  const gone = key("gone", words.gone, () =>
    ring.header.outer === null
      ? void model.took(waterGone(house, ring.id, "inner", NOW))
      : model.open("gone"),
  );
  const refill = key(
    "refill",
    words.refill,
    () => {
      void model.took(lookNow(house, ring.id), "keys").then((done) => {
        if (done) model.startRefill();
      });
    },
    "refill",
  );
  return (
    <div class="count-keys">
      {open > 0 ? (
        <Key look="solid" onPress={() => model.putOff(false)}>
          {words.writeNumbers(open)}
        </Key>
      ) : null}
      {large(words.readNow, () => void model.took(lookNow(house, ring.id), "keys"), "look")}
      {ring.header.outer === null
        ? null
        : key("outer", words.readOuter, () => void model.took(lookNow(house, ring.id, "outer"), "keys"))}
      <div class="keys two">
        {way === "ruler" ? (
          <>
            {earlier}
            {refill}
            {gone}
            {opens("gone", words.goneEarlier)}
          </>
        ) : way === "measured-pour" ? (
          <>
            {gone}
            {opens("pour", words.poured)}
            {opens("gone", words.goneEarlier)}
            {earlier}
          </>
        ) : (
          <>
            {opens("pour", words.toppedUp)}
            {earlier}
          </>
        )}
        {opens("happened", words.happened)}
        {opens("stop", words.stop)}
      </div>
    </div>
  );
};
