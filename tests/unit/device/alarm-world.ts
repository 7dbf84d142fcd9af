/** A device whose clocks and timers move when a test says so: hours pass in a moment. */
import type { AlarmParts } from "../../../src/device/alarm.ts";
import type { ClockReading, PauseListener } from "../../../src/device/clock.ts";

export interface AlarmWorld {
  readonly parts: AlarmParts;
  /** When the alarm rang, in milliseconds of true time since the world began. */
  readonly rang: number[];
  readonly badges: number[];
  /** Timers that went off so far. */
  wakeUps(): number;
  now(): ClockReading;
  /** True time goes on, and every timer goes off when its time comes. */
  pass(ms: number): Promise<void>;
  /** Somebody, or the network, sets the wall clock. */
  setWall(byMs: number): void;
  /** The renderer is stopped: no timer goes off before it goes on; both clocks go on. */
  stop(ms: number): Promise<void>;
  /** The page is hidden and the phone sleeps: the monotonic clock stands still, no timer goes off. */
  sleep(ms: number): Promise<void>;
}

interface Timer {
  readonly job: () => void;
  readonly atMonoMs: number;
}

/** Lets the promises of the alarm settle. */
const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 20; turn++) await Promise.resolve();
};

/** @param claim decides who sounds; this page when left out */
export const newWorld = (claim: AlarmParts["claim"] = () => Promise.resolve(true)): AlarmWorld => {
  let trueMs = 0;
  let monoMs = 1000;
  let wallMs = 1_700_000_000_000;
  let page = 1;
  let wakeUps = 0;
  const rang: number[] = [];
  const badges: number[] = [];
  const timers = new Set<Timer>();
  const pauses = new Set<PauseListener>();
  const now = (): ClockReading => ({ wallMs, monoMs, pageId: `page-${page}` });

  const forward = (ms: number, monoToo: boolean): void => {
    trueMs += ms;
    wallMs += ms;
    if (monoToo) monoMs += ms;
  };
  const goOff = async (): Promise<boolean> => {
    const [next] = [...timers].sort((a, b) => a.atMonoMs - b.atMonoMs);
    if (next === undefined || next.atMonoMs > monoMs) return false;
    timers.delete(next);
    wakeUps += 1;
    next.job();
    await settle();
    return true;
  };
  const pass = async (ms: number): Promise<void> => {
    await settle();
    const endMs = trueMs + ms;
    for (;;) {
      while (await goOff());
      if (trueMs >= endMs) return;
      const nextMs = Math.min(...[...timers].map(({ atMonoMs }) => atMonoMs - monoMs));
      forward(Math.min(endMs - trueMs, Math.max(0, nextMs)), true);
    }
  };
  const pause = (): void => {
    const last = now();
    page += 1;
    for (const tell of [...pauses]) tell(last, now());
  };
  return {
    rang,
    badges,
    now,
    pass,
    wakeUps: () => wakeUps,
    setWall: (byMs) => {
      wallMs += byMs;
    },
    stop: async (ms) => {
      forward(ms, true);
      await pass(0);
    },
    sleep: async (ms) => {
      pause();
      forward(ms, false);
      // What the clock did while the page was away is known to nobody: another page id at each look.
      page += 1;
      pause();
      await pass(0);
    },
    parts: {
      readClock: now,
      watchPauses: (tell, signal) => {
        pauses.add(tell);
        signal.addEventListener("abort", () => pauses.delete(tell));
      },
      later: (job, inMs) => {
        const timer = { job, atMonoMs: monoMs + inMs };
        timers.add(timer);
        return () => void timers.delete(timer);
      },
      claim,
      ring: () => rang.push(trueMs),
      showBadge: (count) => badges.push(count),
    },
  };
};
