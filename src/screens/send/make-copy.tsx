/** A copy in two touches: prepared and compared first, then shared or saved. */

import { useEffect, useRef, useState } from "preact/hooks";
import { readClock } from "../../device/clock.ts";
import { howToDeliver, saveFile, shareFile } from "../../device/share.ts";
import { sentenceFor } from "../catalogue.ts";
import type { FileProgress, ReadyCopy } from "../parts/files-desk.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { Progress } from "./progress.tsx";
import { SEND_WORDS } from "./words.ts";

type State =
  | { readonly is: "idle"; readonly wrong: string | null }
  | { readonly is: "working"; readonly progress: FileProgress | null }
  | {
      readonly is: "ready";
      readonly copy: ReadyCopy;
      readonly begunAtMs: number;
      readonly sum: number | null;
    };

/** The keys and words around making a copy. `off` while there is nothing to copy; `sum` of what there is. */
export const MakeCopy = (props: { readonly off: boolean; readonly sum: number | null }) => {
  const house = useHouse();
  const words = useWordsOf(SEND_WORDS).send;
  const [state, setState] = useState<State>({ is: "idle", wrong: null });
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const make = async () => {
    const working = new AbortController();
    stop.current = working;
    // What is written down while the copy is made is not in it for sure: the copy counts from its beginning.
    const begunAtMs = readClock().wallMs;
    const { sum } = props;
    setState({ is: "working", progress: null });
    const made = await house.files.makeCopy((progress) => {
      if (!working.signal.aborted) setState({ is: "working", progress });
    }, working.signal);
    if (made.ok) {
      setState({ is: "ready", copy: made.value, begunAtMs, sum });
      house.say(words.compared(made.value.records, made.value.photos));
    } else {
      const stopped = made.problem.code === "exchange/stopped";
      setState({ is: "idle", wrong: stopped ? null : sentenceFor(house.words.value, made.problem) });
    }
  };
  if (state.is === "ready")
    return (
      <Deliver
        copy={state.copy}
        onAll={() => house.changeSettings({ copiedAtMs: state.begunAtMs, copiedSum: state.sum })}
        onAnother={() => setState({ is: "idle", wrong: null })}
      />
    );
  if (state.is === "working")
    return (
      <div class="desk">
        <Progress progress={state.progress} />
        <div class="keys">
          <Key onPress={() => stop.current?.abort()}>{words.stop}</Key>
        </div>
      </div>
    );
  return (
    <div class="desk">
      <div class="keys">
        <Key look="straw" off={props.off} onPress={() => void make()}>
          {words.make}
        </Key>
      </div>
      <p role="alert" class="wrong">
        {state.wrong ?? ""}
      </p>
    </div>
  );
};

/** How a part left this device. */
type Handed = "shared" | "saved";

const Deliver = (props: {
  readonly copy: ReadyCopy;
  readonly onAll: () => void;
  readonly onAnother: () => void;
}) => {
  const house = useHouse();
  const words = useWordsOf(SEND_WORDS).send;
  const { parts, records, photos } = props.copy;
  const [handed, setHanded] = useState<readonly (Handed | null)[]>(() => parts.map(() => null));
  const [refused, setRefused] = useState<readonly number[]>([]);
  const [wrong, setWrong] = useState("");
  const hand = (at: number, how: Handed) => {
    const now = handed.map((before, index) => (index === at ? how : before));
    setHanded(now);
    setWrong("");
    house.say(how === "shared" ? words.shared : words.saved);
    if (now.every((one) => one !== null)) props.onAll();
  };
  const waysOf = (file: File, at: number): Handed =>
    refused.includes(at) || howToDeliver(file) === "save" ? "saved" : "shared";
  const deliver = async (file: File, at: number) => {
    if (waysOf(file, at) === "saved") {
      const saved = saveFile(file);
      if (saved.ok) hand(at, "saved");
      else setWrong(sentenceFor(house.words.value, saved.problem));
      return;
    }
    const shared = await shareFile(file);
    if (!shared.ok) {
      // Saved at the next touch: this one is spent.
      setRefused([...refused, at]);
      setWrong(sentenceFor(house.words.value, shared.problem));
    } else if (shared.value === "shared") hand(at, "shared");
  };
  return (
    <div class="desk">
      <p>
        <b>{words.compared(records, photos)}</b>
      </p>
      {parts.length === 1 ? null : <p>{words.parts}</p>}
      {parts.map((file, at) => {
        const way = waysOf(file, at);
        const how = handed[at] ?? null;
        return (
          <div key={file.name}>
            <p>{words.part(at + 1, parts.length, file.name, file.size)}</p>
            {way === "saved" && how === null ? <p class="aside">{words.cannotShare}</p> : null}
            <div class="keys">
              <Key look={how === null ? "straw" : "plain"} onPress={() => void deliver(file, at)}>
                {way === "saved" ? words.save : words.share}
              </Key>
            </div>
            {how === null ? null : <p>{how === "saved" ? words.saved : words.shared}</p>}
          </div>
        );
      })}
      <p role="alert" class="wrong">
        {wrong}
      </p>
      {handed.some((one) => one !== null) ? (
        <div class="keys">
          <Key onPress={props.onAnother}>{words.another}</Key>
        </div>
      ) : null}
    </div>
  );
};
