import type { RecordId } from "../../../record/ids.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import { moreSentence, stripSentence } from "../../parts/cover-words.ts";
import { useHouse } from "../../parts/house.ts";
import { useLive } from "../../parts/live.ts";
import { changesBeside } from "./heading.ts";

/** The strip as its finished lines tell it, in sentences of fixed height. */
export const StripSoFar = (props: {
  readonly header: LineHeader;
  readonly line: RecordId<"observation">;
  readonly finished: boolean;
}) => {
  const { records, settings, words } = useHouse();
  const { visit, strip, spot } = props.header;
  const now = settings.value;
  const found = useLive(
    // Loaded when the keys already answer: the distributions behind a range are a fifth of all code.
    async () => (await import("../../parts/strip-cover.ts")).stripCover(records, now, props.header),
    [visit, strip, spot, now, props.finished],
    changesBeside(props.line),
  );
  return (
    <p class="strip-so-far">
      {found === undefined
        ? ""
        : `${stripSentence(words.value, found)} ${moreSentence(words.value, found, now)}`}
    </p>
  );
};
