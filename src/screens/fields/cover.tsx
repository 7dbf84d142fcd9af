/** Ground cover of a field: per harvest year and strip, newest visit first. */
import { useState } from "preact/hooks";
import type { StripOnDay } from "../../science/ground-cover/field-cover.ts";
import { Key } from "../parts/keys.tsx";
import { writeDay, writePercent } from "../parts/numbers.ts";
import { rangeWords } from "../parts/range-words.ts";
import { href } from "../parts/route.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsWith } from "../parts/words-of.ts";
import { type CoverNow, nameWithFate, stripsOfYear, type YearOfField, yearsOf } from "./cover-model.ts";
import type { FieldNow } from "./model.ts";
import { FIELD_WORDS } from "./words.ts";

/** Results of one year shown before "show more". */
const AT_ONCE = 12;

export const Cover = (props: { readonly now: FieldNow; readonly found: CoverNow | undefined }) => {
  const words = useWordsWith(FIELD_WORDS);
  const [open, setOpen] = useState<YearOfField["year"] | null>(null);
  const years = yearsOf(props.now.visits);
  if (years.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.fields.cover}</h2>
      <div class="keys">
        {years.map((year) => {
          const number = year.said ? year.year : -year.year;
          return number === open ? (
            <Year key={number} year={year} found={props.found} />
          ) : (
            <Key key={number} onPress={() => setOpen(number)}>
              {year.said ? words.fields.showHarvestYear(year.year) : words.fields.showCalendarYear(year.year)}
            </Key>
          );
        })}
      </div>
    </section>
  );
};

const Year = (props: { readonly year: YearOfField; readonly found: CoverNow | undefined }) => {
  const words = useWordsWith(FIELD_WORDS);
  const [most, setMost] = useState(AT_ONCE);
  const { year, found } = props;
  const strips = found === undefined ? [] : stripsOfYear(found.cover.onDays, year);
  let left = most;
  const shown = strips.flatMap(({ strip, onDays }) => {
    const days = onDays.slice(0, left);
    left -= days.length;
    return days.length === 0 ? [] : [{ strip, days }];
  });
  const hidden = strips.reduce((sum, { onDays }) => sum + onDays.length, 0) - most;
  return (
    <div class="year" aria-busy={found === undefined}>
      <h3>{year.said ? words.fields.harvestYear(year.year) : words.fields.calendarYear(year.year)}</h3>
      {found !== undefined && shown.length === 0 ? <p>{words.fields.noFinished}</p> : null}
      {shown.map(({ strip, days }) => (
        <div key={strip}>
          <h4>{nameWithFate(words, found?.strips.get(strip))}</h4>
          <ul class="rows">
            {days.map((one) => (
              <li key={one.day}>
                <OnDay one={one} />
              </li>
            ))}
          </ul>
        </div>
      ))}
      {hidden > 0 ? (
        <Key onPress={() => setMost(most + AT_ONCE)}>{words.fields.more(Math.min(hidden, AT_ONCE))}</Key>
      ) : null}
    </div>
  );
};

const OnDay = ({ one }: { readonly one: StripOnDay }) => {
  const words = useWordsWith(FIELD_WORDS);
  const day = writeDay(one.day, words.common.tongue);
  const { cover } = one;
  return (
    <a class="row" href={href({ at: "worked-out", strip: one.strip, visit: one.visits[0] ?? null })}>
      <span>
        {day}
        <small>
          {cover.ok
            ? `${rangeWords(words, cover.value)} · ${words.common.lines(cover.value.n)}`
            : words.fields.noFinished}
        </small>
      </span>
      {cover.ok ? (
        <span class="value">
          {writePercent(cover.value.value, TONGUE)}
          <small> {words.common.percent}</small>
        </span>
      ) : null}
    </a>
  );
};
