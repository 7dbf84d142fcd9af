/** What is known of a field besides its name: rows, soil, crop. None of it is ever needed. */
import { useState } from "preact/hooks";
import type { Field } from "../../record/kinds/field.ts";
import { RESIDUE_CROPS } from "../../science/residue/crops.ts";
import { type House, useHouse } from "../parts/house.ts";
import { Choice, Key, WriteLine } from "../parts/keys.tsx";
import { useOnce } from "../parts/once.ts";
import type { SameField } from "../parts/same-field.ts";
import { Brought, Typed, useForget, useKeeping, useTyped } from "../parts/typed.tsx";
import { typedHere } from "../parts/typed-store.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { windOfRows } from "./row-direction.ts";
import { RowDirection } from "./row-form.tsx";
import { DETAILS_WORDS } from "./words.details.ts";

/** Textures from light to heavy, as a hand feels them. */
const TEXTURES = [
  "sand",
  "loamy-sand",
  "sandy-loam",
  "loam",
  "silt-loam",
  "silt",
  "sandy-clay-loam",
  "clay-loam",
  "silt-clay-loam",
  "sandy-clay",
  "silty-clay",
  "clay",
  "peat",
] as const;

const ASKED = ["rows", "soil", "crop"] as const;
type Asked = (typeof ASKED)[number];

/** Names of these forms on their page begin like that. */
const DETAIL_FORM = "detail ";

const correct = async (house: House, { field }: SameField, patch: Partial<Field>): Promise<boolean> => {
  const written = await house.write(house.pen.change(field.id, patch));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};

export const Details = ({ same }: { readonly same: SameField }) => {
  const house = useHouse();
  const says = useWordsOf(DETAILS_WORDS);
  const [asked, setAsked] = useState<Asked | null>(
    () => ASKED.find((one) => typedHere(DETAIL_FORM).includes(one)) ?? null,
  );
  const { rowDirectionDeg, soilTexture, harvestCrop } = same.field.body;
  const close = () => setAsked(null);
  const keep = async (patch: Partial<Field>): Promise<boolean> => {
    const done = await correct(house, same, patch);
    if (done) close();
    return done;
  };
  const row = (what: Asked, title: string, value: string) => (
    <li>
      <button type="button" class="row" onClick={() => setAsked(asked === what ? null : what)}>
        <span>
          <b>{title}</b>
          <small>{value}</small>
        </span>
        <b>{house.words.value.common.change}</b>
      </button>
      {asked === what ? (
        <Typed form={DETAIL_FORM + what}>
          <Question asked={what} same={same} onKeep={keep} onClose={close} />
        </Typed>
      ) : null}
    </li>
  );
  return (
    <section class="ruled">
      <h2>{says.title}</h2>
      <ul class="rows">
        {row(
          "rows",
          says.rows,
          rowDirectionDeg === null
            ? says.notSaid
            : says.degrees(rowDirectionDeg, says.windOf[windOfRows(rowDirectionDeg)]),
        )}
        {row("soil", says.soil, known(soilTexture, says.textures) ?? says.notSaid)}
        {row("crop", says.crop, known(harvestCrop, says.crops) ?? says.notSaid)}
      </ul>
    </section>
  );
};

/** The word for a stored name; one's own words stand as they were written. */
const known = (stored: string | null, words: Readonly<Record<string, string>>): string | null =>
  stored === null ? null : (words[stored] ?? stored);

const Question = (props: {
  readonly asked: Asked;
  readonly same: SameField;
  readonly onKeep: (patch: Partial<Field>) => Promise<boolean>;
  readonly onClose: () => void;
}) => {
  const says = useWordsOf(DETAILS_WORDS);
  const forget = useForget();
  const keeping = useKeeping();
  const { body } = props.same.field;
  const keep = async (patch: Partial<Field>) => {
    if (await keeping(() => props.onKeep(patch))) forget();
  };
  const close = () => {
    forget();
    props.onClose();
  };
  switch (props.asked) {
    case "rows":
      return (
        <RowDirection
          before={body.rowDirectionDeg}
          onKeep={(rowDirectionDeg) => keep({ rowDirectionDeg })}
          onClose={close}
        />
      );
    case "soil":
      return (
        <OneOf
          question={says.texture}
          hint={says.textureHint}
          names={TEXTURES}
          words={says.textures}
          before={body.soilTexture}
          onKeep={(soilTexture) => keep({ soilTexture })}
          onClose={close}
        />
      );
    case "crop":
      return (
        <OneOf
          question={says.cropAsk}
          names={RESIDUE_CROPS}
          words={says.crops}
          before={body.harvestCrop}
          onKeep={(harvestCrop) => keep({ harvestCrop })}
          onClose={close}
        />
      );
  }
};

/** One of a list, or one's own word, or nothing said. */
const OneOf = <N extends string>(props: {
  readonly question: string;
  readonly hint?: string;
  readonly names: readonly N[];
  readonly words: Readonly<Record<N, string>>;
  readonly before: string | null;
  readonly onKeep: (value: string | null) => Promise<void>;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const says = useWordsOf(DETAILS_WORDS);
  const { before, names } = props;
  const listed = names.find((name) => name === before);
  const [chosen, setChosen] = useTyped<N | "own" | "none">(
    "chosen",
    listed ?? (before === null ? "none" : "own"),
    (typed) => [...names, "own", "none"].includes(typed),
  );
  const [own, setOwn] = useTyped("own", listed === undefined ? (before ?? "") : "");
  const [busy, once] = useOnce();
  const value = chosen === "none" ? null : chosen === "own" ? own.trim() || null : chosen;
  return (
    <div class="strip-form">
      <Brought />
      <Choice
        question={props.question}
        options={[
          ...names.map((name) => ({ value: name as N | "own" | "none", label: props.words[name] })),
          { value: "own" as const, label: says.another },
          { value: "none" as const, label: says.notSaid },
        ]}
        chosen={chosen}
        onChoose={setChosen}
      >
        {props.hint === undefined ? null : <p>{props.hint}</p>}
      </Choice>
      {chosen === "own" ? <WriteLine label={says.ownWord} value={own} onWrite={setOwn} /> : null}
      <div class="keys two beside">
        <Key onPress={props.onClose}>{house.words.value.common.close}</Key>
        <Key look="solid" off={busy} onPress={() => once(() => props.onKeep(value))}>
          {house.words.value.common.done}
        </Key>
      </div>
    </div>
  );
};
