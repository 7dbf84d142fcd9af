/** Two keys beside each other: take a photo now, or choose pictures that lie on the device. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { sentenceFor } from "../../catalogue.ts";
import { useHouse } from "../house.ts";
import { useWordsOf } from "../words-of.ts";
import { keepPhoto } from "./model.ts";
import { PHOTO_WORDS } from "./words.ts";
import "./photos.css";

interface PhotoKeyProps {
  /** What the photos are of; or what makes it, once there is a picture, and gives null when it cannot. */
  readonly of: RecordId | (() => Promise<RecordId | null>);
  /**
   * Writes down what is not yet: a camera takes so much memory that a phone may throw the page away behind it.
   * Left out where everything on the screen is on record anyway.
   */
  readonly before?: () => Promise<void>;
  /** A photo was kept that was not there before. */
  readonly onKept?: (photo: RecordId<"photo">) => void;
}

/** Keys to take and to choose photos, and under them what becomes of these. */
export const PhotoKey = (props: PhotoKeyProps) => {
  const house = useHouse();
  const { photos: words, problems } = useWordsOf(PHOTO_WORDS);
  const [doing, setDoing] = useState<string | null>(null);
  const [done, setDone] = useState<readonly string[]>([]);
  const left = useRef(false);
  useEffect(() => {
    left.current = false;
    return () => {
      left.current = true;
    };
  }, []);
  const { of } = props;
  /** What is to be said of one file; nothing of a photo that was kept as usual. */
  const keepOne = async (file: File, fromCamera: boolean): Promise<readonly string[] | "kept"> => {
    const photo = await keepPhoto(house, typeof of === "function" ? of : async () => of, file, fromCamera);
    if (!photo.ok) return [sentenceFor(house.words.value, photo.problem, problems)];
    if (photo.value === null) return [];
    const { id, again, plain } = photo.value;
    if (again) return [words.again];
    props.onKept?.(id);
    return plain ? [words.plain] : "kept";
  };
  const keep = async (files: readonly File[], fromCamera: boolean) => {
    const said = new Set<string>();
    let kept = 0;
    setDone([]);
    // One after the other: two large pictures open at once are more than an old phone holds.
    for (const [at, file] of files.entries()) {
      setDoing(files.length === 1 ? words.making : words.makingOf(at + 1, files.length));
      const one = await keepOne(file, fromCamera);
      if (one === "kept") kept += 1;
      else for (const sentence of one) said.add(sentence);
    }
    if (left.current) {
      // The screen was left meanwhile: a photo that was not kept must not go without a word.
      for (const sentence of said) house.say(sentence);
      return;
    }
    setDoing(null);
    setDone([...(kept > 0 ? [words.kept(kept)] : []), ...said]);
  };
  return (
    <div class="photo-keys">
      <div class="keys two">
        <FileKey camera busy={doing !== null} before={props.before} onFiles={(files) => keep(files, true)}>
          {words.take}
        </FileKey>
        <FileKey
          camera={false}
          busy={doing !== null}
          before={props.before}
          onFiles={(files) => keep(files, false)}
        >
          {words.choose}
        </FileKey>
      </div>
      <p class="aside photo-said" role="status">
        {doing ?? (done.length > 0 ? done.join(" ") : words.hint)}
      </p>
    </div>
  );
};

const FileKey = (props: {
  readonly camera: boolean;
  readonly busy: boolean;
  readonly before: (() => Promise<void>) | undefined;
  readonly onFiles: (files: readonly File[]) => Promise<void>;
  readonly children: string;
}) => {
  const input = useRef<HTMLInputElement>(null);
  const open = async () => {
    await props.before?.();
    input.current?.click();
  };
  return (
    <>
      <button
        type="button"
        class="key plain"
        disabled={props.busy}
        onClick={() => (props.before === undefined ? input.current?.click() : void open())}
      >
        {props.children}
      </button>
      <input
        ref={input}
        class="out-of-sight"
        type="file"
        accept="image/*"
        tabIndex={-1}
        aria-hidden="true"
        aria-label={props.children}
        multiple={!props.camera}
        {...(props.camera ? { capture: "environment" as const } : {})}
        onChange={(event) => {
          const chosen = [...(event.currentTarget.files ?? [])];
          // The same picture chosen once more has to be noticed too.
          event.currentTarget.value = "";
          if (chosen.length > 0) void props.onFiles(chosen);
        }}
      />
    </>
  );
};
