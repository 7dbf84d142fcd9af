/** Bringing a file in: read, shown, and only then taken or left. */

import { useEffect, useRef, useState } from "preact/hooks";
import { sentenceFor } from "../catalogue.ts";
import type { FileProgress, Preview } from "../parts/files-desk.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { workAhead } from "../parts/work-ahead.ts";
import { FilePreview } from "./preview.tsx";
import { Progress } from "./progress.tsx";
import { SEND_WORDS } from "./words.ts";

type State =
  | { readonly is: "idle"; readonly said: string; readonly wrong: string }
  | { readonly is: "reading" | "taking"; readonly progress: FileProgress | null }
  | { readonly is: "preview"; readonly preview: Preview };

const START: FileProgress = { step: "reading", done: 0, of: null };

/** The keys and words around bringing a file in. */
export const BringIn = () => {
  const house = useHouse();
  const words = useWordsOf(SEND_WORDS).send;
  const [state, setState] = useState<State>({ is: "idle", said: "", wrong: "" });
  const stop = useRef<AbortController | null>(null);
  const waits = useRef<string | null>(null);
  useEffect(
    () => () => {
      stop.current?.abort();
      // Nobody can answer the preview any more once the screen was left.
      if (waits.current !== null) void house.files.leave(waits.current);
    },
    [house],
  );
  const idle = (said: string, wrong = "") => {
    waits.current = null;
    setState({ is: "idle", said, wrong });
    if (said !== "") house.say(said);
  };
  const read = async (file: File) => {
    const reading = new AbortController();
    stop.current = reading;
    setState({ is: "reading", progress: START });
    const staged = await house.files.stage(
      file,
      (progress) => {
        if (!reading.signal.aborted) setState({ is: "reading", progress });
      },
      reading.signal,
    );
    if (reading.signal.aborted) {
      // It may have been read to its end at the very moment of stopping.
      if (staged.ok) void house.files.leave(staged.value.import);
      idle(words.left);
    } else if (staged.ok) {
      waits.current = staged.value.import;
      setState({ is: "preview", preview: staged.value });
    } else idle("", sentenceFor(house.words.value, staged.problem));
  };
  const take = async (preview: Preview) => {
    waits.current = null;
    setState({ is: "taking", progress: { step: "bringing-in", done: 0, of: null } });
    const brought = await house.files.bringIn(preview.import, (progress) =>
      setState({ is: "taking", progress }),
    );
    if (!brought.ok) {
      idle("", sentenceFor(house.words.value, brought.problem));
      return;
    }
    const { name, new: added, changed, photos } = brought.value;
    idle(words.done(name, added, changed, photos));
    void workAhead(house);
  };
  const leave = async (preview: Preview) => {
    waits.current = null;
    const left = await house.files.leave(preview.import);
    if (left.ok) idle(words.left);
    else idle("", sentenceFor(house.words.value, left.problem));
  };
  if (state.is === "preview")
    return (
      <FilePreview
        preview={state.preview}
        onTake={() => void take(state.preview)}
        onLeave={() => void leave(state.preview)}
      />
    );
  if (state.is !== "idle")
    return (
      <div class="desk">
        <Progress progress={state.progress} />
        {state.is === "taking" ? (
          <p>{words.doNotClose}</p>
        ) : (
          <div class="keys">
            <Key onPress={() => stop.current?.abort()}>{words.stop}</Key>
          </div>
        )}
      </div>
    );
  return (
    <div class="desk">
      <div class="keys">
        <label class="key file">
          {words.choose}
          <input
            class="out-of-sight"
            type="file"
            onChange={(event) => {
              const input = event.currentTarget;
              const file = input.files?.[0];
              // The same file may be chosen once more.
              if (file !== undefined) void read(file).finally(() => (input.value = ""));
            }}
          />
        </label>
      </div>
      <p>{state.said}</p>
      <p role="alert" class="wrong">
        {state.wrong}
      </p>
    </div>
  );
};
