/** Dig a hole: worm method or own sizes, strip, place, a position taken standing still, and a guess first. */

import { useEffect } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { PLACES } from "../../../record/shapes.ts";
import { Cautions, type ShownCautions, WithCautions } from "../../parts/field-cautions.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { HowTo } from "../../parts/how-to.tsx";
import { Choice, Key } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { fieldName } from "../../parts/names.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { type Standing, StandingWords, useStanding } from "../../parts/standing.tsx";
import { Brought, Typed, useForget, useKeeping, useTyped } from "../../parts/typed.tsx";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { goToStrip, groundToKeep, isGround, withUsual } from "../set-out/ground.ts";
import { GuessLine, isNoGuess, readGuess } from "../set-out/guess.tsx";
import { SpotChoice } from "../set-out/spot-choice.tsx";
import { MethodChoice } from "./method-choice.tsx";
import {
  beginHole,
  type Choices,
  type Dig,
  dimensionsOf,
  hemisphereOf,
  isTemplate,
  readDig,
} from "./new-model.ts";
import { StripChoice } from "./strip-choice.tsx";
import { HOLE_WORDS } from "./words.ts";
import "./hole.css";

/** The screen before a hole. */
export const NewHoleScreen = (props: { readonly visit: RecordId<"visit"> }) => {
  const house = useHouse();
  const dig = useLive(() => readDig(house, props.visit), [props.visit]);
  // Above the form: where somebody stands stays known when it begins afresh.
  const standing = useStanding();
  if (dig === undefined) return <div class="frame" aria-busy="true" />;
  if (dig === null)
    return (
      <Page title={house.words.value.visit.gone} back={href({ at: "measure" })} area="measure">
        {null}
      </Page>
    );
  return (
    <WithCautions visit={dig.visit.id} field={dig.visit.body.field} test="hole">
      {(cautions) => (
        <Typed form="hole">
          <Form dig={dig} cautions={cautions} standing={standing} />
        </Typed>
      )}
    </WithCautions>
  );
};

/** Most worms per hole that anybody may guess. */
const MOST_GUESSED = 10_000;

const Form = (props: {
  readonly dig: Dig;
  readonly cautions: ShownCautions;
  readonly standing: Standing;
}) => {
  const { dig, cautions, standing } = props;
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(HOLE_WORDS);
  const [choices, setChoices, fillChoices] = useTyped(
    "choices",
    dig.first,
    ({ ground, own }) =>
      isGround(ground, dig.strips, dig.spots, dig.first.ground) &&
      isTemplate(own?.template ?? null, dig.templates, dig.first.own),
  );
  const [guess, setGuess] = useTyped("guess", "");
  const forget = useForget();
  const keeping = useKeeping();
  const [busy, once] = useOnce();
  const choose = (patch: Partial<Choices>) => setChoices((before) => ({ ...before, ...patch }));
  // A strip that was added just now comes with the next reading of the list.
  useEffect(() => {
    fillChoices((before) => ({
      ...before,
      ground: withUsual(before.ground, dig.first.ground.strip, dig.spots),
    }));
  }, [dig]);
  const { ground } = choices;
  const { strip } = ground;
  const kept = groundToKeep(ground, dig.spots);
  const dimensions = dimensionsOf(choices);
  const hemisphere = hemisphereOf(standing.stood.position) ?? dig.hemisphere;
  const asksGuess = strip !== null && !dig.guesses.has(strip) && !dig.dug.has(strip);
  const noGuess = asksGuess && isNoGuess(guess, MOST_GUESSED);
  const lacks = kept === null ? words.dig.needs : dimensions === null ? words.dig.needsSize : null;
  const asBefore = dig.last !== null && sameChoices(choices, dig.first);
  const start = async () => {
    if (kept === null || dimensions === null) return;
    const goInstead = fromHere(house.goInstead);
    const at = standing.stood;
    const begin = {
      choices,
      ground: kept,
      dimensions,
      at,
      guess: asksGuess ? readGuess(guess, MOST_GUESSED) : null,
    };
    const hole = await keeping(() => beginHole(house, dig, begin));
    if (hole === null) return;
    forget();
    goInstead({ at: "hole", hole });
  };
  return (
    <Page
      title={words.dig.title}
      under={fieldName(catalogue, dig.field)}
      end={words.title(dig.number)}
      back={href({ at: "visit", visit: dig.visit.id })}
      foot={
        <>
          {lacks !== null ? <p>{lacks}</p> : noGuess ? <p>{words.dig.leftOut}</p> : null}
          <Key look="solid" off={lacks !== null || busy} onPress={() => once(start)}>
            {asBefore && dig.last !== null
              ? words.dig.startAs(dig.number, dig.last.header.number)
              : words.dig.startNumber(dig.number)}
          </Key>
        </>
      }
    >
      <Brought />
      <Cautions now={cautions} />
      <MethodChoice
        dig={dig}
        choices={choices}
        hemisphere={hemisphere}
        onChoose={choose}
        onOwn={(own) => fillChoices((before) => ({ ...before, own }))}
      />
      <StandingWords standing={standing} question={words.dig.stand} />
      <StripChoice
        field={dig.field.id}
        strips={dig.strips}
        chosen={strip}
        onChoose={(id) =>
          setChoices((before) => ({ ...before, ground: goToStrip(before.ground, id, dig.spots) }))
        }
      />
      <SpotChoice
        spots={dig.spots}
        strips={dig.strips}
        ground={ground}
        usual={dig.first.ground.strip}
        here={standing.stood.position}
        onChoose={(next) => choose({ ground: next })}
      />
      <GuessLine
        asks={asksGuess}
        typed={guess}
        most={MOST_GUESSED}
        onWrite={setGuess}
        words={words.dig}
        guessed={
          strip === null || !dig.guesses.has(strip)
            ? ""
            : words.dig.guessed(writeNumber(dig.guesses.get(strip) ?? 0, TONGUE, 1))
        }
      />
      <Choice
        question={words.dig.placeQuestion}
        options={[
          ...PLACES.map((place) => ({ value: place, label: catalogue.place[place] })),
          { value: "unsaid" as const, label: catalogue.setOut.unplaced },
        ]}
        chosen={choices.place ?? "unsaid"}
        onChoose={(place) => choose({ place: place === "unsaid" ? null : place })}
      />
      <HowTo topic="hole" />
    </Page>
  );
};

const sameChoices = (a: Choices, b: Choices): boolean =>
  a.method === b.method &&
  a.ground.strip === b.ground.strip &&
  a.ground.spot === b.ground.spot &&
  a.place === b.place &&
  a.landUse === b.landUse &&
  JSON.stringify(a.own) === JSON.stringify(b.own);
