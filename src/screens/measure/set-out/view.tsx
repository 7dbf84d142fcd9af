/** Set out a line: strip, rope, way of counting, how it lies; the position comes while one chooses. */

import { useEffect, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { WAYS, type Way } from "../../../record/kinds/observation.ts";
import { sentenceFor } from "../../catalogue.ts";
import { SENTENCES } from "../../findings/sentences.ts";
import { WorkedOutLater } from "../../findings/worked-out-later.tsx";
import { KIT_FORM } from "../../kit/kit-form.tsx";
import { RopeForm } from "../../kit/rope-form.tsx";
import { Cautions, type ShownCautions, WithCautions } from "../../parts/field-cautions.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { HowTo } from "../../parts/how-to.tsx";
import { Choice, Key, Tick, WriteLine } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { fieldName, stripName } from "../../parts/names.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { type Standing, StandingWords, useStanding } from "../../parts/standing.tsx";
import { STRIP_FORM, StripForm } from "../../parts/strip-form.tsx";
import { Brought, Typed, useForget, useKeeping, useTyped } from "../../parts/typed.tsx";
import { typedHere } from "../../parts/typed-store.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { goToStrip, groundToKeep, isGround, withUsual } from "./ground.ts";
import { GuessLine, isNoGuess, readGuess } from "./guess.tsx";
import { AngleChoice, PlaceChoice, RopeChoice } from "./lie-choices.tsx";
import { addStrip, beginLine, type Choices, layoutOf, readSetOut, type SetOut } from "./model.ts";
import { RowsAndPass } from "./rows-and-pass.tsx";
import { SpotChoice } from "./spot-choice.tsx";
import { GUESS_WORDS } from "./words.guess.ts";

/** The screen before a line. */
export const SetOutScreen = (props: { readonly visit: RecordId<"visit"> }) => {
  const house = useHouse();
  const found = useLive(() => readSetOut(house, props.visit), [props.visit]);
  // Above the form: where somebody stands stays known when it begins afresh.
  const standing = useStanding();
  if (found === undefined) return <div class="frame" aria-busy="true" />;
  if (found === null)
    return (
      <Page title={house.words.value.visit.gone} back={href({ at: "measure" })} area="measure">
        {null}
      </Page>
    );
  return (
    <WithCautions visit={found.visit.id} field={found.field.id} test="line">
      {(cautions) => (
        <Typed form="line">
          <Form setOut={found} cautions={cautions} standing={standing} />
        </Typed>
      )}
    </WithCautions>
  );
};

/** A share of the ground, in percent. */
const MOST_GUESSED = 100;

const Form = (props: {
  readonly setOut: SetOut;
  readonly cautions: ShownCautions;
  readonly standing: Standing;
}) => {
  const { setOut, standing } = props;
  const house = useHouse();
  const words = house.words.value;
  const sentences = useWordsOf(SENTENCES);
  const guessWords = useWordsOf(GUESS_WORDS);
  const [choices, setChoices, fillChoices] = useTyped(
    "choices",
    setOut.first,
    ({ ground, rope }) =>
      isGround(ground, setOut.strips, setOut.spots, setOut.first.ground) &&
      (rope === null || rope === setOut.first.rope || setOut.ropes.some(({ id }) => id === rope)),
  );
  const [adding, setAdding] = useState<"strip" | "rope" | null>(() =>
    typedHere(STRIP_FORM).length > 0 ? "strip" : typedHere(KIT_FORM).length > 0 ? "rope" : null,
  );
  const [guess, setGuess] = useTyped("guess", "");
  const forget = useForget();
  const keeping = useKeeping();
  const [busy, once] = useOnce();
  const choose = (patch: Partial<Choices>) => setChoices((before) => ({ ...before, ...patch }));
  // A strip or rope that was added just now comes with the next reading of the lists.
  useEffect(() => {
    fillChoices((before) => ({
      ...before,
      ground: withUsual(before.ground, setOut.first.ground.strip, setOut.spots),
      rope: before.rope ?? setOut.first.rope,
    }));
  }, [setOut]);
  const rope = setOut.ropes.find(({ id }) => id === choices.rope)?.body;
  const layout = layoutOf(rope?.type === "rope" ? rope : undefined, choices);
  const { ground, rope: ropeId } = choices;
  const lacking = ropeId === null || groundToKeep(ground, setOut.spots) === null;
  const { strip } = ground;
  const guessed = strip === null ? undefined : setOut.guesses.get(strip);
  const asksGuess = strip !== null && guessed === undefined && !setOut.counted.has(strip);
  const noGuess = asksGuess && isNoGuess(guess, MOST_GUESSED);
  const onStrip = (strip: RecordId<"strip">) =>
    setChoices((before) => ({ ...before, ground: goToStrip(before.ground, strip, setOut.spots) }));
  const start = async () => {
    if (ropeId === null) return;
    const goInstead = fromHere(house.goInstead);
    const said = { ...choices, rope: ropeId };
    const line = await keeping(() =>
      beginLine(house, setOut, said, {
        start: standing.stood,
        guess: asksGuess ? readGuess(guess, MOST_GUESSED) : null,
      }),
    );
    if (line === null) return;
    forget();
    goInstead({ at: "line", line });
  };
  return (
    <Page
      title={words.setOut.title}
      under={fieldName(words, setOut.field)}
      back={href({ at: "visit", visit: setOut.visit.id })}
      foot={
        <>
          {lacking ? <p>{words.setOut.needs}</p> : noGuess ? <p>{guessWords.leftOut}</p> : null}
          <Key look="solid" off={lacking || busy} onPress={() => once(start)}>
            {words.setOut.start}
          </Key>
        </>
      }
    >
      <Brought />
      <Cautions now={props.cautions} />
      <StandingWords standing={standing} question={words.setOut.stand} />
      {setOut.strips.length > 0 ? (
        <Choice
          question={words.setOut.strip}
          options={setOut.strips.map((one) => ({ value: one.id, label: stripName(words, one) }))}
          chosen={ground.strip}
          onChoose={onStrip}
        />
      ) : (
        <h2 class="question">{words.setOut.strip}</h2>
      )}
      {adding === "strip" ? (
        <StripForm
          onKeep={async (said) => {
            const id = await addStrip(house, setOut.field.id, said);
            if (id === null) return false;
            onStrip(id);
            // The rope's form may have been opened while the strip was written down.
            setAdding((open) => (open === "strip" ? null : open));
            return true;
          }}
          onClose={() => setAdding(null)}
        />
      ) : (
        <div class="keys two beside">
          {setOut.strips.some(({ body }) => body.wholeField) ? null : (
            <Key
              off={busy}
              onPress={() =>
                once(async () => {
                  const id = await addStrip(house, setOut.field.id, {
                    name: "",
                    done: [],
                    wholeField: true,
                    rep: null,
                  });
                  if (id !== null) onStrip(id);
                })
              }
            >
              {words.setOut.wholeField}
            </Key>
          )}
          <Key onPress={() => setAdding("strip")}>{words.setOut.addStrip}</Key>
        </div>
      )}
      <SpotChoice
        spots={setOut.spots}
        strips={setOut.strips}
        ground={ground}
        usual={setOut.first.ground.strip}
        here={standing.stood.position}
        onChoose={(next) => choose({ ground: next })}
      />
      <GuessLine
        asks={asksGuess}
        typed={guess}
        most={MOST_GUESSED}
        onWrite={setGuess}
        words={guessWords}
        guessed={guessed === undefined ? "" : guessWords.guessed(writeNumber(guessed, TONGUE, 1))}
      />
      {setOut.ropes.length > 0 ? (
        <RopeChoice ropes={setOut.ropes} chosen={ropeId} onChoose={(id) => choose({ rope: id })} />
      ) : (
        <h2 class="question">{words.setOut.rope}</h2>
      )}
      {adding === "rope" ? (
        <RopeForm
          onDone={(id) => {
            if (id !== null) choose({ rope: id });
            setAdding((open) => (open === "rope" ? null : open));
          }}
        />
      ) : (
        <div class="keys two beside">
          <Key onPress={() => setAdding("rope")}>{words.setOut.addRope}</Key>
        </div>
      )}
      <Choice<Way>
        question={words.setOut.way}
        options={WAYS.map((way) => ({
          value: way,
          label: words.setOut.ways[way],
          hint: words.setOut.wayHints[way],
        }))}
        chosen={choices.way}
        onChoose={(way) => choose({ way })}
        column
      />
      <PlaceChoice chosen={choices.place} onChoose={(place) => choose({ place })} />
      <AngleChoice
        chosen={choices.angleToRowsDeg}
        onChoose={(angleToRowsDeg) => choose({ angleToRowsDeg })}
      />
      {layout?.cautions.map((caution) => (
        <p key={caution.code} class="wrong" role="status">
          {sentenceFor(words, caution, sentences)}
        </p>
      ))}
      {layout === null || layout.cautions.length === 0 ? null : (
        <WorkedOutLater of={words.setOut.angle} methods={layout.methods} sources={layout.sources} />
      )}
      <h2>{words.setOut.more}</h2>
      <Tick
        label={words.setOut.thickness}
        on={choices.askThickness}
        onChange={(askThickness) => choose({ askThickness })}
      />
      <WriteLine
        label={words.setOut.fifth}
        hint={words.setOut.fifthHint}
        value={choices.fifthKey ?? ""}
        onWrite={(text) => choose({ fifthKey: text === "" ? null : text })}
      />
      <RowsAndPass choices={choices} onChange={choose} />
      <HowTo topic="line" />
    </Page>
  );
};
