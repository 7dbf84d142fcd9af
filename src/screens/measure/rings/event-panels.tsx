/** Start, stop, and everything that happens to a ring in between. */
import { useState } from "preact/hooks";
import type { Applied } from "../../../record/command/apply.ts";
import { HAPPENINGS, type Happening, type InRing, type StopEntry } from "../../../record/ring/entries.ts";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, WriteLine } from "../../parts/keys.tsx";
import { useOnce } from "../../parts/once.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { happened, lookNow, startRing, stopRing, waterGone } from "./hand.ts";
import { OuterKey } from "./outer-key.tsx";
import { Panel } from "./panel.tsx";
import { WhichRing } from "./read-number.tsx";
import type { RingModel } from "./ring-model.ts";
import { isLoss, lostBy } from "./status.ts";
import { NOW, type When } from "./when.ts";
import { WhenChips } from "./when-chips.tsx";
import { RING_WORDS } from "./words.ts";

interface Of {
  readonly model: RingModel;
  readonly ring: DayRing;
}

/** The ring was started some minutes ago. */
export const StartPanel = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const [when, setWhen] = useState<When>({ how: "minutes-ago", minutes: 1 });
  const [busy, once] = useOnce();
  return (
    <Panel
      question={words.ring.startEarlierQuestion(ring.letter)}
      hint={words.when.legend}
      above={<WhenChips when={when} onWhen={setWhen} lateOnly />}
    >
      <div class="keys two">
        <Key onPress={model.close}>{house.words.value.common.close}</Key>
        <Key
          look="solid"
          off={busy}
          onPress={() => once(async () => void (await model.took(startRing(house, ring, when), "keys")))}
        >
          {house.words.value.common.done}
        </Key>
      </div>
    </Panel>
  );
};

/** The last of the water went some minutes ago, or in the outer ring. */
export const GonePanel = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const [when, setWhen] = useState<When>(NOW);
  const [which, setWhich] = useState<InRing>("inner");
  const [busy, once] = useOnce();
  return (
    <Panel
      question={words.ring.goneQuestion(ring.letter)}
      hint={words.ring.goneHint}
      above={
        <div class="ring-above">
          <WhenChips when={when} onWhen={setWhen} />
          <WhichRing ring={ring} chosen={which} onChoose={setWhich} />
        </div>
      }
    >
      <div class="keys two">
        <Key onPress={model.close}>{house.words.value.common.close}</Key>
        <Key
          look="solid"
          off={busy}
          onPress={() =>
            once(async () => void (await model.took(waterGone(house, ring.id, which, when), "keys")))
          }
        >
          {words.ring.allGone}
        </Key>
      </div>
    </Panel>
  );
};

/** Something happened: one touch each. */
export const HappenedPanel = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const [when, setWhen] = useState<When>(NOW);
  const [note, setNote] = useState("");
  const [busy, once] = useOnce();
  const rains =
    ring.reading.happenings.findLast(({ what }) => what.startsWith("rain"))?.what === "rain-began";
  const offered = HAPPENINGS.filter((what) => what !== (rains ? "rain-began" : "rain-ended"));
  const tell = (what: Happening) =>
    once(async () => {
      const written = happened(house, ring.id, what, note.trim(), when);
      await model.took(written, isLoss(what) ? "lost" : "keys");
    });
  return (
    <Panel
      question={words.ring.happenedQuestion(ring.letter)}
      hint={words.when.legend}
      above={
        <div class="ring-above">
          <WhenChips when={when} onWhen={setWhen} />
        </div>
      }
    >
      <div class="keys two happenings">
        {offered.map((what) => (
          <Key key={what} off={busy} onPress={() => tell(what)}>
            {words.happenings[what]}
          </Key>
        ))}
      </div>
      <WriteLine label={words.ring.inYourWords} value={note} onWrite={setNote} />
      <Key onPress={model.close}>{house.words.value.common.close}</Key>
    </Panel>
  );
};

/**
 * A ring that leaked is ended, or starts again one pace away; the old one is kept and tied to it. One that was
 * moved is a ring of its own at its new spot.
 */
export const LostPanel = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const [busy, once] = useOnce();
  const why = lostBy(ring) ?? "leaked";
  const end = (again: boolean) =>
    once(async () => {
      const goInstead = fromHere(house.goInstead);
      const done =
        ring.reading.stop !== null ||
        (await model.took(stopRing(house, ring.id, why), again ? undefined : "keys"));
      if (done && again) goInstead({ at: "ring-new", visit: ring.header.visit, follows: ring.id });
    });
  return (
    <Panel question={words.lost.question[why](ring.letter)} hint={words.lost.hint[why]}>
      {why === "no-water-left" ? null : (
        <Key look="straw" off={busy} onPress={() => end(true)}>
          {words.lost.again[why]}
        </Key>
      )}
      <Key look={why === "no-water-left" ? "straw" : "plain"} off={busy} onPress={() => end(false)}>
        {words.lost.end}
      </Key>
      <Key off={busy} onPress={model.close}>
        {words.lost.goOn}
      </Key>
    </Panel>
  );
};

const WHYS: readonly StopEntry["why"][] = ["done", "no-water-left", "other"];

/** The test is over. */
export const StopPanel = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const [when, setWhen] = useState<When>(NOW);
  const [busy, once] = useOnce();
  return (
    <Panel
      question={words.ring.stopQuestion(ring.letter)}
      hint={words.ring.stopHint}
      above={
        <div class="ring-above">
          <WhenChips when={when} onWhen={setWhen} />
        </div>
      }
    >
      {WHYS.map((why) => (
        <Key
          key={why}
          off={busy}
          look={why === "done" ? "straw" : "plain"}
          onPress={() =>
            once(async () => void (await model.took(stopRing(house, ring.id, why, when), "keys")))
          }
        >
          {words.stopKeys[why]}
        </Key>
      ))}
      <Key onPress={model.close}>{house.words.value.common.close}</Key>
    </Panel>
  );
};

/** The refill is poured: the level behind it is looked at in one touch. */
export const RefillAfter = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const [busy, once] = useOnce();
  const look = () =>
    once(async () => {
      const written: Promise<readonly Applied[] | null> = lookNow(house, ring.id);
      if (!(await model.took(written, "keys"))) return;
      const made = (await written)?.[0]?.added[0];
      if (made !== undefined) model.refilled(made.id);
    });
  return (
    <Panel question={words.ring.refillAfterQuestion(ring.letter)} hint={words.ring.refillAfterHint}>
      <button type="button" class="key straw ring-large" disabled={busy} onClick={look}>
        {words.ring.readNow}
      </button>
      <OuterKey model={model} ring={ring} behindRefill />
      <Key onPress={model.close}>{house.words.value.common.close}</Key>
    </Panel>
  );
};
