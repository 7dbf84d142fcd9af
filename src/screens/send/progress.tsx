import type { FileProgress } from "../parts/files-desk.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { SEND_WORDS } from "./words.ts";

/** How far a job with files has come; said in words and drawn. */
export const Progress = (props: { readonly progress: FileProgress | null }) => {
  const words = useWordsOf(SEND_WORDS).send;
  const { progress } = props;
  const sentence =
    progress === null
      ? words.progress(words.steps.gathering, 0, null)
      : words.progress(words.steps[progress.step], progress.done, progress.of);
  return (
    <>
      <p>{sentence}</p>
      <progress
        class="progress"
        aria-label={progress === null ? words.steps.gathering : words.steps[progress.step]}
        max={progress?.of ?? 1}
        value={progress === null || progress.of === null ? 0 : progress.done}
      />
    </>
  );
};
