/** Strips of one day side by side: like with like, then what was seen, then what it proves. */
import { useMemo, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { DemoNote } from "../../demo/demo-note.tsx";
import { nameWithFate } from "../../fields/cover-model.ts";
import { readDay } from "../../measure/visit/day-strips.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key, LinkKey } from "../../parts/keys.tsx";
import { useLastShown } from "../../parts/last-shown.ts";
import { useLive } from "../../parts/live.ts";
import { fieldName } from "../../parts/names.ts";
import { writeDay, writeNumber } from "../../parts/numbers.ts";
import { grassNames } from "../../parts/old-grass.ts";
import { Page } from "../../parts/page.tsx";
import { href, type Route } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { Drawing, type Drawn } from "../drawing.tsx";
import { WorkedOutKey, workedByAll } from "../method-list.tsx";
import { type OnlyAt, onlyAt, writeOnlyAt } from "./at-place.ts";
import { answersOf, Cautions } from "./cautions.tsx";
import { LikeWithLike } from "./like.tsx";
import { type MeasureNow, type SideBySideNow, sideBySideOf } from "./model.ts";
import { shortUnit, withUnit } from "./numbers.ts";
import { Said } from "./said.tsx";
import { measureName } from "./say.ts";
import { guessOf, otherDayOf } from "./sides.ts";
import { StripsTable } from "./table.tsx";
import { SIDE_WORDS } from "./words.ts";
import "../findings.css";
import "./side-by-side.css";

export const SideBySideScreen = (props: {
  readonly visit: RecordId<"visit">;
  readonly strip: RecordId<"strip"> | null;
  /** The places against the row whose tests alone are compared, as the address says them. */
  readonly only?: string | undefined;
}) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(SIDE_WORDS);
  const settings = house.settings.value;
  const day = useLastShown(useLive(() => readDay(house, settings, props.visit), [props.visit, settings]));
  const now = useMemo(
    () => (day === undefined ? day : sideBySideOf(day, settings, props.strip, onlyAt(props.only))),
    [day, settings, props.strip, props.only],
  );
  const back = href({ at: "visit", visit: props.visit });
  const under =
    now === undefined || now === null
      ? "\u00a0"
      : `${fieldName(catalogue, now.day.same.field)} · ${writeDay(now.visit.body.day, catalogue.common.tongue)}`;
  return (
    <Page title={words.title} under={under} back={back} area="findings">
      {now === undefined ? null : now === null ? (
        <h2>{words.gone}</h2>
      ) : (
        <Strips now={now} only={onlyAt(props.only)} />
      )}
    </Page>
  );
};

const routeOf = (
  { visit, base }: SideBySideNow,
  only: OnlyAt,
  strip: RecordId<"strip"> | null = base?.id ?? null,
): Route => ({ at: "side-by-side", visit: visit.id, strip, only: writeOnlyAt(only) });

const Strips = ({ now, only }: { readonly now: SideBySideNow; readonly only: OnlyAt }) => {
  const house = useHouse();
  const words = useWordsOf(SIDE_WORDS);
  const [anyway, setAnyway] = useState(false);
  const { day, measures, isUnlike, looks, visit } = now;
  const compared = measures.filter(({ likeness, offered }) => likeness.length > 0 || offered.length > 0);
  const isShown = !isUnlike || anyway;
  const places = measures.some((one) => one.places.length > 0);
  return (
    <>
      <DemoNote id={day.same.field.id} />
      {day.strips.length < 2 ? <h2>{words.alone}</h2> : <Which now={now} only={only} />}
      {compared.length === 0 ? null : (
        <section>
          <h2>{words.like}</h2>
          {compared.map((one) => (
            <LikeWithLike
              key={one.asked.measure}
              measure={one}
              onPlace={(place) => house.goInstead(routeOf(now, { ...only, [one.asked.measure]: place }))}
            />
          ))}
          {isShown ? isUnlike ? <p class="aside">{words.comparedAnyway}</p> : null : <p>{words.notAlike}</p>}
          {isShown ? null : (
            <div class="keys after-found">
              <Key
                look="straw"
                onPress={() => {
                  setAnyway(true);
                  house.say(words.comparedAnyway);
                }}
              >
                {words.anyway}
              </Key>
            </div>
          )}
        </section>
      )}
      {isShown ? measures.map((one) => <Part key={one.asked.measure} now={now} measure={one} />) : null}
      {isShown && compared.length > 0 ? (
        <section class="ruled">
          {places ? <p class="unlike">{words.ground}</p> : null}
          {looks > 1 ? <p>{words.manyLooks(looks)}</p> : null}
          <p class="aside">{words.local}</p>
        </section>
      ) : null}
      <div class="keys two ruled">
        <LinkKey to={href({ at: "visit", visit: visit.id })}>{words.toVisit}</LinkKey>
        <LinkKey to={href({ at: "help-topic", topic: "compare" })}>{words.meaning}</LinkKey>
      </div>
    </>
  );
};

/** Which strip the others are set against, where there are more than two. */
const Which = ({ now, only }: { readonly now: SideBySideNow; readonly only: OnlyAt }) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(SIDE_WORDS);
  const { day, base, measures } = now;
  if (day.strips.length < 3 || measures.every(({ places }) => places.length === 0)) return null;
  return (
    <Choice
      question={words.which}
      options={day.strips.map(({ id, strip }) => ({ value: id, label: nameWithFate(catalogue, strip) }))}
      chosen={base?.id ?? null}
      onChoose={(strip) => house.goInstead(routeOf(now, only, strip))}
    />
  );
};

const Part = ({ now, measure }: { readonly now: SideBySideNow; readonly measure: MeasureNow }) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(SIDE_WORDS);
  const { habits } = house.settings.value;
  const [table, setTable] = useState(false);
  const { asked, sides, yardstick } = measure;
  const name = measureName(words, catalogue, measure);
  const grass = grassNames(now.yardstick?.spots ?? []);
  // A yardstick of another day says which.
  const grassDay = otherDayOf(now.yardstick, asked.measure, now.visit.body.day);
  const drawn: readonly Drawn[] = [
    ...sides.map(({ strip, estimate }): Drawn => {
      const guess = guessOf(strip, asked);
      return {
        key: strip.id,
        name: nameWithFate(catalogue, strip.strip),
        to: null,
        found: estimate,
        beside: guess === null ? [] : [words.guessed(withUnit(asked.measure, guess, habits))],
      };
    }),
    ...(yardstick?.ok === true
      ? [
          {
            key: "old-grass",
            name: [
              words.grass,
              ...(grass === "" ? [] : [grass]),
              ...(grassDay === null ? [] : [writeDay(grassDay, catalogue.common.tongue)]),
            ].join(", "),
            to: null,
            found: yardstick.value,
            beside: [],
          },
        ]
      : []),
  ];
  const unit =
    asked.measure === "cover"
      ? words.unit.cover
      : asked.measure === "worms"
        ? words.unit[asked.per]
        : words.unit.soak(writeNumber(asked.minutes, TONGUE), shortUnit("soak", habits));
  return (
    <section class="ruled">
      <h2>{name}</h2>
      <p>{unit}</p>
      <h3>{words.seen}</h3>
      {table ? (
        <StripsTable measure={measure} drawn={drawn} />
      ) : (
        <Drawing measure={asked.measure} drawn={drawn} target={null} />
      )}
      <div class="keys after-found">
        <Key onPress={() => setTable(!table)}>{table ? words.showDrawing : words.showTable}</Key>
      </div>
      <h3>{words.proves}</h3>
      <Said measure={measure} />
      {asked.measure === "soak" ? <p class="aside">{words.ringsCompare}</p> : null}
      <Cautions measure={measure} />
      <WorkedOutKey of={name} {...workedByAll(answersOf(measure))} />
    </section>
  );
};
