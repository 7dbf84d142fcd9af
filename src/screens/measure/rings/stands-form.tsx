/** How a ring stood, corrected: which ring, where, its mulch, its kit, and from the rim to the ground. */
import { useState } from "preact/hooks";
import type { Command } from "../../../record/command/command.ts";
import { NO_STRIP } from "../../../record/ground.ts";
import { changesOf, isChanged } from "../../parts/changes-of.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { stripName } from "../../parts/names.ts";
import { useOnce } from "../../parts/once.ts";
import { useTried } from "../../parts/tried.ts";
import { Brought, Typed, useTyped, useWaysOut } from "../../parts/typed.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { goToStrip, groundCorrected, isOldGrass, leftSpot } from "../set-out/ground.ts";
import { SpotChoice } from "../set-out/spot-choice.tsx";
import { conditionsOf } from "./conditions.ts";
import type { DayRing } from "./day.ts";
import { type Adding, addingAtFirst, KitChoices, WhichRings } from "./kit-choices.tsx";
import { Plan, Rims, rimsToKeep, useRims } from "./new-form.tsx";
import { Reads, Standing, Ways, Wet } from "./new-parts.tsx";
import { planText, readPlan, USUAL_PLAN_MIN } from "./reading-plan.ts";
import { areThere, choicesOf, type RingChoices, type RingSetOut, readRingSetOut } from "./set-out.ts";
import { RING_WORDS } from "./words.ts";

export const StandsForm = (props: { readonly ring: DayRing; readonly onDone: () => void }) => {
  const house = useHouse();
  const { visit } = props.ring.header;
  const found = useLive(() => readRingSetOut(house, visit, null), [visit]);
  return found === undefined || found === null ? null : (
    <Typed form={STANDS_FORM} base={JSON.stringify(props.ring.header)}>
      <Form {...props} setOut={found} />
    </Typed>
  );
};

/** The name of the form on its page. */
export const STANDS_FORM = "stands";

const Form = (props: {
  readonly ring: DayRing;
  readonly setOut: RingSetOut;
  readonly onDone: () => void;
}) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const { setOut: words, sheet } = useWordsOf(RING_WORDS);
  const { ring, onDone } = props;
  const { header } = ring;
  const before = conditionsOf(ring.entries);
  const [plan, setPlan] = useTyped("plan", planText(header.planMin));
  const [adding, setAdding] = useState<Adding>(addingAtFirst);
  const out = useWaysOut(onDone);
  const [tried, triedNow] = useTried();
  const [busy, once] = useOnce();
  const rims = useRims(header.rimToSoilM);
  // Its own ring stands in the ground, and may stay there.
  const taken = new Set([...props.setOut.taken].filter((id) => id !== header.ring && id !== header.outer));
  const setOut = { ...props.setOut, taken };
  const stood = choicesOf(ring);
  const [choices, setChoices] = useTyped("choices", stood, (typed) => areThere(setOut, typed, stood));
  const choose = (patch: Partial<RingChoices>) => setChoices((before) => ({ ...before, ...patch }));
  const { ground } = choices;
  const lies = groundCorrected(ground, stood.ground, setOut.spots);
  const keep = async () => {
    const rimToSoilM = rimsToKeep(rims);
    const planMin = readPlan(plan);
    if (rimToSoilM === undefined || !planMin.ok || lies === null) {
      triedNow();
      return;
    }
    const { place, mulch, ruler, bottle, outer, way, rulerReads, wetness } = choices;
    const said = {
      ring: choices.ring ?? header.ring,
      ...lies,
      place,
      mulch,
      ruler,
      bottle,
      outer,
      way,
      rulerReads,
      rimToSoilM: [...rimToSoilM],
      planMin: [...planMin.value],
    };
    const changes = changesOf(header, said, leftSpot(ground));
    const commands: Command[] = isChanged(changes)
      ? [house.pen.change(ring.id, changes.patch, changes.without)]
      : [];
    if (wetness !== null && wetness !== before.wetness)
      commands.push({
        op: "append",
        id: ring.id,
        frame: null,
        at: house.pen.moment(),
        draft: {
          type: "wetness",
          is: wetness,
          ...(before.wetnessIds.length === 0 ? {} : { replaces: [...before.wetnessIds] }),
        },
      });
    await out.keep(commands);
  };
  return (
    <>
      <Brought />
      <p class="aside">{sheet.correctHint}</p>
      <Rims
        rims={rims}
        heightsM={setOut.kit.rings.find(({ id }) => id === choices.ring)?.body.heightsM ?? []}
        reads={choices.rulerReads}
        tried={tried}
      />
      <Ways
        chosen={choices.way}
        onChoose={(way) => {
          if (plan === planText(USUAL_PLAN_MIN[choices.way])) setPlan(planText(USUAL_PLAN_MIN[way]));
          choose({ way });
        }}
      />
      <Reads chosen={choices.rulerReads} onChoose={(rulerReads) => choose({ rulerReads })} />
      <WhichRings setOut={setOut} choices={choices} onChoose={choose} adding={adding} onAdding={setAdding} />
      {isOldGrass(setOut.spots, ground) ? null : (
        <Choice
          question={words.strip}
          options={setOut.strips.map((one) => ({ value: one.id, label: stripName(catalogue, one) }))}
          chosen={ground.strip}
          onChoose={(strip) => choose({ ground: goToStrip(ground, strip, setOut.spots) })}
        />
      )}
      <SpotChoice
        spots={setOut.spots}
        strips={setOut.strips}
        ground={ground}
        usual={header.strip === NO_STRIP ? null : header.strip}
        here={header.at.position}
        onChoose={(next) => choose({ ground: next })}
      />
      <Standing choices={choices} onChoose={choose} />
      <Wet
        chosen={choices.wetness}
        stays={before.wetness !== null}
        onChoose={(wetness) => choose({ wetness })}
      />
      <KitChoices kit={setOut.kit} choices={choices} onChoose={choose} adding={adding} onAdding={setAdding} />
      <Plan way={choices.way} text={plan} onText={setPlan} />
      {lies === null ? <p>{words.needs}</p> : null}
      <div class="keys two">
        <Key onPress={out.close}>{catalogue.common.close}</Key>
        <Key look="solid" off={busy || lies === null} onPress={() => once(keep)}>
          {sheet.correctKeep}
        </Key>
      </div>
    </>
  );
};
