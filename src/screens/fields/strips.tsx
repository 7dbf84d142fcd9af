/** The strips of a field: what was done on each, and to which rep it belongs. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import type { StripOnDay } from "../../science/ground-cover/field-cover.ts";
import type { Catalogue } from "../catalogue.ts";
import { AskOnce } from "../parts/ask-once.tsx";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { stripName } from "../parts/names.ts";
import { writeDay, writePercent } from "../parts/numbers.ts";
import { rangeWords } from "../parts/range-words.ts";
import type { Listed } from "../parts/reader.ts";
import { href } from "../parts/route.ts";
import { STRIP_FORM, StripForm } from "../parts/strip-form.tsx";
import { forgetTyped, typedHere } from "../parts/typed-store.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsOf, useWordsWith } from "../parts/words-of.ts";
import type { CoverNow } from "./cover-model.ts";
import { type FieldNow, remove, writeStrip } from "./model.ts";
import { FIELD_WORDS, type FieldWords } from "./words.ts";
import { YEARS_WORDS, type YearsWords } from "./years-words.ts";

/** Strips shown before "show more". */
const AT_ONCE = 20;

export const Strips = (props: { readonly now: FieldNow; readonly found: CoverNow | undefined }) => {
  const words = useWordsWith(FIELD_WORDS);
  const { now, found } = props;
  const [changing, setChanging] = useState(false);
  const [editing, setEditing] = useState<string | null>(() => typedHere(STRIP_FORM)[0] ?? null);
  const [most, setMost] = useState(AT_ONCE);
  const close = () => setEditing(null);
  const hidden = now.strips.length - most;
  const row = (strip: Listed<"strip">) => {
    if (editing === strip.id) return <WriteStrip field={strip.body.field} strip={strip} onClose={close} />;
    if (changing) return <StripToChange strip={strip} onChange={() => setEditing(strip.id)} />;
    return <StripRow strip={strip} found={found} />;
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
        <WriteStrip field={now.same.field.id} strip={null} onClose={close} />
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
const aboutStrip = (words: Catalogue & FieldWords, { body }: Listed<"strip">): string =>
  [
    ...(body.wholeField && body.name !== "" ? [words.common.wholeField] : []),
    ...(body.name === "" && !body.wholeField ? [] : body.done.map((one) => words.treatment[one])).filter(
      (said) => said !== body.name,
    ),
    ...(body.rep === null ? [] : [words.fields.rep(body.rep)]),
  ].join(" · ");

const foundLast = (
  words: Catalogue & FieldWords & YearsWords,
  now: CoverNow | undefined,
  newest: StripOnDay | undefined,
): string => {
  if (now === undefined) return "";
  if (!now.upToDate) return words.before;
  if (newest?.cover.ok !== true) return words.fields.neverVisited;
  const { value } = newest.cover;
  const day = writeDay(newest.day, words.common.tongue);
  return [rangeWords(words, value), words.common.lines(value.n), day].join(" · ");
};

/** A strip with what was found on it last. The value's place is kept until it comes. */
const StripRow = (props: { readonly strip: Listed<"strip">; readonly found: CoverNow | undefined }) => {
  const words = useWordsWith(FIELD_WORDS);
  const says = useWordsOf(YEARS_WORDS);
  const { strip } = props;
  const newest = props.found?.newest.get(strip.id);
  const found = newest?.cover.ok === true ? newest.cover.value : null;
  const about = aboutStrip(words, strip);
  const inside = (
    <>
      <span>
        <b>{stripName(words, strip)}</b>
        {about === "" ? null : <small>{about}</small>}
        <small class="found-last">{foundLast({ ...words, ...says }, props.found, newest)}</small>
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
  const words = useWordsWith(FIELD_WORDS);
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

/** The questions of a strip, and what becomes of the answers. */
const WriteStrip = (props: {
  readonly field: RecordId<"field">;
  readonly strip: Listed<"strip"> | null;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const { field, strip, onClose } = props;
  return (
    <>
      <StripForm
        {...(strip === null ? {} : { strip })}
        onKeep={async (said) => {
          const done = await writeStrip(house, strip?.id ?? null, { ...said, field });
          if (done) onClose();
          return done;
        }}
        onClose={onClose}
      />
      {strip === null ? null : (
        <AskOnce
          label={words.fields.deleteStrip}
          question={words.fields.deleteStripAsk}
          hint={words.fields.deleteStripHint}
          yes={words.fields.deleteYes}
          onYes={async () => {
            if (!(await remove(house, [strip.id]))) return;
            forgetTyped(STRIP_FORM + strip.id);
            onClose();
          }}
        />
      )}
    </>
  );
};
