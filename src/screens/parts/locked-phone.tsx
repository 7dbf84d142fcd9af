/** Said once, before the first ring: what an alarm of a page cannot do. */

import { useHouse } from "./house.ts";
import { Key } from "./keys.tsx";
import { ALARM_WORDS } from "./words.alarm.ts";
import { useWordsOf } from "./words-of.ts";

/** That a locked phone cannot ring; nothing once it was read on this device. */
export const LockedPhone = () => {
  const house = useHouse();
  const words = useWordsOf(ALARM_WORDS);
  if (house.settings.value.toldLocked) return null;
  return (
    <section class="locked-phone">
      <p>{words.locked}</p>
      <Key onPress={() => house.changeSettings({ toldLocked: true })}>{words.lockedTaken}</Key>
    </section>
  );
};
