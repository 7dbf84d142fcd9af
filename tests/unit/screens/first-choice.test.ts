import { expect, it } from "vitest";
import { firstChoice } from "../../../src/screens/welcome/first-choice.ts";

// Units by region: Unicode CLDR supplemental data, measurementSystem (from memory).
it.each([
  [["en-GB"], { trade: "uk-ie", habits: "uk-mixed" }],
  [["en-IE"], { trade: "uk-ie", habits: "metric" }],
  [["en-US"], { trade: "us-ca", habits: "us" }],
  [["en-CA"], { trade: "us-ca", habits: "metric" }],
  [["en-AU"], { trade: "au-nz", habits: "metric" }],
  [["en-NZ", "en-US"], { trade: "au-nz", habits: "metric" }],
  [["de-DE"], { trade: "uk-ie", habits: "metric" }],
])("%j: %j", (languages, choice) => {
  expect(firstChoice(languages)).toEqual(choice);
});

it("takes a region that is written out before one that is only likely", () => {
  expect(firstChoice(["en", "en-AU"]).trade).toBe("au-nz");
});

it("goes by the likely region when none is written out: English alone is most likely American", () => {
  expect(firstChoice(["en"])).toEqual({ trade: "us-ca", habits: "us" });
});

it("starts where the browser reports no language that Intl takes", () => {
  expect(firstChoice(["C", ""])).toEqual({ trade: "uk-ie", habits: "metric" });
  expect(firstChoice([])).toEqual({ trade: "uk-ie", habits: "metric" });
});
