/** One strip on one day: each number with its unit, how many samples it rests on, and its range. */
import type { ComponentChildren } from "preact";
import type { Result } from "../../record/result.ts";
import type { MeanFound } from "../../science/earthworms/worms-of-field.ts";
import type { Bounds, Caution } from "../../science/estimate.ts";
import { type Mind, Minds } from "../findings/minds.tsx";
import { useNoRange } from "../findings/no-range.ts";
import { useHouse } from "../parts/house.ts";
import { writeDay } from "../parts/numbers.ts";
import { href } from "../parts/route.ts";
import { toVisit } from "../parts/to-visit.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { type DayFound, OLD_GRASS } from "./years-model.ts";
import { type Measure, scaleOf } from "./years-series.ts";
import { YEARS_WORDS } from "./years-words.ts";

/** Writes a range of a measure, or why there is none. */
export const useRangeWords = (): ((range: Result<Bounds>, measure: Measure) => string) => {
  const { words, settings } = useHouse();
  const noRange = useNoRange();
  return (range, measure) => {
    const { common } = words.value;
    if (!range.ok) return noRange(range.problem);
    const { times, write } = scaleOf(measure, settings.value.habits);
    return common.range(write(range.value.lower * times), write(range.value.upper * times));
  };
};

export const DayRows = ({ day }: { readonly day: DayFound }) => {
  const { tongue } = useHouse().words.value.common;
  return (
    <div class="found-day">
      <h5>{writeDay(day.day, tongue)}</h5>
      <ul class="rows">
        {day.cover === null ? null : <CoverRow found={day.cover} strip={day.strip} />}
        {day.worms === null ? null : <WormsRow found={day.worms} />}
        {day.soaked === null ? null : <SoakedRow found={day.soaked} />}
      </ul>
    </div>
  );
};

/** They stand in the row of their number. */
const mindsOf = (cautions: readonly Caution[]): readonly Mind[] =>
  cautions.map((caution) => ({ of: null, caution }));

/** A row that leads to where the number is explained. */
const Row = (props: {
  readonly to: string;
  readonly name: string;
  readonly under: readonly string[];
  readonly value: string | null;
  readonly unit: string;
  readonly children?: ComponentChildren;
}) => (
  <li>
    <a class="row" href={props.to}>
      <span>
        {props.name}
        {props.under.map((line) => (
          <small key={line}>{line}</small>
        ))}
      </span>
      {props.value === null ? null : (
        <span class="value">
          {props.value}
          <small> {props.unit}</small>
        </span>
      )}
    </a>
    {props.children}
  </li>
);

const CoverRow = (props: {
  readonly found: NonNullable<DayFound["cover"]>;
  readonly strip: DayFound["strip"];
}) => {
  const { words, settings } = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const rangeOf = useRangeWords();
  const { found, strip } = props;
  const { cover, places, unfinished } = found;
  const { place } = words.value;
  const { times, write } = scaleOf("cover", settings.value.habits);
  const unlike = places.map((one) => (one === null ? says.placeNotSaid : place[one])).join(", ");
  return (
    <Row
      to={
        // How old grass was worked out stands with the yardstick of its day.
        strip === null || strip === OLD_GRASS
          ? toVisit(found.visits)
          : href({ at: "worked-out", strip, visit: found.visits[0] ?? null })
      }
      name={says.cover}
      under={[
        ...(places.length > 1 ? [says.unlike(unlike)] : []),
        cover.ok ? `${rangeOf(cover.value.range, "cover")} · ${says.lines(cover.value.n)}` : says.noLine,
        ...(unfinished > 0 ? [says.open(unfinished)] : []),
      ]}
      value={cover.ok ? write(cover.value.value * times) : null}
      unit="%"
    >
      <Minds minds={mindsOf(found.cautions)} />
    </Row>
  );
};

const WormsRow = ({ found }: { readonly found: NonNullable<DayFound["worms"]> }) => {
  const { settings } = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const rangeOf = useRangeWords();
  const { perHole, perM2, unfinished } = found;
  const write = scaleOf("worms-per-hole", settings.value.habits).write;
  const behind = (mean: MeanFound, measure: Measure): string =>
    `${rangeOf(mean.range, measure)} · ${says.holes(mean.n)}`;
  const first = perHole.ok ? perHole : perM2;
  return (
    <Row
      to={toVisit(found.visits)}
      name={perHole.ok || !perM2.ok ? says.worms : says.wormsPerM2Only}
      under={[
        first.ok ? behind(first.value, "worms-per-hole") : says.noHole,
        ...(perHole.ok && perM2.ok
          ? [`${says.perM2(write(perM2.value.value))} · ${rangeOf(perM2.value.range, "worms-per-m2")}`]
          : []),
        ...(unfinished > 0 ? [says.open(unfinished)] : []),
      ]}
      value={first.ok ? write(first.value.value) : null}
      unit=""
    >
      <Minds minds={mindsOf(found.cautions.filter(({ code }) => code !== "science/holes-unfinished"))} />
    </Row>
  );
};

const SoakedRow = ({ found }: { readonly found: NonNullable<DayFound["soaked"]> }) => {
  const { settings } = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const rangeOf = useRangeWords();
  const { habits } = settings.value;
  const { times, write } = scaleOf("soaked", habits);
  const behind = (mean: MeanFound): string =>
    `${rangeOf(mean.range, "soaked")} · ${says.ofRings(mean.n, found.rings)}`;
  const hour = found.after.find(({ minutes }) => minutes === 60)?.depth;
  const others = found.after.flatMap(({ minutes, depth }) =>
    minutes === 60 || !depth.ok
      ? []
      : [
          `${says.after(minutes)}: ${write(depth.value.value * times)} ${habits.depthSoaked} · ${behind(depth.value)}`,
        ],
  );
  return (
    <Row
      to={toVisit(found.visits)}
      name={hour?.ok === true ? says.soaked(60) : says.soakedIn}
      under={[hour?.ok === true ? behind(hour.value) : says.noSoak(found.rings), ...others]}
      value={hour?.ok === true ? write(hour.value.value * times) : null}
      unit={habits.depthSoaked}
    >
      <Minds minds={mindsOf(found.cautions)} />
    </Row>
  );
};
