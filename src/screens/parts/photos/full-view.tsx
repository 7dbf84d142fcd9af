/** One photo as large as the screen. */
import { useEffect, useRef } from "preact/hooks";
import { AskOnce } from "../ask-once.tsx";
import { useHouse } from "../house.ts";
import { Key } from "../keys.tsx";
import type { Listed } from "../reader.ts";
import { useWordsOf } from "../words-of.ts";
import { Picture } from "./picture.tsx";
import { PHOTO_WORDS } from "./words.ts";

/** The photo, large, with its words under it. */
export const FullView = (props: {
  readonly photo: Listed<"photo">;
  readonly alt: string;
  readonly caption: string;
  readonly taken: string;
  readonly onClose: () => void;
  readonly onDelete: () => Promise<void>;
}) => {
  const { common } = useHouse().words.value;
  const { photos: words } = useWordsOf(PHOTO_WORDS);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    if (element === null || element.open) return;
    element.showModal();
    return () => element.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      class="full-view"
      aria-label={props.alt}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
      // A browser may close it by a gesture of its own without asking; hidden, it must not stay behind. The
      // event of a view that was taken away comes late and speaks of none that is open now.
      onClose={() => {
        if (dialog.current !== null) props.onClose();
      }}
    >
      <div class="full-view-head">
        <Key onPress={props.onClose}>{common.close}</Key>
      </div>
      <Picture photo={props.photo} alt={props.alt} />
      <div class="full-view-foot">
        {props.caption === "" ? null : <p>{props.caption}</p>}
        <p class="aside">{props.taken}</p>
        <AskOnce
          label={words.delete}
          question={words.deleteAsk}
          hint={words.deleteHint}
          yes={common.delete}
          onYes={props.onDelete}
        />
      </div>
    </dialog>
  );
};
