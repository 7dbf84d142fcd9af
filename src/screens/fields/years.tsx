/** What was found on a field by harvest year and strip, newest first: ground cover, worms, soak-in, and paper. */
import { useRef, useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { useAfterFrames } from "../parts/after-frames.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useLastShown } from "../parts/last-shown.ts";
import { useLive } from "../parts/live.ts";
import { NotRead } from "../parts/not-read.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { AddPaper, Papers } from "./papers.tsx";
import { YearsCharts } from "./years-charts.tsx";
import { DayRows } from "./years-day.tsx";
import { OLD_GRASS, readYears, type StripFound, type YearFound, type YearsNow } from "./years-model.ts";
import { useStripNames } from "./years-names.ts";
import { YEARS_WORDS } from "./years-words.ts";
import "./years.css";

/** Days of one year shown before "show more", over all strips. */
const AT_ONCE = 4;
const MORE = 12;

/** @param props.fields the field first, then all that are the same */
export const FieldYears = (props: { readonly fields: readonly RecordId<"field">[] }) => {
  const house = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const settings = house.settings.value;
  const { fields } = props;
  // Read at once, and drawn once the name of the field stands there.
  const now = useLastShown(
    useLive<YearsNow>(
      (meanwhile) => readYears(house, settings, fields, meanwhile),
      [fields.join(" "), settings],
    ),
  );
  const begun = useAfterFrames(1);
  const [field] = fields;
  const openedBehind = useRef<boolean | undefined>(undefined);
  if (now !== undefined) openedBehind.current ??= !now.upToDate;
  const behind = openedBehind.current === true;
  // On a page that stands open a line more would move what is below: its heading says so instead.
  const saysInTitle = now?.upToDate === false && !behind;
  return (
    <section class="ruled field-years">
      <h2>{saysInTitle ? says.titleBefore : says.title}</h2>
      {begun && now !== undefined && field !== undefined && (now.upToDate || now.years.length > 0) ? (
        <Years now={now} field={field} openedBehind={behind} />
      ) : (
        <>
          <p aria-busy="true">{says.working}</p>
          <NotRead />
        </>
      )}
    </section>
  );
};

const Years = (props: {
  readonly now: YearsNow;
  readonly field: RecordId<"field">;
  readonly openedBehind: boolean;
}) => {
  const { now, field } = props;
  const says = useWordsOf(YEARS_WORDS);
  const keyOf = ({ year, said }: YearFound): string => `${year} ${said}`;
  const [newest] = now.years;
  const [turned, setTurned] = useState<ReadonlySet<string>>(new Set());
  const charted = useAfterFrames(1);
  if (newest === undefined)
    return (
      <>
        <p>{says.none}</p>
        <AddPaper field={field} />
      </>
    );
  // The newest year stands open; a touch turns the state of a year round.
  const isOpen = (year: YearFound): boolean => (year === newest) !== turned.has(keyOf(year));
  const turn = (year: YearFound) => {
    const next = new Set(turned);
    if (!next.delete(keyOf(year))) next.add(keyOf(year));
    setTurned(next);
  };
  return (
    <>
      {props.openedBehind ? (
        // It stays where it once stood: nothing below may move when the new results come.
        <p class="aside" role="status" aria-busy={!now.upToDate}>
          {now.upToDate ? says.broughtUpToDate : says.before}
        </p>
      ) : null}
      {now.years.map((year) =>
        isOpen(year) ? (
          <Year key={keyOf(year)} year={year} now={now} field={field} onClose={() => turn(year)} />
        ) : (
          <div class="beside" key={keyOf(year)}>
            <Key onPress={() => turn(year)}>{says.show(says.year(year.year, year.said))}</Key>
          </div>
        ),
      )}
      {charted ? <YearsCharts now={now} /> : <NotRead />}
      <AddPaper field={field} />
    </>
  );
};

/** So many days over all strips, in their order. The newest of old grass always stands beside them. */
const firstDays = (strips: readonly StripFound[], most: number): readonly StripFound[] => {
  let left = most;
  return strips.flatMap((strip) => {
    const days = strip.days.slice(0, Math.max(strip.strip === OLD_GRASS ? 1 : 0, left));
    left -= strip.days.length;
    return days.length + strip.papers.length === 0 ? [] : [{ ...strip, days }];
  });
};

const Year = (props: {
  readonly year: YearFound;
  readonly now: YearsNow;
  readonly field: RecordId<"field">;
  readonly onClose: () => void;
}) => {
  const says = useWordsOf(YEARS_WORDS);
  const nameOf = useStripNames(props.now);
  const [most, setMost] = useState(AT_ONCE);
  const { year, said, strips } = props.year;
  const shown = firstDays(strips, most);
  const daysOf = (all: readonly StripFound[]): number => all.reduce((sum, { days }) => sum + days.length, 0);
  const hidden = daysOf(strips) - daysOf(shown);
  return (
    <div class="found-year">
      <h3>{says.year(year, said)}</h3>
      {said ? null : <p class="aside">{says.notSaid}</p>}
      {shown.map(({ strip, days, papers }) => (
        <div key={strip ?? "field"}>
          <h4>{nameOf(strip)}</h4>
          {strip === OLD_GRASS ? <p class="aside">{says.yardstick}</p> : null}
          {days.map((day) => (
            <DayRows key={day.day} day={day} />
          ))}
          {papers.length === 0 ? null : <Papers papers={papers} field={props.field} />}
        </div>
      ))}
      <div class={`keys beside ${hidden > 0 ? "two" : ""}`}>
        {hidden > 0 ? (
          <Key onPress={() => setMost(most + MORE)}>{says.more(Math.min(hidden, MORE))}</Key>
        ) : null}
        <Key onPress={props.onClose}>{says.hide}</Key>
      </div>
    </div>
  );
};
