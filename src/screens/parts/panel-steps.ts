/** Panels of a running test as steps of the browser's history: Back closes the panel before it leaves the test. */
import { effect } from "@preact/signals";
import { useEffect } from "preact/hooks";

/** What a test says of its panels. `S` is what has to be known to open the same panel again. */
export interface PanelSteps<S> {
  /** What stands open, read from signals; null while it is not known where work stopped. */
  readonly now: () => S | null;
  /** What the browser's history says, which outlives a reload; null on a step that was not made here. */
  readonly kept: () => S | null;
  /** How many steps above the test itself it lies; 0 for its keys. */
  readonly depth: (stand: S | null) => number;
  readonly same: (a: S, b: S) => boolean;
  /** What is put into the browser's history. */
  readonly state: (stand: S) => object | null;
  /** Opens what stood open when the page was loaded again. */
  readonly begin: (kept: S | null) => void;
  /** Opens what the browser went to. */
  readonly arrive: (kept: S | null) => void;
  /** Closes the panel by its own key. */
  readonly leave: () => void;
}

/**
 * Keeps panels and history in step. Opening a panel adds a step; closing it by a key of its own goes back by
 * it, so that no step is left over that Back would seem to do nothing at. A page that is loaded again inside
 * a panel opens it again. Escape closes as Back does.
 *
 * @param of makes what the model says of its panels; asked once for each model
 */
export const useSteps = <M, S>(model: M, of: (model: M) => PanelSteps<S>): void => {
  useEffect(() => {
    const steps = of(model);
    steps.begin(steps.kept());
    // Going back takes a moment; what is asked for meanwhile is looked at when the browser has arrived.
    let going = false;
    const follow = (): void => {
      const now = steps.now();
      if (going || now === null) return;
      const kept = steps.kept();
      const up = steps.depth(now) - steps.depth(kept);
      if (up > 0) history.pushState(steps.state(now), "");
      else if (up < 0) {
        going = true;
        history.go(up);
      } else if (kept === null || !steps.same(now, kept)) history.replaceState(steps.state(now), "");
    };
    const stop = effect(follow);
    const arrived = (): void => {
      if (going) {
        going = false;
        follow();
        return;
      }
      steps.arrive(steps.kept());
    };
    const closeByKey = (event: KeyboardEvent): void => {
      if (event.key !== "Escape" || steps.depth(steps.now()) === 0) return;
      event.preventDefault();
      steps.leave();
    };
    addEventListener("popstate", arrived);
    addEventListener("keydown", closeByKey);
    return () => {
      stop();
      removeEventListener("popstate", arrived);
      removeEventListener("keydown", closeByKey);
    };
  }, [model, of]);
};
