/** Set out a ring: ring, strip, place, mulch, how it is read; the position comes while one chooses. */

import { useEffect, useState } from "preact/hooks";
import { readClock } from "../../../device/clock.ts";
import type { RecordId } from "../../../record/ids.ts";
import { RainPlace } from "../../fields/rain-place.tsx";
import { Cautions, type ShownCautions, WithCautions } from "../../parts/field-cautions.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { HowTo } from "../../parts/how-to.tsx";
import { Choice, Key } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { LockedPhone } from "../../parts/locked-phone.tsx";
import { fieldName, stripName } from "../../parts/names.ts";
import { writeClock } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { type Standing as StandingStill, StandingWords, useStanding } from "../../parts/standing.tsx";
import { Brought, Typed, useForget, useKeeping, useTyped } from "../../parts/typed.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { goToStrip, groundToKeep, withUsual } from "../set-out/ground.ts";
import { addStrip } from "../set-out/model.ts";
import { SpotChoice } from "../set-out/spot-choice.tsx";
import { proposedStarts, STILL_TO_COME } from "./gaps.ts";
import { type Adding, addingAtFirst, KitChoices, WhichRings } from "./kit-choices.tsx";
import { Guess, Plan, Rims, rimsToKeep, useGuess, useRims } from "./new-form.tsx";
import { NewStrip, Reads, Standing, Ways, Wet } from "./new-parts.tsx";
import { planText, readPlan, USUAL_PLAN_MIN } from "./reading-plan.ts";
import {
  areThere,
  asBefore,
  nextFree,
  type RingChoices,
  type RingSetOut,
  readRingSetOut,
  setOutRing,
} from "./set-out.ts";
import { ringNow } from "./tick.ts";
import { RING_WORDS } from "./words.ts";
import "./rings.css";
import { useTried } from "../../parts/tried.ts";

/** The screen before a ring. */
export const NewRingScreen = (props: {
  readonly visit: RecordId<"visit">;
  readonly follows: RecordId<"observation"> | null;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).setOut;
  const found = useLive(
    () => readRingSetOut(house, props.visit, props.follows),
    [props.visit, props.follows],
  );
  // Above the form: where somebody stands stays known when it begins afresh.
  const standing = useStanding();
  if (found === undefined) return <div class="frame" aria-busy="true" />;
  if (found === null)
    return (
      <Page title={words.notHere} back={href({ at: "measure" })} area="measure">
        {null}
      </Page>
    );
  return (
    <WithCautions visit={found.visit.id} field={found.field.id} test="ring">
      {(cautions) => (
        <Typed form="ring">
          <Form setOut={found} cautions={cautions} standing={standing} />
        </Typed>
      )}
    </WithCautions>
  );
};

const Form = (props: {
  readonly setOut: RingSetOut;
  readonly cautions: ShownCautions;
  readonly standing: StandingStill;
}) => {
  const { setOut, cautions, standing } = props;
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(RING_WORDS).setOut;
  const [choices, setChoices, fillChoices] = useTyped("choices", setOut.first, (typed) =>
    areThere(setOut, typed, setOut.first),
  );
  const [plan, setPlan] = useTyped("plan", planText(setOut.first.planMin));
  const [adding, setAdding] = useState<Adding>(addingAtFirst);
  const forget = useForget();
  const keeping = useKeeping();
  const [tried, triedNow] = useTried();
  const [busy, once] = useOnce();
  const rims = useRims([]);
  const guess = useGuess();
  const choose = (patch: Partial<RingChoices>) => setChoices((before) => ({ ...before, ...patch }));
  const { kit, taken, follows, moved } = setOut;
  // A strip or ring that was added just now comes with the next reading of the lists.
  useEffect(() => {
    fillChoices((before) => ({
      ...before,
      ground: withUsual(before.ground, setOut.first.ground.strip, setOut.spots),
      ring: before.ring ?? setOut.first.ring,
    }));
  }, [setOut]);
  const { ground, ring } = choices;
  const { strip } = ground;
  const kept = groundToKeep(ground, setOut.spots);
  const onStrip = (id: RecordId<"strip">) =>
    setChoices((before) => ({ ...before, ground: goToStrip(before.ground, id, setOut.spots) }));
  const asksGuess = strip !== null && !setOut.guessed.has(strip);
  const planMin = readPlan(plan);
  const start = proposedStarts(setOut.rings, ringNow(), {
    planMin: planMin.ok ? planMin.value : [],
  }).get(STILL_TO_COME);
  const ringItem = kit.rings.find(({ id }) => id === ring);
  const takeAsBefore = () => {
    if (setOut.before === null) return;
    const next = asBefore(setOut.before, nextFree(kit.rings, taken));
    setChoices(next);
    setPlan(planText(next.planMin));
  };
  const keep = async () => {
    const rimToSoilM = rimsToKeep(rims);
    const guessMm = asksGuess ? guess.mm : null;
    if (kept === null || ring === null) return;
    if (!planMin.ok || rimToSoilM === undefined || guessMm === undefined) {
      triedNow();
      return;
    }
    const goInstead = fromHere(house.goInstead);
    const said = { ...choices, ground: kept, ring, planMin: planMin.value };
    const at = standing.stood;
    const made = await keeping(() => setOutRing(house, setOut, said, { rimToSoilM, at, guessMm }));
    if (made === null) return;
    forget();
    goInstead({ at: "ring", ring: made });
  };
  return (
    <Page
      title={follows === null ? words.title : moved ? words.titleMoved : words.titleAgain}
      under={fieldName(catalogue, setOut.field)}
      back={href({ at: "rings", visit: setOut.visit.id })}
      foot={
        <>
          {kept === null || ring === null ? <p>{words.needs}</p> : null}
          <Key look="solid" off={kept === null || ring === null || busy} onPress={() => once(keep)}>
            {words.keep}
          </Key>
        </>
      }
    >
      {follows === null ? null : (
        <p class="caution-box">{words[moved ? "moved" : "follows"](follows.letter)}</p>
      )}
      <Brought />
      <Cautions now={cautions} />
      <LockedPhone />
      {setOut.before === null || follows !== null ? null : (
        <div class="keys beside">
          <Key look="straw" onPress={takeAsBefore}>
            <span>
              {words.asBefore}
              <small class="key-hint">{words.asBeforeHint(setOut.before.letter)}</small>
            </span>
          </Key>
        </div>
      )}
      <StandingWords standing={standing} question={words.stand} />
      <WhichRings setOut={setOut} choices={choices} onChoose={choose} adding={adding} onAdding={setAdding} />
      {setOut.strips.length > 0 ? (
        <Choice
          question={words.strip}
          options={setOut.strips.map((one) => ({ value: one.id, label: stripName(catalogue, one) }))}
          chosen={strip}
          onChoose={onStrip}
        />
      ) : (
        <h2 class="question">{words.strip}</h2>
      )}
      <NewStrip
        open={adding === "strip"}
        wholeField={!setOut.strips.some(({ body }) => body.wholeField)}
        onOpen={(open) => setAdding(open ? "strip" : null)}
        onAdd={async (said) => {
          const id = await addStrip(house, setOut.field.id, said);
          if (id !== null) onStrip(id);
          return id !== null;
        }}
      />
      <SpotChoice
        spots={setOut.spots}
        strips={setOut.strips}
        ground={ground}
        usual={setOut.first.ground.strip}
        here={standing.stood.position}
        onChoose={(next) => choose({ ground: next })}
      />
      {asksGuess ? <Guess of={guess} tried={tried} /> : null}
      <Standing choices={choices} onChoose={choose} />
      <Ways
        chosen={choices.way}
        onChoose={(way) => {
          if (plan === planText(USUAL_PLAN_MIN[choices.way])) setPlan(planText(USUAL_PLAN_MIN[way]));
          choose({ way });
        }}
      />
      <Reads chosen={choices.rulerReads} onChoose={(rulerReads) => choose({ rulerReads })} />
      <Rims rims={rims} heightsM={ringItem?.body.heightsM ?? []} reads={choices.rulerReads} tried={tried} />
      <h2>{words.more}</h2>
      <KitChoices kit={kit} choices={choices} onChoose={choose} adding={adding} onAdding={setAdding} />
      <Wet chosen={choices.wetness} onChoose={(wetness) => choose({ wetness })} />
      <RainPlace visit={setOut.visit.id} />
      <Plan way={choices.way} text={plan} onText={setPlan} />
      {start === undefined ? null : (
        <p class="aside" role="status">
          {start - readClock().wallMs < 60_000
            ? words.startNow
            : words.startAt(writeClock(Math.ceil(start / 60_000) * 60_000, catalogue.common.tongue))}
        </p>
      )}
      <HowTo topic="ring" />
    </Page>
  );
};
