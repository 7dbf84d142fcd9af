import { describe, expect, it } from "vitest";
import { HABITS } from "../../../src/record/units.ts";
import { outOfRoundShare } from "../../../src/science/infiltration/ring-set.ts";
import { english } from "../../../src/screens/catalogue.ts";
import { sizeWords } from "../../../src/screens/kit/item-words.ts";
import { kitOf, nameTaken, nextLetter, sortedKit, testsByKit } from "../../../src/screens/kit/kit-list.ts";
import { sizeState, sizeText, sizeToKeep } from "../../../src/screens/kit/measured.ts";
import { ACROSS } from "../../../src/screens/kit/sizes.ts";
import { KIT_WORDS } from "../../../src/screens/kit/words.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { beginSample, fieldOf, holeOf, lineOf, listedOf, ringOf } from "./kit-samples.ts";

const kit = KIT_WORDS.en(TRADE_WORDS["uk-ie"]);

describe("the next letter of a ring", () => {
  it("is the first that is free, whatever the case and the gaps", () => {
    expect(nextLetter([])).toBe("A");
    expect(nextLetter(["A", "b", "D"])).toBe("C");
    expect(nextLetter([" a ", "blue"])).toBe("B");
  });

  it("goes on with two letters after Z, and ends in nothing", () => {
    const all = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
    expect(nextLetter(all)).toBe("AA");
    const pairs = all.flatMap((first) => all.map((second) => first + second));
    expect(nextLetter([...all, ...pairs])).toBe("");
  });
});

const sample = () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "left", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 100, spacingM: 0.15 });
  const b = add("kit", { type: "ring", name: "B", insideM: [0.5, null], heightsM: [], outsideM: null });
  const a = add("kit", { type: "ring", name: "A", insideM: [0.3, 0.31], heightsM: [0.2], outsideM: 0.306 });
  const ruler = add("kit", { type: "ruler", name: "steel", stepM: 0.001 });
  const frame = add("kit", { type: "hole-template", name: "frame", sidesM: [0.2, 0.25] });
  const on = { visit, field, strip };
  add("observation", lineOf({ ...on, rope }));
  add("observation", ringOf({ ...on, ring: a, outer: b, ruler }));
  add("observation", ringOf({ ...on, ring: a }));
  add("observation", holeOf({ ...on, template: frame }));
  add("observation", holeOf({ ...on, template: null, sidesM: [0.2, 0.2] }));
  return { rows: listedOf(rows()), rope, a, b, ruler, frame };
};

describe("the kit in lists", () => {
  it("stands by type and name", () => {
    const { rows } = sample();
    const { rings, ropes, bottles } = sortedKit(rows.kit);
    expect(rings.map(({ body }) => body.name)).toEqual(["A", "B"]);
    expect([ropes.length, bottles.length]).toEqual([1, 0]);
    expect(rings[0]?.changed).toBeNull();
  });

  it("counts every test once for each thing that it was made with", () => {
    const { rows, rope, a, b, ruler, frame } = sample();
    const counts = testsByKit(rows.observation);
    expect([rope, a, b, ruler, frame].map((id) => counts.get(id))).toEqual([1, 2, 1, 1, 1]);
    const double = rows.observation.find(({ body }) => body.type === "ring" && body.outer !== null);
    if (double === undefined) throw new Error("no double ring");
    expect(kitOf(double.body)).toEqual([a, b, ruler]);
  });

  it("knows two of one name, but no two without a name", () => {
    const { rows, a } = sample();
    const { rings } = sortedKit(rows.kit);
    expect(nameTaken(rings, " a", undefined)).toBe(true);
    expect(nameTaken(rings, "A", a)).toBe(false);
    expect(
      nameTaken([{ id: a, body: { ...rings[0]?.body, name: "" } as never, changed: null }], "", undefined),
    ).toBe(false);
  });

  it("says sizes in the person's units, fine enough to be told apart", () => {
    const { rows } = sample();
    const { rings, rulers, templates } = sortedKit(rows.kit);
    const said = (habits: (typeof HABITS)[keyof typeof HABITS]) =>
      [...rings, ...rulers, ...templates].map(({ body }) => sizeWords(kit, body, habits).join(" · "));
    expect(said(HABITS.metric)).toEqual([
      "30 cm by 31 cm inside · not round · 20 cm high · 30.6 cm outside",
      "50 cm inside",
      "reads steps of 1 mm",
      "20 cm by 25 cm",
    ]);
    // 1 in = 25.4 mm exactly (NIST Special Publication 811, appendix B.8).
    expect(said(HABITS.us)[0]).toContain("11.81 in by 12.2 in inside");
    expect(said(HABITS.us)[2]).toBe("reads steps of 0.0394 in");
  });
});

describe("a ring that is not round", () => {
  it("is one whose two measures differ by more than 2 %", () => {
    expect(outOfRoundShare([0.3, 0.306])).toBeNull();
    expect(outOfRoundShare([0.3, 0.309])).toBeCloseTo(0.03, 12);
    expect(outOfRoundShare([0.309, 0.3])).toBeCloseTo(0.03, 12);
    expect(outOfRoundShare([0.3, null])).toBeNull();
  });
});

describe("a size typed into a form", () => {
  const words = english(TRADE_WORDS["uk-ie"]);
  const across = { ...ACROSS, refused: "no ring" };
  const read = (typed: string, unit: "cm" | "in", confirmed = false) =>
    sizeState(words, { typed, confirmed }, unit, across);

  it("is kept without asking at both ends of what is usual, in both units", () => {
    expect(read("8", "cm").is).toBe("good");
    expect(read("80", "cm").is).toBe("good");
    expect(read("12", "in").is).toBe("good");
  });

  it("is asked about when it is odd, and refused when no ring can have it", () => {
    expect(read("300", "cm").is).toBe("odd");
    expect(read("300", "cm", true)).toEqual({ is: "good", value: 300 });
    expect(read("3000", "cm", true)).toEqual({ is: "wrong", sentence: "no ring" });
    expect(read("0", "cm", true).is).toBe("wrong");
    expect(read("-30", "cm", true).is).toBe("wrong");
  });

  it("keeps its exact value while nobody touches it", () => {
    // 1/16 in = 1.5875 mm exactly.
    expect(sizeText(0.0015875, "in")).toBe("0.0625");
    expect(sizeText(0.3, "in")).toBe("11.81");
    expect(sizeToKeep({ si: 0.3, text: "11.81" }, "11.81", 11.81, "in")).toBe(0.3);
    expect(sizeToKeep({ si: 0.3, text: "11.81" }, "12", 12, "in")).toBe(0.3048);
  });
});
