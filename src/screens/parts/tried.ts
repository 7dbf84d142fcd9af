/** A form that was to be kept with something wrong in it. */
import { useEffect, useState } from "preact/hooks";

/** What a form finds wrong, or wants to hear a second time. */
const WRONG = 'main [aria-invalid="true"], main .wrong[role="alert"]';

const toFirstWrong = (): void => {
  const wrong = document.querySelector<HTMLElement>(WRONG);
  const part = wrong?.closest<HTMLElement>("label, fieldset");
  if (wrong === null || part == null) return;
  const stands = wrong instanceof HTMLInputElement ? wrong : part;
  if (stands === part) part.tabIndex = -1;
  stands.focus({ preventScroll: true });
  // With the sentence that stands below the line.
  part.scrollIntoView({ block: "nearest" });
};

/**
 * Whether somebody tried to keep a form that cannot be kept yet: from then on its lines say why. Each time the
 * focus goes to the first of them, because the key may stand far below it.
 *
 * @returns whether it was tried, and what to call when it is
 */
export const useTried = (): readonly [boolean, () => void] => {
  const [times, setTimes] = useState(0);
  useEffect(() => {
    if (times > 0) toFirstWrong();
  }, [times]);
  return [times > 0, () => setTimes((before) => before + 1)];
};
