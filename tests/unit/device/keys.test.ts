import { describe, expect, it } from "vitest";
import { answerOf, isPlainPress, type KeyMeaning, type KeySignal } from "../../../src/device/keys.ts";

const meanings: readonly KeyMeaning<"residue" | "bare" | "green">[] = [
  { key: "r", code: "", answer: "residue" },
  { key: "PageDown", code: "PageDown", answer: "bare" },
  { key: "1", code: "Numpad1", answer: "green" },
  { key: "1", code: "Digit1", answer: "residue" },
];
const press = (change: Partial<KeySignal>): KeySignal => ({
  key: "r",
  code: "KeyR",
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  isComposing: false,
  ...change,
});

describe("the answer of a key", () => {
  it.each([
    [{ key: "r", code: "KeyR" }, "residue"],
    [{ key: "R", code: "KeyR" }, "residue"],
    [{ key: "PageDown", code: "" }, "bare"],
    [{ key: "Unidentified", code: "PageDown" }, "bare"],
    [{ key: "1", code: "Numpad1" }, "green"],
    [{ key: "1", code: "Digit1" }, "residue"],
    [{ key: "x", code: "KeyX" }, null],
    [{ key: "Unidentified", code: "" }, null],
    [{ key: "", code: "" }, null],
  ])("%j: %s", (pressed, answer) => {
    expect(answerOf(meanings, pressed)).toBe(answer);
  });

  it("goes by what is written before where it lies", () => {
    const taught = [
      { key: "a", code: "KeyQ", answer: "bare" },
      { key: "q", code: "KeyA", answer: "green" },
    ] as const;
    expect(answerOf(taught, { key: "q", code: "KeyQ" })).toBe("green");
    expect(answerOf(taught, { key: "й", code: "KeyQ" })).toBe("bare");
  });

  it("nameless keys never match each other", () => {
    expect(
      answerOf([{ key: "Unidentified", code: "", answer: "bare" }], { key: "Unidentified", code: "F13" }),
    ).toBeNull();
  });
});

describe("a press that can be an answer", () => {
  it.each([
    [{}, true],
    [{ key: "R" }, true],
    [{ ctrlKey: true }, false],
    [{ altKey: true }, false],
    [{ metaKey: true }, false],
    [{ isComposing: true }, false],
    [{ key: "Shift", code: "ShiftLeft" }, false],
    [{ key: "CapsLock", code: "CapsLock" }, false],
    [{ key: "Unidentified", code: "" }, false],
    [{ key: "Unidentified", code: "F13" }, true],
  ])("%j: %s", (change, answer) => {
    expect(isPlainPress(press(change))).toBe(answer);
  });
});
