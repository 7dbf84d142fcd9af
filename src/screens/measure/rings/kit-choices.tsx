/** Parts of the set-out: which ring, ruler and bottle of the kit, or one that is added on the way. */
import type { ComponentChildren } from "preact";
import type { RecordId } from "../../../record/ids.ts";
import type { Bottle, Ruler } from "../../../record/kinds/kit.ts";
import { BottleForm } from "../../kit/bottle-form.tsx";
import { stepWords } from "../../kit/fine-lengths.ts";
import { KIT_FORM, NEW_THING, type OnDone } from "../../kit/kit-form.tsx";
import type { KitItem, KitList } from "../../kit/kit-list.ts";
import { RingForm } from "../../kit/ring-form.tsx";
import { RulerForm } from "../../kit/ruler-form.tsx";
import { useHouse } from "../../parts/house.ts";
import { Choice } from "../../parts/keys.tsx";
import { lengthWords } from "../../parts/lengths.ts";
import { OpensHere } from "../../parts/opens-here.tsx";
import { STRIP_FORM } from "../../parts/strip-form.tsx";
import { typedHere } from "../../parts/typed-store.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { plainStep } from "./figures.ts";
import { outersFor, type RingChoices, type RingSetOut } from "./set-out.ts";
import { RING_WORDS } from "./words.ts";

/** Which form stands open. */
export type Adding = "strip" | "ring" | "ruler" | "bottle" | null;

/** The form that something was typed into before the page was loaded again. */
export const addingAtFirst = (): Adding => {
  if (typedHere(STRIP_FORM).length > 0) return "strip";
  const kit = typedHere(KIT_FORM + NEW_THING);
  return (["ring", "ruler", "bottle"] as const).find((type) => kit.includes(type)) ?? null;
};

/** What the parts of a set-out share: what there is, what is chosen, and which form stands open. */
interface Choosing {
  readonly choices: RingChoices;
  readonly onChoose: (patch: Partial<RingChoices>) => void;
  readonly adding: Adding;
  readonly onAdding: (adding: Adding) => void;
}

/** A thing of the kit that may be left out: chosen by name, or added on the way. */
const KitChoice = <B extends Ruler | Bottle>(props: {
  readonly question: string;
  readonly items: readonly KitItem<B>[];
  readonly none: string;
  readonly hint: (body: B) => string;
  readonly chosen: RecordId<"kit"> | null;
  readonly onChoose: (id: RecordId<"kit"> | null) => void;
  readonly add: string;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly Form: (props: { readonly onDone: OnDone }) => ComponentChildren;
}) => {
  const { noName } = useHouse().words.value.common;
  const { items, onChoose, Form } = props;
  return (
    <>
      <Choice
        question={props.question}
        options={[
          { value: "", label: props.none },
          ...items.map(({ id, body }) => ({
            value: id as string,
            label: body.name === "" ? noName : body.name,
            hint: props.hint(body),
          })),
        ]}
        chosen={props.chosen ?? ""}
        onChoose={(chosen) => onChoose(items.find(({ id }) => id === chosen)?.id ?? null)}
      />
      <OpensHere
        label={props.add}
        open={props.open}
        onOpen={() => props.onOpen(true)}
        form={() => (
          <Form
            onDone={(id) => {
              if (id !== undefined) onChoose(id);
              props.onOpen(false);
            }}
          />
        )}
      />
    </>
  );
};

/** Ruler and bottle of the kit. */
export const KitChoices = ({
  kit,
  choices,
  onChoose,
  adding,
  onAdding,
}: Choosing & { readonly kit: KitList }) => {
  const words = useWordsOf(RING_WORDS).setOut;
  const { habits } = useHouse().settings.value;
  return (
    <>
      <KitChoice
        question={words.ruler}
        items={kit.rulers}
        none={words.rulerStep(plainStep(habits))}
        hint={({ stepM }) => words.rulerStep(stepWords(stepM, habits))}
        chosen={choices.ruler}
        onChoose={(ruler) => onChoose({ ruler })}
        add={words.addRuler}
        open={adding === "ruler"}
        onOpen={(open) => onAdding(open ? "ruler" : null)}
        Form={RulerForm}
      />
      <KitChoice
        question={words.bottle}
        items={kit.bottles}
        none={words.noBottle}
        hint={({ volumeM3 }) => lengthWords("volume", volumeM3, habits)}
        chosen={choices.bottle}
        onChoose={(bottle) => onChoose({ bottle })}
        add={words.addBottle}
        open={adding === "bottle"}
        onOpen={(open) => onAdding(open ? "bottle" : null)}
        Form={BottleForm}
      />
    </>
  );
};

/** The ring by its letter, and the one around it where one of the kit is large enough. */
export const WhichRings = ({
  setOut,
  choices,
  onChoose,
  adding,
  onAdding,
}: Choosing & { readonly setOut: Pick<RingSetOut, "kit" | "taken"> }) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).setOut;
  const { noName } = house.words.value.common;
  const { habits } = house.settings.value;
  const { kit, taken } = setOut;
  const nameOf = (name: string): string => (name === "" ? noName : name);
  const outers = outersFor(setOut, choices.ring);
  return (
    <>
      {kit.rings.length > 0 ? (
        <Choice
          question={words.ring}
          options={kit.rings.map(({ id, body }) => ({
            value: id,
            label: nameOf(body.name),
            hint: taken.has(id)
              ? words.taken
              : words.ringSize(lengthWords("ringSize", body.insideM[0], habits)),
          }))}
          chosen={choices.ring}
          onChoose={(id) => onChoose({ ring: id, outer: null })}
        />
      ) : (
        <h2 class="question">{words.ring}</h2>
      )}
      <OpensHere
        label={words.addRing}
        open={adding === "ring" || kit.rings.length === 0}
        onOpen={() => onAdding("ring")}
        form={() => (
          <RingForm
            onDone={(id) => {
              if (id !== undefined) onChoose({ ring: id });
              onAdding(null);
            }}
          />
        )}
      />
      {outers.length === 0 ? null : (
        <Choice
          question={words.double}
          options={[
            { value: "", label: words.single },
            ...outers.map(({ id, body }) => ({
              value: id as string,
              label: words.outerOf(nameOf(body.name)),
            })),
          ]}
          chosen={choices.outer ?? ""}
          onChoose={(id) => onChoose({ outer: outers.find((one) => one.id === id)?.id ?? null })}
        />
      )}
    </>
  );
};
