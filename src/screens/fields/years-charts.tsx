/** The charts of a field over its harvest years, one for each measure. */
import { useMemo, useState } from "preact/hooks";
import { YearsChart } from "../parts/charts/years-chart.tsx";
import { useHouse } from "../parts/house.ts";
import { Halves } from "../parts/keys.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { useRangeWords } from "./years-day.tsx";
import type { YearsNow } from "./years-model.ts";
import { useStripNames } from "./years-names.ts";
import { chartOf, type Measure } from "./years-series.ts";
import { YEARS_WORDS } from "./years-words.ts";

type WormMeasure = "worms-per-m2" | "worms-per-hole";

export const YearsCharts = ({ now }: { readonly now: YearsNow }) => {
  const { settings, words } = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const rangeOf = useRangeWords();
  const nameOf = useStripNames(now);
  const { habits } = settings.value;
  const { common } = words.value;
  const [worms, setWorms] = useState<WormMeasure>("worms-per-m2");
  // Drawn again only when something of it changed: a chart that is made anew at every touch would flicker.
  const charts = useMemo(() => {
    const of = (measure: Measure) =>
      chartOf(now.years, measure, nameOf, {
        words: says,
        habits,
        range: common.range,
        noRange: ({ range }) => rangeOf(range, measure),
      });
    return {
      cover: of("cover"),
      "worms-per-m2": of("worms-per-m2"),
      "worms-per-hole": of("worms-per-hole"),
      soaked: of("soaked"),
    };
  }, [now, says, habits, common]);
  const { cover, soaked, "worms-per-m2": perM2, "worms-per-hole": perHole } = charts;
  if (cover === null && soaked === null && perM2 === null && perHole === null) return null;
  const wormChart = perM2 === null ? perHole : perHole === null ? perM2 : charts[worms];
  return (
    <div class="years-charts">
      <h3>{says.charts}</h3>
      <p class="aside">
        {says.lastDay(says.harvestYear)}
        {now.years.some(({ said }) => !said) ? ` ${says.byCalendar}` : ""}
      </p>
      {cover === null ? null : <YearsChart data={cover} />}
      {wormChart === null ? null : (
        <>
          {perM2 === null || perHole === null ? null : (
            <Halves
              label={says.wormsUnit}
              options={[
                { value: "worms-per-m2", label: says.perM2Half },
                { value: "worms-per-hole", label: says.perHole },
              ]}
              chosen={worms}
              onChoose={setWorms}
            />
          )}
          <YearsChart key={wormChart.unit} data={wormChart} />
        </>
      )}
      {soaked === null ? null : <YearsChart data={soaked} />}
    </div>
  );
};
