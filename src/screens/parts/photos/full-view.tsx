/** One photo as large as the screen. Back closes it, so does its key; a page loaded again shows it again. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { AskOnce } from "../ask-once.tsx";
import { useHouse } from "../house.ts";
import { Key } from "../keys.tsx";
import type { Listed } from "../reader.ts";
import { useWordsOf } from "../words-of.ts";
import { Picture } from "./picture.tsx";
import { PHOTO_WORDS } from "./words.ts";

/** The photo at which the browser's history stands; it outlives a reload. */
const photoNow = (): string | null => {
  const state: unknown = history.state;
  return typeof state === "object" && state !== null && "photo" in state && typeof state.photo === "string"
    ? state.photo
    : null;
};

/** Which photo is open, as a step of the browser's history. */
export const useOpenPhoto = (): {
  readonly open: string | null;
  readonly show: (id: RecordId<"photo">) => void;
  readonly close: () => void;
} => {
  const [open, setOpen] = useState(photoNow);
  useEffect(() => {
    const arrived = () => setOpen(photoNow());
    addEventListener("popstate", arrived);
    return () => removeEventListener("popstate", arrived);
  }, []);
  return {
    open,
    show: (id) => {
      history.pushState({ photo: id }, "");
      setOpen(id);
    },
    // Closed by going back, so that no step is left over that Back would seem to do nothing at.
    close: () => {
      if (photoNow() !== null) history.back();
      else setOpen(null);
    },
  };
};

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
