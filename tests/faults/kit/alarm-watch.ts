/**
 * Watches the alarm of a page and turns its wall clock. Both are sent into pages as text, before the app,
 * and see nothing around them; they work on any page of the app.
 */
import type { BrowserContext } from "playwright-core";
import type { ChromiumTab } from "../../browser/drivers/chromium.ts";

declare global {
  /** When the alarm was heard, in milliseconds since 1970 by a clock that no test turns. */
  var heardMs: number[] | undefined;
  /** What was shown at the app's picture, the last one last. */
  var badges: number[] | undefined;
  /** By how much the wall clock of this page was set, in milliseconds. */
  var wallSetMs: number | undefined;
}

/** Notes every alarm: tones that follow each other within two seconds are one. */
function watchAlarm(): void {
  const heard: number[] = [];
  let lastMs = Number.NEGATIVE_INFINITY;
  globalThis.heardMs = heard;
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (whenS) {
    const nowMs = performance.timeOrigin + performance.now();
    if (nowMs - lastMs > 2000) heard.push(Math.round(nowMs));
    lastMs = nowMs;
    start.call(this, whenS);
  };
  const badges: number[] = [];
  globalThis.badges = badges;
  navigator.setAppBadge = async (count) => void badges.push(count ?? 0);
  navigator.clearAppBadge = async () => void badges.push(0);
}

/** Makes the wall clock of the page one that can be set: `Date.now()` and `new Date()` alike. */
function settableWall(): void {
  const Real = Date;
  const nowMs = Real.now.bind(Real);
  Real.now = () => nowMs() + (globalThis.wallSetMs ?? 0);
  globalThis.Date = new Proxy(Real, {
    construct: (target, given, as) =>
      Reflect.construct(target, given.length === 0 ? [Real.now()] : given, as) as object,
  });
}

/** Puts both into every page of the browser that is loaded from now on. */
export async function watchAlarms(context: BrowserContext): Promise<void> {
  await context.addInitScript(watchAlarm);
  await context.addInitScript(settableWall);
}

/** When a page has sounded, in milliseconds since 1970. */
export const heardAt = (tab: ChromiumTab): Promise<number[]> => tab.run(() => globalThis.heardMs ?? []);

/** Sets the wall clock of a page as the network or a person would. */
export const setWall = (tab: ChromiumTab, byMs: number): Promise<void> =>
  tab.run((ms) => {
    globalThis.wallSetMs = ms;
  }, byMs);
