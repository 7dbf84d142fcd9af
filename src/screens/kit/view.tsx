/** The kit: what is measured once and chosen by name at every test. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { AskOnce } from "../parts/ask-once.tsx";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { lengthWords } from "../parts/lengths.ts";
import { useLive } from "../parts/live.ts";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { type ListedRope, linesByRope, readRopes } from "./model.ts";
import { RopeForm } from "./rope-form.tsx";
import "./kit.css";

const readKit = async ({ records }: Pick<ReturnType<typeof useHouse>, "records">) => {
  const [ropes, lines] = await Promise.all([readRopes(records), records.list({ kind: "observation" })]);
  return { ropes, lines: linesByRope(lines) };
};

/** The screen. */
export const KitScreen = () => {
  const house = useHouse();
  const words = house.words.value.kit;
  const kit = useLive(() => readKit(house), []);
  const [open, setOpen] = useState<RecordId<"kit"> | "new" | null>(null);
  const close = () => setOpen(null);
  return (
    <Page title={words.title} back={href({ at: "send" })} area="send">
      <h2>{words.ropes}</h2>
      <p>{words.about}</p>
      {kit === undefined ? null : kit.ropes.length === 0 && open !== "new" ? (
        <p>{words.none}</p>
      ) : (
        <ul class="rows">
          {kit.ropes.map((rope) => (
            <li key={rope.id}>
              {open === rope.id ? (
                <>
                  <RopeForm rope={rope} onDone={close} />
                  <DeleteRope rope={rope} lines={kit.lines.get(rope.id) ?? 0} onDone={close} />
                </>
              ) : (
                <RopeRow rope={rope} lines={kit.lines.get(rope.id) ?? 0} onOpen={() => setOpen(rope.id)} />
              )}
            </li>
          ))}
        </ul>
      )}
      {kit === undefined ? null : open === "new" ? (
        <RopeForm onDone={close} />
      ) : (
        <div class="keys rope-add">
          <Key look={kit.ropes.length === 0 ? "solid" : "plain"} onPress={() => setOpen("new")}>
            {words.add}
          </Key>
        </div>
      )}
    </Page>
  );
};

const RopeRow = (props: {
  readonly rope: ListedRope;
  readonly lines: number;
  readonly onOpen: () => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const { habits } = house.settings.value;
  const { name, marks, spacingM } = props.rope.rope;
  const shown = name === "" ? words.common.noName : name;
  return (
    <div class="rope-row">
      <div>
        <b>{shown}</b>
        <small>{words.kit.size(marks, lengthWords("spacing", spacingM, habits))}</small>
        <small>
          {[
            ...(spacingM * marks < 1
              ? []
              : [words.kit.length(lengthWords("ropeLength", spacingM * marks, habits))]),
            words.common.lines(props.lines),
          ].join(" · ")}
        </small>
      </div>
      <button type="button" class="key" aria-label={words.kit.correctTitle(shown)} onClick={props.onOpen}>
        {words.kit.correct}
      </button>
    </div>
  );
};

const DeleteRope = (props: {
  readonly rope: ListedRope;
  readonly lines: number;
  readonly onDone: () => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const remove = async () => {
    const done = await house.write(house.pen.remove(props.rope.id));
    if (done.ok) props.onDone();
    else house.tell(done.problem);
  };
  return (
    <div class="rope-delete">
      <AskOnce
        label={words.common.delete}
        question={words.kit.deleteTitle(props.rope.rope.name || words.common.noName)}
        hint={words.kit.deleteHint(props.lines)}
        yes={words.common.delete}
        onYes={remove}
      />
    </div>
  );
};
