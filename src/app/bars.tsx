/** Bars above every screen: what the store, a newer build or a failed touch has to say. */
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import { sentenceFor } from "../screens/catalogue.ts";
import type { House } from "../screens/parts/house.ts";
import type { Notice } from "../store/notice.ts";
import { notices, problems } from "./house.ts";
import type { unsavedWords } from "./unsaved.ts";
import { changedElsewhere, chunkMissing, takeUpdate, updateAsked, updateWaiting } from "./update.ts";

const Bar = (props: {
  readonly children: ComponentChildren;
  readonly label?: string;
  readonly onPress?: () => void;
}) => (
  <div class="bar" role="alert">
    <p>{props.children}</p>
    {props.onPress === undefined ? null : (
      <button type="button" class="key" onClick={props.onPress}>
        {props.label}
      </button>
    )}
  </div>
);

const forget = (type: Notice["type"]) => {
  const left = new Map(notices.value);
  left.delete(type);
  notices.value = left;
};

const reload = () => location.reload();

/** How long after the start the words for unsaved values are fetched. */
const FETCH_AFTER_MS = 3000;

/** Puts unsaved values into words: not needed for the first key, and at hand before anything can be lost. */
const useUnsavedWords = (): typeof unsavedWords | null => {
  const [say, setSay] = useState<{ readonly words: typeof unsavedWords } | null>(null);
  useEffect(() => {
    const later = setTimeout(() => {
      import("./unsaved.ts").then(
        (loaded) => setSay({ words: loaded.unsavedWords }),
        () => undefined,
      );
    }, FETCH_AFTER_MS);
    return () => clearTimeout(later);
  }, []);
  return say?.words ?? null;
};

/** The bars. While a line is counted a newer build is not offered: it would stand in the way of the keys. */
export const Bars = (props: { readonly house: House; readonly running: boolean }) => {
  const words = props.house.words.value.bars;
  const said = notices.value;
  const say = useUnsavedWords();
  const gone = said.get("gone");
  const all = [
    said.has("busy") ? <Bar>{words.busy}</Bar> : null,
    said.has("storage-full") ? (
      <Bar label={words.close} onPress={() => forget("storage-full")}>
        {words.full}
      </Bar>
    ) : null,
    said.has("newer-window") ? (
      <Bar label={words.load} onPress={reload}>
        {words.newer}
      </Bar>
    ) : null,
    said.has("blocked") ? <Bar>{words.blocked}</Bar> : null,
    said.has("refused") ? (
      <Bar label={words.close} onPress={() => forget("refused")}>
        {words.refused}
      </Bar>
    ) : null,
    gone?.type === "gone" ? (
      <Bar label={words.load} onPress={reload}>
        {words.gone}{" "}
        {say === null
          ? ""
          : `${gone.commands.map((command) => say(props.house.words.value, command)).join("; ")}.`}
      </Bar>
    ) : null,
    changedElsewhere.value ? (
      <Bar label={words.load} onPress={reload}>
        {words.changed}
      </Bar>
    ) : null,
    chunkMissing.value ? (
      <Bar label={words.load} onPress={reload}>
        {words.chunk}
      </Bar>
    ) : null,
    updateWaiting.value && !props.running ? (
      updateAsked.value ? (
        <Bar>{words.taking}</Bar>
      ) : (
        <Bar label={words.take} onPress={takeUpdate}>
          {words.update}
        </Bar>
      )
    ) : null,
    ...problems.value.map((problem) => (
      <Bar
        key={problem.code}
        label={words.close}
        onPress={() => {
          problems.value = problems.value.filter((one) => one !== problem);
        }}
      >
        {sentenceFor(props.house.words.value, problem)}
      </Bar>
    )),
  ];
  // Over a running test the bars lie on the head: pushing the screen down would move the keys.
  return <div class={`bars ${props.running ? "over-head" : ""}`}>{all}</div>;
};
