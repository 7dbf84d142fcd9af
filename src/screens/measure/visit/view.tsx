/** Today in this field: strips with their ground cover so far, their lines, and the key to count the next. */
import type { RecordId } from "../../../record/ids.ts";
import { useHouse } from "../../parts/house.ts";
import { LinkKey } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { fieldName, stripName } from "../../parts/names.ts";
import { writeDay } from "../../parts/numbers.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { HarvestYear } from "./harvest-year.tsx";
import { readVisit, type VisitNow } from "./model.ts";
import { Naming } from "./naming.tsx";
import { StripOfVisit } from "./strip.tsx";
import "./visit.css";

export const VisitScreen = (props: { readonly visit: RecordId<"visit"> }) => {
  const { records, settings, words: live } = useHouse();
  const words = live.value;
  const chosen = settings.value;
  const now = useLive(() => readVisit(records, chosen, props.visit), [props.visit, chosen]);
  const back = href({ at: "measure" });
  if (now === undefined)
    return (
      <Page title={"\u00a0"} back={back} area="measure">
        {null}
      </Page>
    );
  if (now === null)
    return (
      <Page title={words.visit.gone} back={back} area="measure">
        {null}
      </Page>
    );
  const { field } = now.same;
  const named = field.body.name !== "";
  const day = writeDay(now.visit.body.day, words.common.tongue);
  const name = fieldName(words, field);
  return (
    <Page
      title={now.isToday ? words.visit.today(named ? name : words.visit.unnamed) : words.visit.on(day)}
      under={now.isToday ? day : name}
      back={back}
      area="measure"
      foot={
        <LinkKey to={href({ at: "line-new", visit: props.visit })} look="solid">
          {words.visit.countLine}
        </LinkKey>
      }
    >
      {named ? null : <Naming field={field} />}
      {now.strips.length === 0 ? <p class="nothing-yet">{words.visit.noStrips}</p> : null}
      {now.strips.map((strip) => (
        <StripOfVisit key={strip.id} now={now} strip={strip} />
      ))}
      <Without now={now} />
      <HarvestYear now={now} />
      <div class="ruled beside">
        <LinkKey to={href({ at: "field", field: field.id })}>{words.visit.fieldPage}</LinkKey>
      </div>
    </Page>
  );
};

/** Strips of the field that nobody has measured on this visit. */
const Without = ({ now }: { readonly now: VisitNow }) => {
  const words = useHouse().words.value;
  if (now.without.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{now.isToday ? words.visit.stripsWithout : words.visit.stripsWithoutThen}</h2>
      <ul>
        {now.without.map((strip) => (
          <li key={strip.id}>{stripName(words, strip)}</li>
        ))}
      </ul>
    </section>
  );
};
