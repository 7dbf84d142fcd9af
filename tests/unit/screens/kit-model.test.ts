import { describe, expect, it } from "vitest";
import { english } from "../../../src/screens/catalogue.ts";
import { sizeToKeep } from "../../../src/screens/kit/measured.ts";
import { marksRule, spacingRule, spacingText, USUAL } from "../../../src/screens/kit/rope-sizes.ts";
import { numberState } from "../../../src/screens/parts/number-line.tsx";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

const words = english(TRADE_WORDS["uk-ie"]);
const typed = (text: string) => ({ typed: text, confirmed: false });

describe("usual ropes", () => {
  it("are 100 marks at 15 cm and at 1 ft", () => {
    // Journal of Soil and Water Conservation 76(5): 403 (2021): 100 points, 0.15 m apart.
    expect(USUAL.metric).toEqual({ marks: 100, spacingM: 0.15 });
    // University of Missouri Extension G1570 (1993): 100 ft, a mark at every foot; 1 ft is 0.3048 m.
    expect(USUAL.foot).toEqual({ marks: 100, spacingM: 0.3048 });
  });

  it("keep their exact spacing although the form shows it rounded in the other unit", () => {
    const text = spacingText(0.15, "in");
    expect(text).toBe("5.91");
    expect(sizeToKeep({ si: 0.15, text }, text, 5.91, "in")).toBe(0.15);
    expect(sizeToKeep({ si: 0.15, text }, "6", 6, "in")).toBeCloseTo(0.1524, 12);
  });
});

describe("numbers of a rope", () => {
  const marks = marksRule("whole marks");
  const spacing = spacingRule("cm", "no spacing");

  it("takes a decimal comma like a point", () => {
    expect(numberState(words, typed("12,5"), spacing)).toEqual({ is: "good", value: 12.5 });
    expect(numberState(words, typed("12.5"), spacing)).toEqual({ is: "good", value: 12.5 });
  });

  it("asks about an odd number and keeps it after yes", () => {
    expect(numberState(words, typed("5"), marks).is).toBe("odd");
    expect(numberState(words, { typed: "5", confirmed: true }, marks)).toEqual({ is: "good", value: 5 });
  });

  it("refuses what no rope can have, whatever was said before", () => {
    for (const text of ["0", "-3", "2.5", "10001"])
      expect(numberState(words, { typed: text, confirmed: true }, marks)).toEqual({
        is: "wrong",
        sentence: "whole marks",
      });
    expect(numberState(words, typed("0"), spacing)).toEqual({ is: "wrong", sentence: "no spacing" });
  });

  it("offers both meanings of 1,234 where both are possible, and the possible one where only one is", () => {
    expect(numberState(words, typed("1,234"), spacing)).toMatchObject({ is: "odd", meant: [1.234, 1234] });
    expect(numberState(words, typed("1,234"), marks)).toMatchObject({ is: "odd", meant: [1234] });
  });

  it("says what is wrong with text and with two separators", () => {
    expect(numberState(words, typed("many"), marks).is).toBe("wrong");
    expect(numberState(words, typed("1,234.5"), spacing).is).toBe("wrong");
    expect(numberState(words, typed(""), spacing)).toEqual({
      is: "wrong",
      sentence: words.problems["record/number-empty"],
    });
  });
});
