import { describe, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import {
  STEPS,
  type Step,
  type Steps,
  stepBack,
  stepsOf,
  withStep,
} from "../../../src/screens/measure/notes/steps.ts";

const note: RecordId<"observation"> = `observation-${"1".repeat(32)}`;
const photo: RecordId<"photo"> = `photo-${"2".repeat(32)}`;
const none: Steps = { note, done: [], undone: [] };
const said = (from: string, to: string): Step => ({ what: "words", from, to });

describe("steps of a note", () => {
  it("go back one by one, turned round, and forward again as they were", () => {
    const steps = withStep(withStep(none, said("", "a")), { what: "photo", photo, deleted: false });
    const undo = stepBack(steps, "undo");
    expect(undo?.make).toEqual({ what: "photo", photo, deleted: true });
    expect(stepBack(undo?.after ?? none, "undo")?.make).toEqual(said("a", ""));
    const redo = stepBack(undo?.after ?? none, "redo");
    expect(redo?.make).toEqual({ what: "photo", photo, deleted: false });
    expect(redo?.after).toEqual(steps);
    expect(stepBack(none, "undo")).toBeNull();
    expect(stepBack(steps, "redo")).toBeNull();
  });

  it("end what could be redone when something new is done", () => {
    const undone = stepBack(withStep(none, said("", "a")), "undo")?.after ?? none;
    expect(undone.undone).toHaveLength(1);
    expect(withStep(undone, said("", "b")).undone).toEqual([]);
  });

  it("make room: fifty at most, and long texts fewer", () => {
    let steps = none;
    for (let at = 0; at < 60; at++) steps = withStep(steps, said(String(at), String(at + 1)));
    expect(steps.done).toHaveLength(50);
    expect(steps.done.at(-1)).toEqual(said("59", "60"));
    for (let at = 0; at < 20; at++) steps = withStep(steps, said("x".repeat(10_000), "y".repeat(10_000)));
    expect(JSON.stringify(steps.done).length).toBeLessThanOrEqual(100_000);
  });

  it("are read back for their own note alone, and never from a form that means nothing", () => {
    const steps = withStep(none, said("", "a"));
    const read = STEPS.read(JSON.parse(JSON.stringify(steps)));
    expect(stepsOf(note, read)).toEqual(steps);
    const other: RecordId<"observation"> = `observation-${"3".repeat(32)}`;
    expect(stepsOf(other, read)).toEqual({ note: other, done: [], undone: [] });
    for (const wrong of [
      null,
      "text",
      [],
      { note },
      { note, done: [{ what: "photo", photo: "x" }], undone: [] },
    ])
      expect(STEPS.read(JSON.parse(JSON.stringify(wrong)))).toBeUndefined();
  });
});
