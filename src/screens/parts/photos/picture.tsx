/**
 * A photo's picture on the page. Its bytes are read when it comes near the screen, and its address is taken
 * back as soon as it is no longer shown.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { photo } from "../../../store/photos.ts";
import { useHouse } from "../house.ts";
import { useNear } from "../near.ts";
import type { Listed } from "../reader.ts";
import { useWordsOf } from "../words-of.ts";
import { PHOTO_WORDS } from "./words.ts";

/** The address of a photo's bytes: undefined while they are read, null when they are not on this device. */
const useAddress = (sha256: string, near: boolean): string | null | undefined => {
  const { records, tell } = useHouse();
  const [address, setAddress] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    if (!near) return undefined;
    let over = false;
    let mine: string | null = null;
    void photo(records.connection, sha256).then((row) => {
      if (over) return;
      if (!row.ok) tell(row.problem);
      else if (row.value === undefined) setAddress(null);
      else {
        mine = URL.createObjectURL(new Blob([row.value.bytes], { type: row.value.type }));
        setAddress(mine);
      }
    });
    return () => {
      over = true;
      // A picture keeps its bytes in memory for as long as its address stands.
      if (mine !== null) URL.revokeObjectURL(mine);
      setAddress(undefined);
    };
  }, [records, tell, sha256, near]);
  return address;
};

/** The picture, or in words why it is not to be seen. */
export const Picture = (props: { readonly photo: Listed<"photo">; readonly alt: string }) => {
  const { photos: words } = useWordsOf(PHOTO_WORDS);
  const { sha256, widthPx, heightPx } = props.photo.body;
  const place = useRef<HTMLSpanElement>(null);
  const address = useAddress(sha256, useNear(place));
  if (address === null || address === undefined)
    return (
      <span ref={place} class="picture-away">
        {/* Who does not see it is told of it all the same, wherever the page stands. */}
        <span class="out-of-sight">{props.alt}: </span>
        {address === null ? words.missing : words.opening}
      </span>
    );
  return (
    <img
      class="picture"
      src={address}
      alt={props.alt}
      width={widthPx}
      height={heightPx}
      decoding="async"
      draggable={false}
    />
  );
};
