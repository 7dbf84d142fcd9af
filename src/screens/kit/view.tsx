/** The kit: what is measured once and chosen by name at every test. */
import { Fragment } from "preact";
import { useState } from "preact/hooks";
import type { Kit } from "../../record/kinds/kit.ts";
import { DemoTag } from "../demo/demo-note.tsx";
import { AskOnce } from "../parts/ask-once.tsx";
import { useHouse } from "../parts/house.ts";
import { useLive } from "../parts/live.ts";
import { OpensHere, useFocusHere } from "../parts/opens-here.tsx";
import { Page } from "../parts/page.tsx";
import type { Reader } from "../parts/reader.ts";
import { href } from "../parts/route.ts";
import { forgetTyped, typedHere } from "../parts/typed-store.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { writeMoment } from "../send/moment.ts";
import { CorrectForm, NewForm } from "./form-of.tsx";
import { sizeWords } from "./item-words.ts";
import { KIT_FORM, NEW_THING } from "./kit-form.tsx";
import { type KitItem, type KitList, readKit, readTestsByKit } from "./kit-list.ts";
import { KIT_WORDS } from "./words.ts";
import "./kit.css";

/** What is open: the form for a new thing of a type, or for one that is corrected. */
type Open = { readonly new: Kit["type"] } | { readonly id: string };

/** The form that something was typed into before the page was loaded again. */
const openAtFirst = (): Open | null => {
  const [name] = typedHere(KIT_FORM);
  const added = PARTS.find(({ type }) => name === NEW_THING + type);
  return added === undefined ? (name === undefined ? null : { id: name }) : { new: added.type };
};

const read = async (records: Reader) => {
  const [kit, tests, people] = await Promise.all([
    readKit(records),
    readTestsByKit(records),
    records.list({ kind: "person" }),
  ]);
  return { kit, tests, names: new Map<string, string>(people.map(({ id, body }) => [id, body.name])) };
};

type Found = Awaited<ReturnType<typeof read>>;

const PARTS: readonly { readonly type: Kit["type"]; readonly of: (kit: KitList) => readonly KitItem[] }[] = [
  { type: "rope", of: ({ ropes }) => ropes },
  { type: "ring", of: ({ rings }) => rings },
  { type: "hole-template", of: ({ templates }) => templates },
  { type: "bottle", of: ({ bottles }) => bottles },
  { type: "ruler", of: ({ rulers }) => rulers },
];

/** The screen. */
export const KitScreen = () => {
  const house = useHouse();
  const words = useWordsOf(KIT_WORDS);
  const found = useLive(() => read(house.records), []);
  const [open, setOpen] = useState<Open | null>(openAtFirst);
  return (
    <Page title={words.title} back={href({ at: "send" })} area="send">
      {found === undefined
        ? null
        : PARTS.map(({ type, of }) => (
            <Part key={type} type={type} items={of(found.kit)} found={found} open={open} onOpen={setOpen} />
          ))}
    </Page>
  );
};

/** One type: its list, and the key that adds one. */
const Part = (props: {
  readonly type: Kit["type"];
  readonly items: readonly KitItem[];
  readonly found: Found;
  readonly open: Open | null;
  readonly onOpen: (open: Open | null) => void;
}) => {
  const { type, items, found, open, onOpen } = props;
  const words = useWordsOf(KIT_WORDS)[type];
  const adding = open !== null && "new" in open && open.new === type;
  const close = () => onOpen(null);
  return (
    <section class="kit-part">
      <h2>{words.heading}</h2>
      <p>{words.about}</p>
      {items.length > 0 ? (
        <ul class="rows">
          {items.map((item) => (
            <Item
              key={item.id}
              item={item}
              found={found}
              open={open !== null && "id" in open && open.id === item.id}
              onOpen={(now) => onOpen(now ? { id: item.id } : null)}
            />
          ))}
        </ul>
      ) : adding ? null : (
        <p class="kit-none">{words.none}</p>
      )}
      <OpensHere
        class="keys kit-add"
        label={words.add}
        open={adding}
        onOpen={() => onOpen({ new: type })}
        form={() => <NewForm type={type} onDone={close} />}
      />
    </section>
  );
};

/** One thing: its row, or the form that corrects it. */
const Item = (props: {
  readonly item: KitItem;
  readonly found: Found;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}) => {
  const { item, found, open, onOpen } = props;
  const [form, row] = useFocusHere<HTMLDivElement, HTMLDivElement>(open);
  const close = () => onOpen(false);
  return (
    <li>
      {open ? (
        <div ref={form} tabIndex={-1}>
          <CorrectForm item={item} onDone={close} />
          <DeleteItem item={item} tests={found.tests.get(item.id) ?? 0} onDone={close} />
        </div>
      ) : (
        <div ref={row}>
          <ItemRow item={item} found={found} onOpen={() => onOpen(true)} />
        </div>
      )}
    </li>
  );
};

const ItemRow = (props: { readonly item: KitItem; readonly found: Found; readonly onOpen: () => void }) => {
  const house = useHouse();
  const words = house.words.value;
  const kit = useWordsOf(KIT_WORDS);
  const { id, body, changed } = props.item;
  const thing = kit[body.type];
  const shown = body.name === "" ? words.common.noName : body.name;
  const tests = props.found.tests.get(id) ?? 0;
  const by = changed?.by == null ? "" : (props.found.names.get(changed.by) ?? "");
  return (
    <div class="kit-row">
      <div>
        <b>{shown}</b>
        <small>
          {sizeWords(kit, body, house.settings.value.habits).map((size, at, all) => (
            <Fragment key={size}>
              <span class="kit-size">{at < all.length - 1 ? `${size} ·` : size}</span>{" "}
            </Fragment>
          ))}
        </small>
        <small>{thing.tests(tests)}</small>
        <small>
          <DemoTag id={id} />
        </small>
        {changed === null ? null : (
          <small>{kit.changed(writeMoment(changed.atMs, words.common.tongue), by === "" ? null : by)}</small>
        )}
      </div>
      <button type="button" class="key" aria-label={thing.correctTitle(shown)} onClick={props.onOpen}>
        {kit.correct}
      </button>
    </div>
  );
};

const DeleteItem = (props: {
  readonly item: KitItem;
  readonly tests: number;
  readonly onDone: () => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const thing = useWordsOf(KIT_WORDS)[props.item.body.type];
  const remove = async () => {
    const done = await house.write(house.pen.remove(props.item.id));
    if (done.ok) {
      forgetTyped(KIT_FORM + props.item.id);
      props.onDone();
    } else house.tell(done.problem);
  };
  return (
    <div class="kit-delete">
      <AskOnce
        label={words.common.delete}
        question={thing.deleteTitle(props.item.body.name || words.common.noName)}
        hint={thing.deleteHint(props.tests)}
        yes={words.common.delete}
        onYes={remove}
      />
    </div>
  );
};
