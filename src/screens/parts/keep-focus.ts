/**
 * Where the focus goes when what it stood on gives way to something else. Without this a keyboard stands at the
 * top of the page again after every form that opens or closes in the place of its key.
 */

/** A child of an element, by its place among the others. */
interface Place {
  readonly parent: Element;
  readonly at: number;
}

/** Nobody is put on a key that deletes: Enter held a moment too long would press it. */
const KEYS = "a[href], button:not(:disabled, .danger), summary";
const LINES = "input, textarea, select, fieldset";

/** From an element up to all that is drawn. */
const placesOf = (element: Element): readonly Place[] => {
  const places: Place[] = [];
  for (let one = element; one.parentElement !== null; one = one.parentElement) {
    const parent = one.parentElement;
    if (parent === document.body) break;
    places.push({ parent, at: [...parent.children].indexOf(one) });
  }
  return places;
};

/** A form as a whole and not its first line, which would bring a phone's keyboard up; else the first key. */
const standIn = (there: Element): HTMLElement | null => {
  const keys = there.matches(KEYS) ? there : there.querySelector(KEYS);
  const has = there.matches(LINES) || there.querySelector(LINES) !== null;
  const found = has ? there : keys;
  return found instanceof HTMLElement && found.checkVisibility() ? found : null;
};

/**
 * Puts the focus on an element, and what opened there above the foot: its keys would lie under it. A key that
 * stands where the finger just was is not scrolled away from under it.
 */
export const stand = (on: HTMLElement): void => {
  on.focus({ preventScroll: true });
  if (!on.matches(KEYS) && on.closest(".foot") === null) on.scrollIntoView({ block: "nearest" });
};

/** What took the place of an element that is gone; null when nothing did that may take the focus. */
const followerOf = ({ parent, at }: Place): HTMLElement | null => {
  const there = parent.children[Math.min(at, parent.children.length - 1)];
  return there === undefined ? null : standIn(there);
};

/** Moves the focus on from an element that was switched off or taken away. */
const moveOn = (held: Element, places: readonly Place[]): void => {
  const place = places.find(({ parent }) => parent.isConnected);
  if (place === undefined) return;
  // Handles on a map are drawn anew under the finger, and what a map holds must not be scrolled.
  const map = place.parent.closest<HTMLElement>(".ground > section");
  if (map !== null) {
    map.focus({ preventScroll: true });
    return;
  }
  // A key that was switched off keeps its neighbours, and none of them may be pressed instead of it.
  const follower = held.isConnected ? null : followerOf(place);
  const heir = follower ?? place.parent;
  if (!(heir instanceof HTMLElement)) return;
  if (!heir.matches(KEYS)) heir.tabIndex = -1;
  // Around the place may be the whole page, which nobody wants moved.
  if (heir === follower || heir.offsetHeight < innerHeight / 2) stand(heir);
  else heir.focus({ preventScroll: true });
};

const isLost = (): boolean => document.activeElement === null || document.activeElement === document.body;

/** Watches the focus until the signal ends it. Screens that move the focus themselves come first. */
export const keepFocus = (signal: AbortSignal): void => {
  let held: Element | null = null;
  let places: readonly Place[] = [];
  let address = "";
  const isGone = (): boolean => held !== null && (!held.isConnected || held.matches(":disabled"));
  const replace = (): void => {
    // Another screen begins at its top.
    if (held !== null && isGone() && isLost() && location.hash === address) moveOn(held, places);
  };
  // Left for the empty page: what happens to it from now on is nobody's place.
  const letGo = (): void => {
    if (isLost() && !isGone()) held = null;
  };
  const gone = new MutationObserver(() => {
    if (!isGone()) return;
    // Two frames: whoever knows better has moved it by then.
    requestAnimationFrame(() => requestAnimationFrame(replace));
  });
  const hold = ({ target }: FocusEvent): void => {
    gone.disconnect();
    if (!(target instanceof Element)) return;
    held = target;
    address = location.hash;
    places = placesOf(target);
    gone.observe(target, { attributeFilter: ["disabled"] });
    for (const { parent } of places) gone.observe(parent, { childList: true });
  };
  document.addEventListener("focusin", hold, { signal });
  document.addEventListener("focusout", () => requestAnimationFrame(letGo), { signal });
  signal.addEventListener("abort", () => gone.disconnect());
};
