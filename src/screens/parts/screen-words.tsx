/** Said where something runs: this phone will not keep its screen on. */
import { screenOn } from "./can-ring.ts";
import { ALARM_WORDS } from "./words.alarm.ts";
import { useWordsOf } from "./words-of.ts";
import "./screen-words.css";

const mayGoDark = (): boolean => screenOn.value === "refused" || screenOn.value === "not-here";

/**
 * That the screen may go dark, and what to do then; nothing while it stays on. Put it where no key stands
 * below: it comes and goes while somebody works.
 */
export const ScreenWords = (props: { readonly short?: true }) => {
  const words = useWordsOf(ALARM_WORDS);
  if (!mayGoDark()) return null;
  const full = screenOn.value === "refused" ? words.screenRefused : words.screenNotHere;
  return <p class="screen-words">{props.short === true ? words.screenShort : full}</p>;
};

/** The same in a few words, at the end of a head. */
export const ScreenDark = () => {
  const words = useWordsOf(ALARM_WORDS);
  return mayGoDark() ? <div class="head-end screen-dark">{words.dark}</div> : null;
};
