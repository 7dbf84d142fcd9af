import { describe, expect, it } from "vitest";
import { HABITS } from "../../../src/record/units.ts";
import { FIRST_CLICKER } from "../../../src/screens/parts/settings.ts";
import { keyName, percentOf, presetOf, targetOf, taught } from "../../../src/screens/settings/model.ts";

describe("teaching a key", () => {
  it("puts the key in the place of the one that the answer had", () => {
    const { clicker, lost } = taught(FIRST_CLICKER, "bare", { key: "PageDown", code: "PageDown" });
    expect(clicker.filter(({ answer }) => answer === "bare")).toEqual([
      { answer: "bare", key: "PageDown", code: "PageDown" },
    ]);
    expect(lost).toEqual([]);
    expect(clicker).toHaveLength(FIRST_CLICKER.length);
  });

  it("takes the key from the answer that had it, in capitals too, and says which one lost it", () => {
    const { clicker, lost } = taught(FIRST_CLICKER, "bare", { key: "R", code: "KeyR" });
    expect(lost).toEqual(["residue"]);
    expect(clicker.some(({ answer }) => answer === "residue")).toBe(false);
  });

  it("changes nothing when an answer is taught its own key", () => {
    const { clicker, lost } = taught(FIRST_CLICKER, "undo", { key: "Backspace", code: "Backspace" });
    expect(lost).toEqual([]);
    expect(new Set(clicker)).toEqual(new Set(FIRST_CLICKER));
  });
});

it("names a key as it is written on it, and one without a name by its place", () => {
  const names = { " ": "Space" };
  expect(keyName({ key: "r", code: "KeyR" }, names)).toBe("R");
  expect(keyName({ key: " ", code: "Space" }, names)).toBe("Space");
  expect(keyName({ key: "Unidentified", code: "MediaSelect" }, names)).toBe("MediaSelect");
});

it("knows the presets, and everything else as mixed", () => {
  expect(presetOf(HABITS.metric)).toBe("metric");
  expect(presetOf(HABITS.us)).toBe("us");
  expect(presetOf({ ...HABITS.metric, area: "ac" })).toBe("uk-mixed");
});

it("offers 30 % (the definition of conservation tillage) and 75 % (common practice), and keeps own numbers", () => {
  expect(percentOf("conservation-tillage")).toBe(30);
  expect(percentOf("protection")).toBe(75);
  expect(targetOf(30)).toBe("conservation-tillage");
  expect(targetOf(42)).toBe("own");
  expect(targetOf(null)).toBe("none");
});
