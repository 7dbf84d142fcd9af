import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MAX_TYPED_LENGTH, readNumber } from "../../../src/record/number.ts";

const bounds = { min: 0, max: 300 };

const readValue = (typed: string): number | string => {
  const read = readNumber(typed, bounds);
  return read.ok ? read.value.value : read.problem.code;
};
const oddOf = (typed: string, within = bounds): readonly string[] => {
  const read = readNumber(typed, within);
  return read.ok ? read.value.unusual : [read.problem.code];
};
/** Every digit, sign and separator of a double written out, without exponent. */
const writtenOut = (value: number): string => {
  const [digits = "", exponent = "0"] = Math.abs(value).toString().split("e");
  const [whole = "", part = ""] = digits.split(".");
  const shift = Number(exponent);
  const all = whole + part;
  const point = whole.length + shift;
  const padded = point <= 0 ? "0".repeat(1 - point) + all : all.padEnd(point, "0");
  const at = Math.max(point, 1);
  const text = padded.length > at ? `${padded.slice(0, at)}.${padded.slice(at)}` : padded;
  return (value < 0 ? "-" : "") + text;
};

describe("readNumber understands", () => {
  it.each([
    ["12,5", 12.5],
    ["12.5", 12.5],
    ["  12,5 ", 12.5],
    ["\u00a012,5\u202f", 12.5],
    ["+12,5", 12.5],
    ["- 3", -3],
    ["\u22123,5", -3.5],
    ["\u20133", -3],
    [",5", 0.5],
    [".5", 0.5],
    ["007", 7],
    ["\uff11\uff12\uff0e\uff15", 12.5],
    ["\u0661\u0662\u066b\u0665", 12.5],
    ["\u061c-\u0661\u0662", -12],
    ["\u06f1\u06f2\u060c\u06f5", 12.5],
    ["\u0967\u0968.\u096b", 12.5],
  ])("%j as %d", (typed, value) => {
    expect(readValue(typed)).toBe(value);
  });

  it("keeps the text exactly as it was typed", () => {
    const read = readNumber(" 12,50 ", bounds);
    expect(read.ok && read.value.typed).toBe(" 12,50 ");
  });
});

describe("readNumber says what is wrong with", () => {
  it.each([
    ["", "record/number-empty"],
    [" \u00a0\u200e", "record/number-empty"],
    ["1,234.5", "record/number-two-separators"],
    ["1.234,5", "record/number-two-separators"],
    ["1,234,567", "record/number-two-separators"],
    ["1..2", "record/number-two-separators"],
    ["1 234", "record/number-grouped"],
    ["1\u00a0234,5", "record/number-grouped"],
    ["1'234", "record/number-grouped"],
    ["1\u2019234", "record/number-grouped"],
    ["\u0661\u066c\u0662\u0663\u0664", "record/number-grouped"],
    ["1e5", "record/number-exponent"],
    ["1E-5", "record/number-exponent"],
    ["\uff11e5", "record/number-exponent"],
    ["12,", "record/number-unfinished"],
    ["-", "record/number-unfinished"],
    [".", "record/number-unfinished"],
    ["about 12", "record/number-not-a-number"],
    ["12 mm", "record/number-not-a-number"],
    ["--5", "record/number-not-a-number"],
    ["5-", "record/number-not-a-number"],
    ["5\u00b2", "record/number-not-a-number"],
    ["\u00bd", "record/number-not-a-number"],
    ["0x10", "record/number-not-a-number"],
    ["Infinity", "record/number-not-a-number"],
    ["NaN", "record/number-not-a-number"],
    ["1/2", "record/number-not-a-number"],
    ["\u5341\u4e8c", "record/number-not-a-number"],
    ["9".repeat(MAX_TYPED_LENGTH + 1), "record/number-too-long"],
  ])("%j: %s", (typed, code) => {
    expect(readValue(typed)).toBe(code);
  });

  it("hands the beginning of the text to the sentence, without cutting a character in two", () => {
    const read = readNumber(`${"a".repeat(23)}\u{1f33e}\u{1f33e}`, bounds);
    expect(!read.ok && read.problem.facts).toEqual({ typed: `${"a".repeat(23)}\u{1f33e}` });
  });
});

describe("readNumber asks about", () => {
  it.each([
    ["12,5", []],
    ["0", ["zero"]],
    ["-0", ["zero"]],
    ["0,00", ["zero"]],
    ["-4", ["negative"]],
    ["300", ["above"]],
    ["299,9", []],
    ["1,234", ["maybe-thousands"]],
    ["12.345", ["maybe-thousands"]],
    ["123.456", ["maybe-thousands"]],
    ["-1,234", ["negative", "maybe-thousands"]],
    ["1234.567", ["above"]],
    ["0,125", []],
    ["00.125", []],
    [",125", []],
    ["1,25", []],
    ["1,2345", []],
  ])("%j: %j", (typed, unusual) => {
    expect(oddOf(typed)).toEqual(unusual);
  });

  it("zero and negative values only where the bounds do not hold them", () => {
    const soilTemperatureC = { min: -20, max: 60 };
    expect(oddOf("0", soilTemperatureC)).toEqual([]);
    expect(oddOf("-3", soilTemperatureC)).toEqual([]);
    expect(oddOf("-20", soilTemperatureC)).toEqual(["negative"]);
  });

  it("a value under a bound above zero", () => {
    expect(oddOf("3", { min: 5, max: 10 })).toEqual(["below"]);
    expect(oddOf("5", { min: 5, max: 10 })).toEqual(["below"]);
  });

  it("everything when a bound is no number", () => {
    expect(oddOf("3", { min: Number.NaN, max: Number.NaN })).toEqual(["below", "above"]);
  });

  it("thousands with the other number it may be", () => {
    const read = readNumber("1,234", bounds);
    expect(read.ok && [read.value.value, read.value.asThousands]).toEqual([1.234, 1234]);
    const plain = readNumber("1,23", bounds);
    expect(plain.ok && plain.value.asThousands).toBeNull();
  });

  it("zero without ever returning negative zero, which a file would change", () => {
    expect(Object.is(readValue("-0"), 0)).toBe(true);
  });
});

describe("whatever the text", () => {
  const spiced = fc.string({
    unit: fc.constantFrom(..."0123456789٣۴५７.,٫٬'’ \u00a0\u202f\u200e-+−–eE_xa½²".split("")),
    maxLength: 12,
  });

  it("never throws, never NaN or infinite or negative zero", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 260 }), spiced), (typed) => {
        const read = readNumber(typed, bounds);
        if (!read.ok) return /^record\/number-[a-z-]+$/.test(read.problem.code);
        return (
          Number.isFinite(read.value.value) && !Object.is(read.value.value, -0) && read.value.typed === typed
        );
      }),
      { numRuns: 2000 },
    );
  });

  it("every number that fits the box comes back from its digits, with point or comma", () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.constantFrom(".", ","),
        (value, mark) => {
          const typed = writtenOut(value).replace(".", mark);
          fc.pre(typed.length <= MAX_TYPED_LENGTH);
          return readValue(typed) === value;
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("every short decimal comes back", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999_999, max: 999_999 }),
        fc.integer({ min: 0, max: 5 }),
        (digits, places) => {
          const value = digits / 10 ** places;
          expect(readValue(value.toFixed(places))).toBe(value + 0);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
