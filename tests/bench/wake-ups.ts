/** How often a page that nobody touches wakes the phone, read from the browser's own trace. */
import type { ChromiumDriver } from "../browser/drivers/chromium.ts";

/** What a page did while it was left alone. */
export interface Idle {
  /** Times that the page's main thread began to work for the page after it had been at rest. */
  readonly wakeUpsPerS: number;
  /** The same with what the browser does for itself: it clears memory up and counts it. */
  readonly withHousekeepingPerS: number;
  /** Timers of the page's own that went off. */
  readonly timersPerS: number;
  /** Time of the processor alone: what else a shared machine does in between is not the page's. */
  readonly longestTaskMs: number;
}

interface TraceEvent {
  readonly name: string;
  readonly cat: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds. */
  readonly ts: number;
  readonly dur?: number;
  /** Time of the processor within `dur`, microseconds. */
  readonly tdur?: number;
  readonly args: { readonly name?: string; readonly data?: { readonly message?: string } };
}

/** Tasks that follow each other within this time belong to one wake-up: a timer, and the frame it drew. */
const REST_MS = 50;
const CATEGORIES = [
  "toplevel",
  "devtools.timeline",
  "disabled-by-default-devtools.timeline",
  "blink.console",
];
/** What a browser calls the work that a page gave it. */
const OF_PAGE = new Set([
  "TimerFire",
  "FunctionCall",
  "FireAnimationFrame",
  "UpdateLayoutTree",
  "Layout",
  "Paint",
]);
/** Marks the page among the processes of the browser, and the time that is looked at. */
const MARK = "left alone";

/** The events of a page's main thread while something goes on, and the time between the two marks. */
interface Traced {
  readonly own: readonly TraceEvent[];
  readonly tasks: readonly TraceEvent[];
  readonly seconds: number;
}

/** Time of the processor alone. */
const tookMs = ({ dur = 0, tdur = dur }: TraceEvent): number => tdur / 1000;

const longestOf = (tasks: readonly TraceEvent[]): number => Math.max(...tasks.map(tookMs));

async function traced(chromium: ChromiumDriver, during: () => Promise<unknown>): Promise<Traced> {
  const browser = chromium.context.browser();
  if (browser === null) throw new Error("The browser of a persistent profile cannot be reached.");
  await browser.startTracing(chromium.page, { categories: CATEGORIES });
  const mark = () => chromium.run((text) => console.timeStamp(text), MARK);
  await mark();
  await during();
  await mark();
  const events: readonly TraceEvent[] = JSON.parse((await browser.stopTracing()).toString()).traceEvents;
  const marks = events.filter(({ name, args }) => name === "TimeStamp" && args.data?.message === MARK);
  const [first, last] = [marks[0], marks.at(-1)];
  if (first === undefined || last === undefined || first === last) throw new Error("No marks in the trace");
  // The marks themselves wake the page.
  const [fromUs, toUs] = [first.ts + 200_000, last.ts - 200_000];
  const own = events
    .filter(({ pid, tid, ts }) => pid === first.pid && tid === first.tid && ts > fromUs && ts < toUs)
    .sort((a, b) => a.ts - b.ts);
  const tasks = own.filter(({ name, ph }) => ph === "X" && /RunTask$/.test(name));
  if (tasks.length === 0) throw new Error("No tasks in the trace");
  return { own, tasks, seconds: (toUs - fromUs) / 1e6 };
}

/**
 * Leaves a page alone and traces it.
 *
 * @param forMs how long
 */
export async function traceIdle(chromium: ChromiumDriver, forMs: number): Promise<Idle> {
  const { own, tasks, seconds } = await traced(chromium, () => chromium.page.waitForTimeout(forMs));
  return {
    wakeUpsPerS: burstsOf(own.filter(({ name }) => OF_PAGE.has(name))) / seconds,
    withHousekeepingPerS: burstsOf(tasks) / seconds,
    timersPerS: own.filter(({ name }) => name === "TimerFire").length / seconds,
    longestTaskMs: longestOf(tasks),
  };
}

/**
 * The longest task of the page's main thread while something is done on it. What is done in the first and the
 * last fifth of a second is not seen: leave the page alone that long before and after.
 */
export async function longestTaskMs(
  chromium: ChromiumDriver,
  during: () => Promise<unknown>,
): Promise<number> {
  return longestOf((await traced(chromium, during)).tasks);
}

/** How many bursts of work these are, in order of time, with a rest before each. */
function burstsOf(events: readonly TraceEvent[]): number {
  let bursts = 0;
  let restsFromUs = Number.NEGATIVE_INFINITY;
  for (const { ts, dur = 0 } of events) {
    if (ts - restsFromUs > REST_MS * 1000) bursts++;
    restsFromUs = Math.max(restsFromUs, ts + dur);
  }
  return bursts;
}
