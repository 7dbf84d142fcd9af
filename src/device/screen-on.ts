/** Keeps the screen lit while a test runs: a phone that locks itself cannot ring. */

/**
 * `on`: the screen stays lit. `refused`: the phone would not (battery saver, or an iPhone that wants a
 * touch first); it is asked again at the next touch. `not-here`: this browser cannot.
 */
export type ScreenOnState = "on" | "refused" | "not-here";

/**
 * Keeps the screen lit until `signal` ends it. The browser takes the permission back whenever the page is
 * hidden; it is asked for again when the page returns, and after a refusal at the next touch, since older
 * WebKit grants it only to a touch (https://bugs.webkit.org/show_bug.cgi?id=255363). Never throws.
 *
 * @param onState told at every change, while the page can be seen
 * @param signal ends it and gives the permission back
 * @example
 * const test = new AbortController();
 * keepScreenOn((state) => (screenState.value = state), test.signal);
 * test.abort();
 */
export const keepScreenOn = (onState: (state: ScreenOnState) => void, signal: AbortSignal): void => {
  if (signal.aborted) return;
  if (typeof navigator === "undefined" || !("wakeLock" in navigator)) {
    onState("not-here");
    return;
  }
  let held: WakeLockSentinel | null = null;
  let asking = false;
  let told: ScreenOnState | null = null;

  const tell = (state: ScreenOnState): void => {
    if (signal.aborted || state === told) return;
    told = state;
    onState(state);
  };
  const letGo = (lock: WakeLockSentinel): void => {
    lock.release().catch(() => undefined);
  };
  const ask = async (): Promise<void> => {
    if (signal.aborted || asking || held !== null || document.visibilityState !== "visible") return;
    asking = true;
    try {
      const lock = await navigator.wakeLock.request("screen");
      if (signal.aborted) {
        letGo(lock); // ended while the phone was thinking: else the screen would stay lit for ever
        return;
      }
      held = lock;
      lock.addEventListener("release", () => {
        held = null;
        // Taken back while the page is seen: the battery saver. Hidden: asked again on return.
        if (document.visibilityState === "visible") tell("refused");
      });
      tell("on");
    } catch {
      // Hidden while asking is no refusal: the return asks again.
      if (document.visibilityState === "visible") tell("refused");
    } finally {
      asking = false;
    }
  };
  const askAgain = (): void => {
    ask().catch(() => undefined);
  };

  document.addEventListener("visibilitychange", askAgain, { signal });
  document.addEventListener("pointerup", askAgain, { signal, capture: true, passive: true });
  signal.addEventListener("abort", () => held !== null && letGo(held), { once: true });
  askAgain();
};

/** Nobody has touched anything for a while; or somebody has again: the glass, a key, or by coming back. */
export type Touched = "untouched" | "glass" | "key" | "back";

/**
 * Tells when nobody has touched the glass or a key for a while, and when somebody does again, until `signal`
 * ends it: a lit screen may then be dimmed. Coming back to the page counts as a touch.
 *
 * @param afterMs how long nobody touches, in milliseconds
 * @param onChange told at the first touch after a while without, and when such a while begins
 * @returns takes something else for a touch, such as an alarm, without telling of it
 */
export const watchUntouched = (
  afterMs: number,
  onChange: (state: Touched) => void,
  signal: AbortSignal,
): (() => void) => {
  let touchedMs = performance.now();
  let untouched = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const wait = (ms: number): void => {
    clearTimeout(timer);
    timer = setTimeout(look, ms);
  };
  // One timer a minute and not one a touch: touches come four a second while a line is counted.
  const look = (): void => {
    const leftMs = afterMs - (performance.now() - touchedMs);
    untouched = leftMs <= 0;
    if (untouched) onChange("untouched");
    else wait(leftMs);
  };
  const touch = (): void => {
    touchedMs = performance.now();
    if (untouched && !signal.aborted) wait(afterMs);
    untouched = false;
  };
  const touchedBy = (by: Touched) => (): void => {
    const tell = untouched;
    touch();
    if (tell) onChange(by);
  };
  if (signal.aborted) return touch;
  const options = { signal, capture: true, passive: true } as const;
  document.addEventListener("pointerdown", touchedBy("glass"), options);
  document.addEventListener("keydown", touchedBy("key"), options);
  document.addEventListener("wheel", touchedBy("key"), options);
  document.addEventListener("visibilitychange", touchedBy("back"), options);
  signal.addEventListener("abort", () => clearTimeout(timer), { once: true });
  wait(afterMs);
  return touch;
};
