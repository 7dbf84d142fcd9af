/** The longest task of a page, by the processor time that it took itself: what else the machine does is not in it. */
import type { CDPSession, Page } from "playwright-core";

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread, microseconds. */
  readonly tdur?: number;
}

const MARK = "here-is-the-page";
const TASKS = "disabled-by-default-devtools.timeline";

const eventsOf = async (session: CDPSession, during: () => Promise<unknown>): Promise<TraceEvent[]> => {
  const events: TraceEvent[] = [];
  const take = ({ value }: { readonly value: readonly object[] }) => {
    events.push(...(value as TraceEvent[]));
  };
  session.on("Tracing.dataCollected", take);
  await session.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: { recordMode: "recordUntilFull", includedCategories: [TASKS, "blink.user_timing"] },
  });
  try {
    await during();
  } finally {
    const told = new Promise<void>((resolve) => session.once("Tracing.tracingComplete", () => resolve()));
    await session.send("Tracing.end");
    await told;
    session.off("Tracing.dataCollected", take);
  }
  return events;
};

/**
 * Watches the tasks of a page's own thread while something is done.
 *
 * @returns how long the longest took, in milliseconds
 */
export const longestTask = async (page: Page, during: () => Promise<unknown>): Promise<number> => {
  const session = await page.context().newCDPSession(page);
  const events = await eventsOf(session, async () => {
    // Tells the thread of the page from all others.
    await page.evaluate((name) => void performance.mark(name), MARK);
    await during();
  });
  await session.detach();
  const mark = events.find(({ name }) => name === MARK);
  if (mark === undefined) throw new Error("The browser did not trace the page");
  const tasks = events.filter(
    ({ name, pid, tid }) => name === "RunTask" && pid === mark.pid && tid === mark.tid,
  );
  if (tasks.length === 0) throw new Error("The browser did not trace a task");
  return Math.round(Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000);
};
