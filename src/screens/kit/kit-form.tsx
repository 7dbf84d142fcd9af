/** What every form of the kit has: the name, how many tests a correction touches, and the keys. */
import type { ComponentChildren } from "preact";
import type { RecordId } from "../../record/ids.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import { useHouse } from "../parts/house.ts";
import { Key, WriteLine } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { useOnce } from "../parts/once.ts";
import { Brought, useForget, useKeeping, useTyped } from "../parts/typed.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { type KitItem, nameTaken, readTestsByKit, sortedKit } from "./kit-list.ts";
import { KIT_WORDS } from "./words.ts";
import "./kit-form.css";

/** A form of the kit is told which thing it corrects, and says when it is done; without an id it was closed. */
export type OnDone = (id?: RecordId<"kit">) => void;

/** Names of the forms of the kit on their page begin like that. */
export const KIT_FORM = "kit ";

/** What follows for a new thing of a type, before the type itself. */
export const NEW_THING = "new ";

/** The name of a form: of a new thing of a type, or of one that is corrected. */
export const kitFormName = (type: Kit["type"], id: RecordId<"kit"> | undefined): string =>
  `${KIT_FORM}${id ?? NEW_THING + type}`;

/** Everything of a thing but its type and its name. */
export type Sizes<B extends Kit> = B extends Kit ? Omit<B, "type" | "name"> : never;

/**
 * The frame of a form. With `before` it corrects that thing, and says first how many tests the correction
 * touches.
 */
export const KitForm = <B extends Kit>(props: {
  readonly type: B["type"];
  readonly before: Pick<KitItem<B>, "id" | "body"> | undefined;
  /** A name to begin with, from those that are taken. */
  readonly propose?: (taken: readonly string[]) => string;
  /** What is to be kept, or null while a number is missing or odd; asked when the key is touched. */
  readonly sizes: () => Sizes<B> | null;
  /** More to say about a correction that touches tests. */
  readonly touchesMore?: string;
  readonly onDone: OnDone;
  readonly children: ComponentChildren;
  /** What stands below the keys. */
  readonly below?: ComponentChildren;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const kit = useWordsOf(KIT_WORDS);
  const thing = kit[props.type];
  const { before } = props;
  const [written, setWritten] = useTyped("name", before?.body.name ?? null);
  const [busy, once] = useOnce();
  const forget = useForget();
  const keeping = useKeeping();
  const leave = (id?: RecordId<"kit">) => {
    forget();
    props.onDone(id);
  };
  const found = useLive(async () => {
    const [rows, tests] = await Promise.all([
      house.records.list({ kind: "kit" }),
      before === undefined ? null : readTestsByKit(house.records),
    ]);
    const { ropes, rings, templates, bottles, rulers } = sortedKit(rows);
    const alike = [...ropes, ...rings, ...templates, ...bottles, ...rulers].filter(
      ({ body }) => body.type === props.type,
    );
    return { alike, tests: before === undefined ? 0 : (tests?.get(before.id) ?? 0) };
  }, [before?.id]);
  // Nothing is proposed before it is known what is taken: a letter must not change under the thumb.
  const proposed = found === undefined ? "" : props.propose?.(found.alike.map(({ body }) => body.name));
  const name = written ?? proposed ?? "";
  const tests = found?.tests ?? 0;
  const keep = async () => {
    const sizes = props.sizes();
    if (sizes === null) return;
    const body = { ...sizes, type: props.type, name: name.trim() } as unknown as B;
    const command = before === undefined ? house.pen.write("kit", body) : house.pen.change(before.id, body);
    const done = await keeping(() => house.write(command));
    if (done.ok) leave(command.id as RecordId<"kit">);
    else house.tell(done.problem);
  };
  return (
    <form
      class="kit-form"
      onSubmit={(event) => {
        event.preventDefault();
        once(keep);
      }}
    >
      <h3>
        {before === undefined ? thing.addTitle : thing.correctTitle(before.body.name || words.common.noName)}
      </h3>
      <Brought />
      <WriteLine
        label={thing.name}
        value={name}
        hint={nameTaken(found?.alike ?? [], name, before?.id) ? thing.nameTaken : thing.nameHint}
        onWrite={setWritten}
      />
      {props.children}
      {before === undefined || found === undefined ? null : (
        <p role="status">
          {thing.touches(tests)}
          {tests > 0 && props.touchesMore !== undefined ? ` ${props.touchesMore}` : ""}
        </p>
      )}
      <div class="keys two">
        <Key onPress={() => leave()}>{words.common.close}</Key>
        <Key look="solid" off={busy || found === undefined} onPress={() => once(keep)}>
          {before === undefined ? thing.save : thing.saveCorrected(tests)}
        </Key>
      </div>
      {props.below ?? null}
    </form>
  );
};
