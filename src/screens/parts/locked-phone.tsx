/** Said once, before the first ring: what an alarm of a page cannot do. */

import { useHouse } from "./house.ts";
import { Key, LinkKey } from "./keys.tsx";
import { href } from "./route.ts";
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
      <div class="keys two">
        <LinkKey to={href({ at: "help-topic", topic: "locked" })}>{words.lockedMore}</LinkKey>
        <Key onPress={() => house.changeSettings({ toldLocked: true })}>{words.lockedTaken}</Key>
      </div>
    </section>
  );
};
