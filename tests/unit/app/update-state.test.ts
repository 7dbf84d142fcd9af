import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  hourMs,
  isLookDue,
  nextOfUpdates,
  startOfUpdates,
  type UpdateEffect,
  type UpdateEvent,
  type UpdateState,
} from "../../../src/app/update-state.ts";

function outcome(state: UpdateState, ...events: UpdateEvent[]) {
  const effects: UpdateEffect[] = [];
  let now = state;
  for (const event of events) {
    const step = nextOfUpdates(now, event);
    now = step.state;
    effects.push(step.effect);
  }
  return { state: now, effects };
}

describe("updates of one tab", () => {
  it("takes a waiting build when asked, then reloads", () => {
    const { effects } = outcome(startOfUpdates(true), "update-waiting", "take-asked", "controller-changed");
    expect(effects).toEqual(["none", "skip-waiting", "reload"]);
  });

  it("asks once, however often it is touched", () => {
    const { effects } = outcome(startOfUpdates(true), "update-waiting", "take-asked", "take-asked");
    expect(effects).toEqual(["none", "skip-waiting", "none"]);
  });

  it("reloads when the answer is overdue, and goes on asking then", () => {
    const { effects } = outcome(startOfUpdates(true), "update-waiting", "take-asked", "answer-overdue");
    expect(effects.at(-1)).toBe("reload-asking");
    const after = outcome(startOfUpdates(true), "update-waiting", "asked-before", "controller-changed");
    expect(after.effects).toEqual(["none", "skip-waiting", "reload"]);
  });

  it("does not reload again and again: then somebody has to ask anew", () => {
    const { state, effects } = outcome(
      startOfUpdates(true),
      "update-waiting",
      "asked-before",
      "answer-overdue",
    );
    expect(effects.at(-1)).toBe("none");
    expect(state).toMatchObject({ waiting: true, asked: false });
    const anew = outcome(state, "take-asked", "answer-overdue");
    expect(anew.effects).toEqual(["skip-waiting", "reload-asking"]);
    // It comes late, when nobody waits for it any more.
    expect(outcome(state, "controller-changed").effects).toEqual(["none"]);
  });

  it("goes on asking only where a newer build waits, and does not ask twice", () => {
    expect(outcome(startOfUpdates(true), "asked-before").effects).toEqual(["none"]);
    const touched = outcome(startOfUpdates(true), "update-waiting", "take-asked", "asked-before");
    expect(touched.effects).toEqual(["none", "skip-waiting", "none"]);
  });

  it("is told of a change that it did not ask for, and then catches up at once", () => {
    const { state, effects } = outcome(startOfUpdates(true), "update-waiting", "controller-changed");
    expect(effects).toEqual(["none", "none"]);
    expect(state).toMatchObject({ changedElsewhere: true, waiting: false });
    expect(nextOfUpdates(state, "take-asked").effect).toBe("reload");
  });

  it("takes no notice of the very first worker, but of the one after it", () => {
    const { state } = outcome(startOfUpdates(false), "controller-changed");
    expect(state).toMatchObject({ controlled: true, changedElsewhere: false });
    expect(nextOfUpdates(state, "controller-changed").state.changedElsewhere).toBe(true);
  });

  it("never reloads before it was asked", () => {
    const events = fc.constantFrom<UpdateEvent>(
      "update-waiting",
      "controller-changed",
      "answer-overdue",
      "chunk-missing",
    );
    fc.assert(
      fc.property(fc.boolean(), fc.array(events), (controlled, happened) => {
        const { effects } = outcome(startOfUpdates(controlled), ...happened);
        expect(effects.every((effect) => effect === "none")).toBe(true);
      }),
    );
  });
});

describe("looking for a newer build", () => {
  it("is due after an hour, and when the clock was set back", () => {
    expect(isLookDue(0, hourMs - 1)).toBe(false);
    expect(isLookDue(0, hourMs)).toBe(true);
    expect(isLookDue(hourMs, 0)).toBe(true);
  });
});
