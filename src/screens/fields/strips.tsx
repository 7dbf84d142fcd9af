/** The strips of a field: what was done on each, and to which rep it belongs. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { type Strip, TREATMENTS } from "../../record/kinds/strip.ts";
import { readNumber } from "../../record/number.ts";
import type { StripOnDay } from "../../science/ground-cover/field-cover.ts";
import { type Catalogue, sentenceFor } from "../catalogue.ts";
import { AskOnce } from "../parts/ask-once.tsx";
import { useHouse } from "../parts/house.ts";
import { Key, Tick, WriteLine } from "../parts/keys.tsx";
import { stripName } from "../parts/names.ts";
import { writeDay, writePercent } from "../parts/numbers.ts";
import { useOnce } from "../parts/once.ts";
import { rangeWords } from "../parts/range-words.ts";
import type { Listed } from "../parts/reader.ts";
import { href } from "../parts/route.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { CoverNow } from "./cover-model.ts";
import { type FieldNow, remove, writeStrip } from "./model.ts";

/** Strips shown before "show more". */
const AT_ONCE = 20;

export const Strips = (props: { readonly now: FieldNow; readonly found: CoverNow | undefined }) => {
  const words = useHouse().words.value;
  const { now, found } = props;
  const [changing, setChanging] = useState(false);
  const [editing, setEditing] = useState<RecordId<"strip"> | "new" | null>(null);
  const [most, setMost] = useState(AT_ONCE);
  const close = () => setEditing(null);
  const hidden = now.strips.length - most;
  const row = (strip: Listed<"strip">) => {
    if (editing === strip.id) return <StripForm field={strip.body.field} strip={strip} onClose={close} />;
    if (changing) return <StripToChange strip={strip} onChange={() => setEditing(strip.id)} />;
    return <StripRow strip={strip} newest={found?.newest.get(strip.id)} known={found !== undefined} />;
  };
  return (
    <section class="ruled">
      <h2>{words.fields.strips}</h2>
      {now.strips.length === 0 ? <p>{words.fields.noStrips}</p> : null}
      <ul class="rows">
        {now.strips.slice(0, most).map((strip) => (
          <li key={strip.id}>{row(strip)}</li>
        ))}
      </ul>
      {hidden > 0 ? (
        <Key onPress={() => setMost(most + AT_ONCE)}>{words.fields.more(Math.min(hidden, AT_ONCE))}</Key>
      ) : null}
      {editing === "new" ? (
        <StripForm field={now.same.field.id} strip={null} onClose={close} />
      ) : (
        <div class="keys two after-writing">
          <Key onPress={() => setEditing("new")}>{words.fields.addStrip}</Key>
          {now.strips.length === 0 ? null : (
            <Key
              onPress={() => {
                setChanging(!changing);
                close();
              }}
            >
              {changing ? words.common.done : words.fields.changeStrips}
            </Key>
          )}
        </div>
      )}
    </section>
  );
};

/** What was done on a strip, as far as its name does not say it. */
const aboutStrip = (words: Catalogue, { body }: Listed<"strip">): string =>
  [
    ...(body.wholeField && body.name !== "" ? [words.common.wholeField] : []),
    ...(body.name === "" && !body.wholeField ? [] : body.done.map((one) => words.treatment[one])),
    ...(body.rep === null ? [] : [words.fields.rep(body.rep)]),
  ].join(" · ");

/** A strip with what was found on it last. The value's place is kept until it comes. */
const StripRow = (props: {
  readonly strip: Listed<"strip">;
  readonly newest: StripOnDay | undefined;
  readonly known: boolean;
}) => {
  const words = useHouse().words.value;
  const { strip, newest, known } = props;
  const found = newest?.cover.ok === true ? newest.cover.value : null;
  const about = aboutStrip(words, strip);
  const inside = (
    <>
      <span>
        <b>{stripName(words, strip)}</b>
        {about === "" ? null : <small>{about}</small>}
        <small class="found-last">
          {found === null || newest === undefined
            ? known
              ? words.fields.neverVisited
              : ""
            : [
                rangeWords(words, found),
                words.common.lines(found.n),
                writeDay(newest.day, words.common.tongue),
              ].join(" · ")}
        </small>
      </span>
      <span class="value">
        {found === null ? null : (
          <>
            {writePercent(found.value, TONGUE)}
            <small> {words.common.percent}</small>
          </>
        )}
      </span>
    </>
  );
  return newest === undefined ? (
    <div class="row">{inside}</div>
  ) : (
    <a class="row" href={href({ at: "worked-out", strip: strip.id, visit: newest.visits[0] ?? null })}>
      {inside}
    </a>
  );
};

const StripToChange = (props: { readonly strip: Listed<"strip">; readonly onChange: () => void }) => {
  const words = useHouse().words.value;
  return (
    <button type="button" class="row" onClick={props.onChange}>
      <span>
        <b>{stripName(words, props.strip)}</b>
        <small>{aboutStrip(words, props.strip)}</small>
      </span>
      <b>{words.common.change}</b>
    </button>
  );
};

const StripForm = (props: {
  readonly field: RecordId<"field">;
  readonly strip: Listed<"strip"> | null;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const { strip, onClose } = props;
  const before = strip?.body;
  const [name, setName] = useState(before?.name ?? "");
  const [done, setDone] = useState<Strip["done"]>(before?.done ?? []);
  const [wholeField, setWholeField] = useState(before?.wholeField ?? false);
  const [rep, setRep] = useState(before === undefined || before.rep === null ? "" : String(before.rep));
  const [wrong, setWrong] = useState<string | null>(null);
  const [, once] = useOnce();
  const write = async (number: number | null) => {
    const body: Strip = { field: props.field, name: name.trim(), done: [...done], wholeField, rep: number };
    if (await writeStrip(house, strip?.id ?? null, body)) onClose();
  };
  const keep = (number: number | null) => once(() => write(number));
  const tryToKeep = () => {
    if (rep.trim() === "") {
      keep(null);
      return;
    }
    const read = readNumber(rep, { min: 0, max: 1001 });
    if (!read.ok) setWrong(sentenceFor(words, read.problem));
    else if (!Number.isInteger(read.value.value) || read.value.value < 1 || read.value.value > 1000)
      setWrong(words.fields.stripRepWrong);
    else keep(read.value.value);
  };
  return (
    <div class="strip-form">
      <WriteLine label={words.fields.stripName} value={name} onWrite={setName} />
      <fieldset>
        <legend class="question">{words.fields.stripDone}</legend>
        <div class="ticks">
          {TREATMENTS.map((one) => (
            <Tick
              key={one}
              label={words.treatment[one]}
              on={done.includes(one)}
              onChange={(on) => setDone(on ? [...done, one] : done.filter((other) => other !== one))}
            />
          ))}
          <Tick label={words.fields.stripWhole} on={wholeField} onChange={setWholeField} />
        </div>
      </fieldset>
      <WriteLine
        label={words.fields.stripRep}
        hint={words.fields.stripRepHint}
        value={rep}
        wrong={wrong}
        numeric
        onWrite={(text) => {
          setRep(text);
          setWrong(null);
        }}
      />
      <div class="keys two after-writing">
        <Key onPress={onClose}>{words.common.close}</Key>
        <Key look="solid" onPress={tryToKeep}>
          {words.common.done}
        </Key>
      </div>
      {strip === null ? null : (
        <AskOnce
          label={words.fields.deleteStrip}
          question={words.fields.deleteStripAsk}
          hint={words.fields.deleteStripHint}
          yes={words.fields.deleteYes}
          onYes={async () => {
            if (await remove(house, [strip.id])) onClose();
          }}
        />
      )}
    </div>
  );
};
