/** What this device promises: whether the records are kept, how much room there is, the home screen. */

import { useEffect, useState } from "preact/hooks";
import { isInstalled, isIosTab } from "../../device/install.ts";
import { askToKeep, isKept, type Keeping, type StorageRoom, storageRoom } from "../../device/storage-room.ts";
import type { Result } from "../../record/result.ts";
import { Key } from "../parts/keys.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { WELCOME_WORDS } from "../welcome/words.ts";
import { installOffer } from "./install-offer.ts";
import { SETTINGS_WORDS } from "./words.ts";

interface Found {
  readonly keeping: Keeping;
  readonly room: Result<StorageRoom>;
}

/** The section of Settings. */
export const ThisDevice = () => {
  const words = useWordsOf(SETTINGS_WORDS);
  const [found, setFound] = useState<Found | null>(null);
  const [inVain, setInVain] = useState(false);
  useEffect(() => {
    let over = false;
    void Promise.all([isKept(), storageRoom()]).then(([keeping, room]) => {
      if (!over) setFound({ keeping, room });
    });
    return () => {
      over = true;
    };
  }, []);
  const ask = async () => {
    const keeping = await askToKeep();
    setFound((before) => (before === null ? before : { ...before, keeping }));
    setInVain(keeping !== "kept");
  };
  return (
    <section class="settings-part">
      <h2>{words.thisDevice}</h2>
      {found === null ? (
        <p class="room-waits" aria-busy="true" />
      ) : (
        <>
          <p>{words.keeping[found.keeping]}</p>
          {found.keeping === "not-kept" ? <Key onPress={() => void ask()}>{words.askAgain}</Key> : null}
          <p role="status">{inVain ? words.askedInVain : ""}</p>
          <p>
            {found.room.ok
              ? words.room(found.room.value.usedBytes, found.room.value.quotaBytes)
              : words.roomUnknown}
          </p>
        </>
      )}
      <HomeScreen />
    </section>
  );
};

const HomeScreen = () => {
  const words = useWordsOf(SETTINGS_WORDS);
  const welcome = useWordsOf(WELCOME_WORDS);
  const [failed, setFailed] = useState(false);
  const offer = installOffer.value;
  if (isInstalled()) return <p>{words.installed}</p>;
  if (isIosTab())
    return (
      <>
        <h3>{words.install}</h3>
        <p>{welcome.ios}</p>
      </>
    );
  if (offer === null && !failed) return null;
  return (
    <>
      <h3>{words.install}</h3>
      <p>{failed ? words.installFailed : words.installNote}</p>
      {offer === null ? null : (
        <Key onPress={() => void offer.ask().then((answer) => setFailed(answer === "failed"))}>
          {words.installKey}
        </Key>
      )}
    </>
  );
};
