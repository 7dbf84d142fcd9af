/** A worker that starts at the first question, and again after it broke. */

/** How often its script is asked for again, own choice: the next question begins anew. */
const MORE_TRIES = 2;
/** Pause before that, in milliseconds, own choice: one that is being ended is gone by then. */
const PAUSE_MS = 250;

/** What is heard of it. */
export interface Hears<Answer> {
  readonly answer: (answer: Answer) => void;
  /** It ended, and what was asked will not be answered. */
  readonly broke: () => void;
}

/**
 * Asks a worker. Its script comes from the service worker, which a browser ends whenever it likes: one that could
 * not be fetched is asked for again, and then hears everything that was asked. A worker that ran and broke is not,
 * because nobody knows how far it came.
 *
 * @param start makes the worker; nothing is started before the first question
 * @returns posts a question
 */
export const steadyWorker = <Question, Answer>(
  start: () => Worker,
  hears: Hears<Answer>,
): ((question: Question) => void) => {
  let worker: Worker | undefined;
  /** What was asked of a worker of which nothing was heard yet; undefined once something was. */
  let unheard: Question[] | undefined;
  let tries = 0;
  const begin = (): Worker => {
    const started = start();
    let over = false;
    started.addEventListener("message", ({ data }: MessageEvent<Answer>) => {
      if (over) return;
      unheard = undefined;
      hears.answer(data);
    });
    started.addEventListener("error", (event) => {
      if (over) return;
      over = true;
      started.terminate();
      // A script that ran and failed says what failed and where; one that could not be fetched says nothing.
      if (unheard !== undefined && !(event instanceof ErrorEvent) && tries < MORE_TRIES) {
        tries += 1;
        setTimeout(again, PAUSE_MS * tries);
        return;
      }
      worker = undefined;
      hears.broke();
    });
    return started;
  };
  const again = (): void => {
    worker = begin();
    for (const question of unheard ?? []) worker.postMessage(question);
  };
  return (question) => {
    if (worker === undefined) {
      unheard = [];
      tries = 0;
      worker = begin();
    }
    // While the pause lasts this goes to the worker that is over: what counts is that it was asked.
    unheard?.push(question);
    worker.postMessage(question);
  };
};
