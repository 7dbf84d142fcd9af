/** To which harvest a visit belongs: a number that can be said at any time, or never. */
import { useState } from "preact/hooks";
import { readNumber } from "../../../record/number.ts";
import { sentenceFor } from "../../catalogue.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, WriteLine } from "../../parts/keys.tsx";
import { writeDay } from "../../parts/numbers.ts";
import { useWordsWith } from "../../parts/words-of.ts";
import { sayHarvestYear, type VisitNow } from "./model.ts";
import { VISIT_WORDS } from "./words.ts";

/** Years that a harvest may lie from the day of the visit without being asked about. */
const USUAL_YEARS_APART = 2;

export const HarvestYear = ({ now }: { readonly now: VisitNow }) => {
  const house = useHouse();
  const catalogue = useWordsWith(VISIT_WORDS);
  const words = catalogue.visit;
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const [odd, setOdd] = useState(false);
  const { day } = now.visit.body;
  const calendarYear = Number(day.slice(0, 4));
  const keep = async (text: string) => {
    const read = readNumber(text, {
      min: calendarYear - USUAL_YEARS_APART - 1,
      max: calendarYear + USUAL_YEARS_APART + 1,
    });
    if (!read.ok) setWrong(sentenceFor(catalogue, read.problem));
    else if (!Number.isInteger(read.value.value) || read.value.value < 1800 || read.value.value > 3000)
      setWrong(words.harvestYearWrong);
    else if (read.value.unusual.length > 0 && !odd) setOdd(true);
    else if (await sayHarvestYear(house, now.visits, read.value.value)) setTyped(null);
  };
  return (
    <section class="ruled">
      <h2>{words.harvestYear}</h2>
      <p>{now.harvestYear ?? words.harvestYearNone(day.slice(0, 4))}</p>
      {typed === null ? (
        <Key onPress={() => setTyped(String(now.harvestYear ?? calendarYear))}>
          {now.harvestYear === null ? words.harvestYearSay : catalogue.common.change}
        </Key>
      ) : (
        <>
          <WriteLine
            label={words.harvestYearLabel}
            value={typed}
            wrong={wrong}
            {...(odd ? { hint: words.harvestYearOdd(typed, writeDay(day, catalogue.common.tongue)) } : {})}
            numeric
            onWrite={(text) => {
              setTyped(text);
              setWrong(null);
              setOdd(false);
            }}
          />
          <div class="keys two">
            <Key onPress={() => setTyped(null)}>{catalogue.common.close}</Key>
            <Key look="solid" onPress={() => void keep(typed)}>
              {odd ? words.harvestYearYes : catalogue.common.done}
            </Key>
          </div>
        </>
      )}
    </section>
  );
};
