/** Same thing? Two strips of a field, or two fields, that are one; and how to take that apart again. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import type { Catalogue } from "../catalogue.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, Key } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { fieldName, stripName } from "../parts/names.ts";
import { useOnce } from "../parts/once.ts";
import type { Listed } from "../parts/reader.ts";
import { useWordsOf, useWordsWith } from "../parts/words-of.ts";
import { useAboutField } from "./about-field.ts";
import type { FieldNow } from "./model.ts";
import { type JoinedPair, join, type OtherField, readOthers, readSame, takeApart } from "./same-model.ts";
import { SAME_WORDS } from "./words.same.ts";
import { FIELD_WORDS } from "./words.ts";

type Open = "strips" | "fields" | null;

const nameOf = (words: Catalogue, one: Listed<"field" | "strip"> | undefined): string => {
  if (one === undefined) return words.common.noName;
  return "wholeField" in one.body
    ? stripName(words, one as Listed<"strip">)
    : fieldName(words, one as Listed<"field">);
};

/** The section of the field's page; it is not there while there is nothing that could be the same. */
export const SameThing = ({ now }: { readonly now: FieldNow }) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const same = useWordsOf(SAME_WORDS);
  const [open, setOpen] = useState<Open>(null);
  const ids = now.same.ids.join(" ");
  const found = useLive(() => readSame(house.records, now.same), [ids]);
  // They are read when asked for, and the key stays until they are there.
  const others = useLive(
    async () => (open === "fields" ? readOthers(house.records, now.same) : undefined),
    [ids, open],
  );
  if (found === undefined) return null;
  const { pairs } = found;
  const close = () => setOpen(null);
  if (pairs.length === 0 && !found.others && now.strips.length < 2) return null;
  return (
    <section class="ruled">
      <h2>{same.same}</h2>
      <ul class="rows">
        {pairs.map((pair) => (
          <li key={pair.id}>
            <Pair pair={pair} />
          </li>
        ))}
      </ul>
      {open === "strips" ? (
        <Two
          question={same.sameStripsWhich}
          of={now.strips.map((one) => ({ id: one.id, name: stripName(words, one) }))}
          onClose={close}
        />
      ) : open === "fields" && others !== undefined ? (
        <SameAsOther now={now} others={others} onClose={close} />
      ) : (
        <div class="keys beneath">
          {now.strips.length < 2 ? null : <Key onPress={() => setOpen("strips")}>{same.sameStrips}</Key>}
          {!found.others ? null : <Key onPress={() => setOpen("fields")}>{same.sameFields}</Key>}
        </div>
      )}
    </section>
  );
};

const Pair = ({ pair }: { readonly pair: JoinedPair }) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const same = useWordsOf(SAME_WORDS);
  const [busy, once] = useOnce();
  const sentence = words.fields.sameAs(nameOf(words, pair.from), nameOf(words, pair.to));
  return (
    <div class="same-pair">
      <span>
        <b>{sentence}</b>
        <small>{words.records.kinds[pair.kind]}</small>
      </span>
      <button
        type="button"
        class="key small"
        disabled={busy}
        aria-label={same.takeApartWhat(sentence)}
        onClick={() => once(() => takeApart(house, pair.id))}
      >
        {same.takeApart}
      </button>
    </div>
  );
};

interface Named<K extends "field" | "strip"> {
  readonly id: RecordId<K>;
  readonly name: string;
}

/** Two strips, and which of them stands for both. */
const Two = (props: {
  readonly question: string;
  readonly of: readonly Named<"strip">[];
  readonly onClose: () => void;
}) => {
  const same = useWordsOf(SAME_WORDS);
  const [from, setFrom] = useState<RecordId<"strip"> | null>(null);
  const [to, setTo] = useState<RecordId<"strip"> | null>(null);
  const options = (but: RecordId<"strip"> | null) =>
    props.of.filter(({ id }) => id !== but).map(({ id, name }) => ({ value: id, label: name }));
  return (
    <>
      <Choice
        question={props.question}
        options={options(null)}
        chosen={from}
        onChoose={(id) => {
          setFrom(id);
          if (id === to) setTo(null);
        }}
      />
      {from === null ? null : (
        <Choice question={same.sameInto} options={options(from)} chosen={to} onChoose={setTo} />
      )}
      <Answer from={from} to={to} onClose={props.onClose} />
    </>
  );
};

/** Another field that is the same as this one. */
const SameAsOther = (props: {
  readonly now: FieldNow;
  readonly others: readonly OtherField[];
  readonly onClose: () => void;
}) => {
  const words = useWordsWith(FIELD_WORDS);
  const same = useWordsOf(SAME_WORDS);
  const [to, setTo] = useState<RecordId<"field"> | null>(null);
  const about = useAboutField();
  // Two farms may each own a "Top Field".
  const farmOf = ({ farm }: OtherField): string => farm?.body.name ?? words.fields.noFarm;
  return (
    <>
      <Choice
        question={same.sameFieldWhich}
        options={props.others.map((one) => ({
          value: one.same.field.id,
          label: fieldName(words, one.same.field),
          hint: `${farmOf(one)} · ${about(one)}`,
        }))}
        chosen={to}
        onChoose={setTo}
        column
      />
      <Answer from={props.now.same.field.id} to={to} onClose={props.onClose} />
    </>
  );
};

const Answer = <K extends "field" | "strip">(props: {
  readonly from: RecordId<K> | null;
  readonly to: RecordId<K> | null;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const same = useWordsOf(SAME_WORDS);
  const { from, to, onClose } = props;
  const [busy, once] = useOnce();
  return (
    <>
      <p class="aside">{same.sameHint}</p>
      <div class="keys two after-writing">
        <Key onPress={onClose}>{words.common.close}</Key>
        <Key
          look="solid"
          off={busy || from === null || to === null}
          onPress={() =>
            once(async () => {
              if (from !== null && to !== null && (await join(house, from, to))) onClose();
            })
          }
        >
          {same.sameYes}
        </Key>
      </div>
    </>
  );
};
