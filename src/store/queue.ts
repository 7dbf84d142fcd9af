/** The touches of one page, in order: each is written before the next one begins. */
import type { Applied } from "../record/command/apply.ts";
import type { Command } from "../record/command/command.ts";
import { failed, type Result } from "../record/result.ts";
import type { Tell } from "./notice.ts";

/** How many touches may wait behind the one that is being written. */
export const MOST_WAITING = 20;
/** After how long a write says that another window is busy, in milliseconds. It goes on waiting. */
const BUSY_AFTER_MS = 3000;

/** Commands that are applied together. */
export type Touch = readonly Command[];
/** What each command of a touch did, or why none of them was applied. */
export type Answer = Result<readonly Applied[]>;

/** Touches in order. */
export interface Queue {
  /**
   * Takes a touch and answers once it is written; `store/queue-full` at once when 20 are waiting. After
   * `store/gone` every touch behind gets the same answer, untried.
   */
  readonly run: (touch: Touch) => Promise<Answer>;
  /** Touches not yet written, the one being written first. */
  readonly pending: () => readonly Touch[];
}

interface Waiting {
  readonly touch: Touch;
  readonly resolve: (answer: Answer) => void;
  readonly reject: (reason: unknown) => void;
}

/** Makes a queue that writes by `apply`. */
export const orderedQueue = (apply: (touch: Touch) => Promise<Answer>, tell: Tell): Queue => {
  const waiting: Waiting[] = [];
  let current: Waiting | undefined;

  const watched = async (touch: Touch): Promise<Answer> => {
    let said = false;
    const timer = setTimeout(() => {
      said = true;
      tell({ type: "busy", waiting: true });
    }, BUSY_AFTER_MS);
    try {
      return await apply(touch);
    } finally {
      clearTimeout(timer);
      if (said) tell({ type: "busy", waiting: false });
    }
  };
  const writeAll = async (): Promise<void> => {
    for (current = waiting.shift(); current !== undefined; current = waiting.shift()) {
      try {
        const answer = await watched(current.touch);
        current.resolve(answer);
        if (!answer.ok && answer.problem.code === "store/gone")
          for (const { resolve } of waiting.splice(0)) resolve(answer);
      } catch (error) {
        current.reject(error);
      }
    }
  };
  return {
    run: (touch) => {
      if (waiting.length >= MOST_WAITING)
        return Promise.resolve(failed("store/queue-full", { most: MOST_WAITING }));
      return new Promise((resolve, reject) => {
        waiting.push({ touch, resolve, reject });
        if (current === undefined) void writeAll();
      });
    },
    pending: () => [...(current === undefined ? [] : [current]), ...waiting].map(({ touch }) => touch),
  };
};
