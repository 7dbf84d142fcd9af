/** Which key of a keyboard or clicker gives which answer. */

import { useLayoutEffect, useState } from "preact/hooks";
import { teachKey } from "../../device/keys.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { FIRST_CLICKER, type LineAnswer } from "../parts/settings.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { ANSWERS, keyName, taught } from "./model.ts";
import { SETTINGS_WORDS } from "./words.ts";

/** The section of Settings. */
export const ClickerSettings = () => {
  const house = useHouse();
  const words = useWordsOf(SETTINGS_WORDS);
  const { clicker } = house.settings.value;
  const [waitsFor, setWaitsFor] = useState<LineAnswer | null>(null);
  const [said, setSaid] = useState("");
  // It listens as soon as the words ask for a key: a clicker answers at once.
  useLayoutEffect(() => {
    if (waitsFor === null) return;
    const stop = new AbortController();
    void teachKey(stop.signal).then((press) => {
      if (!press.ok) return;
      const now = taught(house.settings.value.clicker, waitsFor, press.value);
      house.changeSettings({ clicker: now.clicker });
      setWaitsFor(null);
      const lost = now.lost.map((answer) => words.answers[answer]).join(", ");
      setSaid(
        [
          words.taught(words.answers[waitsFor], keyName(press.value, words.keyNames)),
          ...(lost === "" ? [] : [words.lost(lost)]),
        ].join(". "),
      );
    });
    return () => stop.abort();
  }, [house, waitsFor, words]);
  return (
    <section class="settings-part">
      <h2>{words.keyboard}</h2>
      <p>{words.keyboardNote}</p>
      <ul class="rows">
        {ANSWERS.map((answer) => {
          const meaning = clicker.find((one) => one.answer === answer);
          return (
            <li class="setting" key={answer}>
              <span>
                <b>{words.answers[answer]}</b>
                <small>
                  {waitsFor === answer
                    ? words.waiting(words.answers[answer])
                    : meaning === undefined
                      ? words.noKey
                      : keyName(meaning, words.keyNames)}
                </small>
              </span>
              <button
                type="button"
                class="key"
                aria-label={waitsFor === answer ? words.stopWaiting : words.teachFor(words.answers[answer])}
                onClick={() => setWaitsFor(waitsFor === answer ? null : answer)}
              >
                {waitsFor === answer ? words.stopWaiting : words.teach}
              </button>
            </li>
          );
        })}
      </ul>
      <p role="status" class="said">
        {said}
      </p>
      <Key
        onPress={() => {
          setWaitsFor(null);
          setSaid("");
          house.changeSettings({ clicker: FIRST_CLICKER });
        }}
      >
        {words.firstLetters}
      </Key>
    </section>
  );
};
