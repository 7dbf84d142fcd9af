/**
 * Behind the sheet of a ring: every curve with its errors, every conductivity with what it rests on. Closed at
 * first, and worked out off the page: five curves would hold a phone up.
 */
import { useMemo, useState } from "preact/hooks";
import { isDemoTest } from "../../../record/demo-mark.ts";
import { kindOf } from "../../../record/ids.ts";
import type { Result } from "../../../record/result.ts";
import type { Caution } from "../../../science/estimate.ts";
import type { Fit } from "../../../science/infiltration/models/fit.ts";
import { residualSpreadMm } from "../../../science/infiltration/models/spread.ts";
import type { RingForSpecialist } from "../../../science/infiltration/ring-for-specialist.ts";
import { sentenceFor } from "../../catalogue.ts";
import { WorkedOutKey, workedByAll } from "../../findings/method-list.tsx";
import { SENTENCES } from "../../findings/sentences.ts";
import { SPECIALIST } from "../../findings/specialist.ts";
import { Fold } from "../../help/fold.tsx";
import { useHouse } from "../../parts/house.ts";
import { useLive } from "../../parts/live.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { HandOver } from "../../send/picture/hand-over.tsx";
import { celsiusOf, conditionsOf } from "./conditions.ts";
import type { DayRing } from "./day.ts";
import type { RingSheet } from "./sheet-model.ts";
import { specialistCsv } from "./specialist-csv.ts";
import { GroundForm, type WaterRead } from "./specialist-ground.tsx";
import {
  type FitRow,
  fitRows,
  GROUND_FIRST,
  groundStated,
  kfsRows,
  METHOD_OF_KFS,
  METHOD_OF_MODEL,
  UNIT_OF,
  WRITTEN,
  workedAnswers,
} from "./specialist-model.ts";
import { SPECIALIST_WORDS } from "./words.specialist.ts";
import "../../help/help.css";

const DIGITS = 4;

/** Four digits that say something, however large or small the value is. */
const digits = (value: number): string => {
  const size = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  return writeNumber(value, TONGUE, Math.min(8, Math.max(0, DIGITS - 1 - size)));
};

/** Sentences of reasons and cautions. */
const useSay = (): ((of: Caution) => string) => {
  const { words } = useHouse();
  const sentences = useWordsOf(SENTENCES);
  return (of) => sentenceFor(words.value, of, sentences);
};

const Cautions = ({ of }: { readonly of: readonly Caution[] }) => {
  const say = useSay();
  return of.length === 0 ? null : (
    <ul class="said-beside">
      {of.map((caution) => (
        <li key={say(caution)}>{say(caution)}</li>
      ))}
    </ul>
  );
};

/** Titles and assumptions of methods, as "How this was worked out" has them. */
const useMethodWords = () => SPECIALIST[useHouse().settings.value.language].methods;

export const ForSpecialist = ({ sheet }: { readonly sheet: RingSheet }) => {
  const words = useWordsOf(SPECIALIST_WORDS);
  return (
    <section class="ruled specialist">
      <Fold title={words.title} chapter inside={() => <Inside sheet={sheet} />} />
    </section>
  );
};

const useWater = (ring: DayRing) => {
  const house = useHouse();
  const { water } = useMemo(() => conditionsOf(ring.entries), [ring.entries]);
  const keep = async (read: WaterRead): Promise<void> => {
    const written = await house.write({
      op: "append",
      id: ring.id,
      frame: null,
      at: house.pen.moment(),
      draft: {
        type: "temperature",
        of: "water",
        ...read,
        ...(water === null ? {} : { replaces: [water.id] }),
      },
    });
    if (!written.ok) house.tell(written.problem);
  };
  return { water, keep };
};

const Inside = ({ sheet }: { readonly sheet: RingSheet }) => {
  const house = useHouse();
  const words = useWordsOf(SPECIALIST_WORDS);
  const say = useSay();
  const { ring } = sheet;
  const { water, keep } = useWater(ring);
  const [said, setSaid] = useState({ ...GROUND_FIRST, waterC: water === null ? null : celsiusOf(water) });
  const found = useLive<Result<RingForSpecialist>>(
    () => house.results.ring(ring.id, groundStated(said)),
    [ring.id, said],
    (changed) => changed === "everything" || changed.some((id) => id === ring.id || kindOf(id) === "kit"),
  );
  return (
    <>
      <h2>{words.stated}</h2>
      <GroundForm
        key={water?.id ?? ""}
        said={said}
        water={water}
        onSaid={(next, read) => {
          setSaid(next);
          if (read !== null) void keep(read);
        }}
      />
      {found === undefined ? (
        <p role="status">{words.waiting}</p>
      ) : found.ok ? (
        <Worked sheet={sheet} found={found.value} />
      ) : (
        <p>{say(found.problem)}</p>
      )}
    </>
  );
};

const Worked = ({ sheet, found }: { readonly sheet: RingSheet; readonly found: RingForSpecialist }) => {
  const words = useWordsOf(SPECIALIST_WORDS);
  const say = useSay();
  const { ring } = sheet;
  const example = isDemoTest(ring.id, ring.header.field);
  const file = useMemo(
    () =>
      new File([specialistCsv(found, example, say)], `ring-${ring.letter || "test"}.csv`, {
        type: "text/csv",
      }),
    [found, example, ring.letter],
  );
  return (
    <>
      <Curves found={found} />
      <Conductivities found={found} said={sheet.cautions} />
      <Class found={found} />
      <WorkedOutKey {...workedByAll(workedAnswers(found))} of={words.title} />
      <HandOver key={file.name} file={file} share={words.share} save={words.save} look="plain" />
    </>
  );
};

const Curves = ({ found }: { readonly found: RingForSpecialist }) => {
  const words = useWordsOf(SPECIALIST_WORDS);
  const methods = useMethodWords();
  const say = useSay();
  const rows = fitRows(found);
  if (!rows.ok)
    return (
      <>
        <h2>{words.curves}</h2>
        <p>{say(rows.problem)}</p>
      </>
    );
  const chosen = rows.value.find((row) => row.chosen);
  return (
    <>
      <h2>{words.curves}</h2>
      <p>{words.curvesHint}</p>
      {chosen === undefined ? null : (
        <p>
          <b>{words.chosen(methods[METHOD_OF_MODEL[chosen.model]].title)}</b>
        </p>
      )}
      {rows.value.map((row) => (
        <Curve key={row.model} row={row} />
      ))}
    </>
  );
};

const Curve = ({ row }: { readonly row: FitRow }) => {
  const methods = useMethodWords();
  const say = useSay();
  const { fit } = row;
  return (
    <>
      <h3>{methods[METHOD_OF_MODEL[row.model]].title}</h3>
      {fit.ok ? <Laid row={row} fit={fit.value} /> : <p>{say(fit.problem)}</p>}
    </>
  );
};

const Laid = ({ row, fit }: { readonly row: FitRow; readonly fit: Fit }) => {
  const words = useWordsOf(SPECIALIST_WORDS);
  const say = useSay();
  const spread = residualSpreadMm(fit);
  const { aicc, parameters, cautions, n } = fit;
  return (
    <>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{words.unknown}</th>
            <th scope="col" class="number">
              {words.value}
            </th>
            <th scope="col" class="number">
              {words.error}
            </th>
          </tr>
        </thead>
        <tbody>
          {parameters.map(({ symbol, value, standardError, held }) => (
            <tr key={symbol}>
              <th scope="row">
                {WRITTEN[symbol]}
                {UNIT_OF[symbol] === "" ? "" : `, ${UNIT_OF[symbol]}`}
              </th>
              <td class="number">{digits(value)}</td>
              <td class="number">
                {standardError.ok
                  ? digits(standardError.value)
                  : held
                    ? words.held
                    : say(standardError.problem)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {aicc.ok
          ? words.criterion(digits(aicc.value), row.above === 0 ? null : digits(row.above ?? 0))
          : say(aicc.problem)}{" "}
        {spread.ok ? words.leftOver(digits(spread.value), writeNumber(n, TONGUE)) : say(spread.problem)}
      </p>
      <Cautions of={cautions} />
    </>
  );
};

const Conductivities = (props: { readonly found: RingForSpecialist; readonly said: readonly Caution[] }) => {
  const words = useWordsOf(SPECIALIST_WORDS);
  const methods = useMethodWords();
  const say = useSay();
  const { rows, forAll } = kfsRows(props.found, props.said);
  return (
    <>
      <h2>{words.kfs}</h2>
      {rows.map(({ way, kfs, own }) => (
        <div key={way}>
          <h3>{methods[METHOD_OF_KFS[way]].title}</h3>
          <p>{methods[METHOD_OF_KFS[way]].says}</p>
          {kfs.ok ? (
            <p>
              <b>{words.conductivity(digits(kfs.value.value))}</b>
              {kfs.value.at20.ok ? `, ${words.at20(digits(kfs.value.at20.value))}` : ""}
            </p>
          ) : (
            <p>{say(kfs.problem)}</p>
          )}
          <Cautions of={own} />
        </div>
      ))}
      <h3>{methods["kfs-two-heads"].title}</h3>
      <p>{words.twoHeadsNeeds}</p>
      <Cautions of={forAll} />
    </>
  );
};

const Class = ({ found }: { readonly found: RingForSpecialist }) => {
  const words = useWordsOf(SPECIALIST_WORDS);
  const say = useSay();
  const { permeability } = found;
  return (
    <>
      <h2>{words.permeability}</h2>
      {permeability.ok ? (
        <p>
          <b>
            {words.classFromTo(
              words.classes[permeability.value.name],
              digits(permeability.value.fromMmPerH),
              permeability.value.belowMmPerH === null ? null : digits(permeability.value.belowMmPerH),
            )}
          </b>
        </p>
      ) : (
        <p>{say(permeability.problem)}</p>
      )}
      <p>{words.classTable}</p>
    </>
  );
};
