import { expect, it } from "vitest";
import { writeNumber } from "../../../src/screens/parts/numbers.ts";

it("writes less than nothing with the sign for it, and nothing without one", () => {
  expect(writeNumber(-12.3, "en-GB")).toBe("\u221212");
  expect(writeNumber(-0.3, "en-GB")).toBe("0");
  expect(writeNumber(-0.04, "en-GB", 1)).toBe("0");
  expect(writeNumber(-0.06, "en-GB", 1)).toBe("\u22120.1");
  expect(writeNumber(0.3, "en-GB")).toBe("0");
});
