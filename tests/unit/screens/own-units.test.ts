import { describe, expect, it } from "vitest";
import { HABITS, toSi } from "../../../src/record/units.ts";
import { english } from "../../../src/screens/catalogue.ts";
import { BOUNDARY_WORDS } from "../../../src/screens/fields/words.boundary.ts";
import { SENTENCES } from "../../../src/screens/findings/sentences.ts";
import { possibleIn } from "../../../src/screens/kit/measured.ts";
import { ACROSS, HOLDS, STEP } from "../../../src/screens/kit/sizes.ts";
import { areaText, plainStep } from "../../../src/screens/measure/rings/figures.ts";
import { RING_WORDS } from "../../../src/screens/measure/rings/words.ts";
import { farWords, ownSentence } from "../../../src/screens/parts/own-units.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { UNIT_WORDS } from "../../../src/screens/parts/words.units.ts";

const trade = TRADE_WORDS["us-ca"];
const { metric, us } = HABITS;

// By hand with 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 mile = 5280 ft, 1 US fl oz = 29.5735 mL.
describe("a sentence with a metric fact", () => {
  const said = (
    code: `science/${string}`,
    facts: Record<string, number>,
    habits: typeof us | typeof metric,
  ) =>
    ownSentence(
      english(trade),
      habits,
      { code, facts },
      { ...SENTENCES.en(trade), ...BOUNDARY_WORDS.en(trade).problems },
    );

  it.each([
    [
      "science/drops-too-small",
      { steps: 20, mm: 20 },
      "20 of its steps, 20 mm, are",
      "20 of its steps, 0.79 in, are",
    ],
    ["science/drops-too-small", { steps: 20, mm: 31.8 }, "31.8 mm", "1.25 in"],
    ["science/holes-close-together", { holes: 2, metres: 20 }, "within 20 m of", "within 66 ft of"],
    ["science/field-too-large", { mostKm: 50 }, "more than 50 km from", "more than 31.1 miles from"],
  ] as const)("%s is said in the person's own units", (code, facts, inMetric, inUs) => {
    expect(said(code, facts, metric)).toContain(inMetric);
    expect(said(code, facts, us)).toContain(inUs);
  });

  it("keeps its gap where the fact is missing, and says every other sentence as it is", () => {
    expect(said("science/holes-close-together", { holes: 2 }, us)).toContain("within {metres} m of");
    expect(said("science/one-ring-only", {}, us)).toBe(SENTENCES.en(trade)["science/one-ring-only"]);
  });
});

it("says far distances in kilometres or miles", () => {
  expect([farWords(2, metric), farWords(2, us)]).toEqual(["2 km", "1.2 miles"]);
});

describe("sizes of the kit that are possible", () => {
  it.each([
    ["cm", ACROSS, ["2", "300"]],
    ["in", ACROSS, ["0.788", "118"]],
    ["mL", HOLDS, ["10", "200,000"]],
    ["fl-oz", HOLDS, ["0.339", "6,760"]],
    ["mm", STEP, ["0.1", "50"]],
    ["in", STEP, ["0.00394", "1.96"]],
  ] as const)("in %s", (unit, { possible }, words) => {
    expect(possibleIn(unit, possible)).toEqual(words);
    // What the sentence names is never refused.
    for (const [at, word] of words.entries()) {
      const si = toSi(Number(word.replace(",", "")), unit);
      if (at === 0) expect(si).toBeGreaterThanOrEqual(possible[0] * (1 - 1e-12));
      else expect(si).toBeLessThanOrEqual(possible[1] * (1 + 1e-12));
    }
  });
});

it("says the area of a ring and the step of a ruler that nobody named in the unit that they are read in", () => {
  // π · 15² = 706.86 cm², and 706.86 / 2.54² = 109.56 in².
  const areaM2 = Math.PI * 0.15 ** 2;
  expect([areaText(areaM2, metric), areaText(areaM2, us)]).toEqual(["706.9 cm²", "109.6 in²"]);
  expect([plainStep(metric), plainStep(us)]).toEqual(["1 mm", "0.0394 in"]);
});

it("spells the litre as the metre is spelled", () => {
  expect(UNIT_WORDS.en(trade).L).toBe("liters");
  expect(UNIT_WORDS.en(TRADE_WORDS["uk-ie"]).L).toBe("litres");
});

it("says what water weighs in the unit that it is carried in", () => {
  const { water } = RING_WORDS.en(TRADE_WORDS["uk-ie"]);
  const hint = (habits: typeof us | typeof metric) => water.hintPlain(water.weighs[habits.waterCarried]);
  expect(hint(metric)).toMatch(/^1 L weighs 1 kg\. /u);
  // 3.785411784 L of 1 kg are 8.345 lb of 0.45359237 kg.
  expect(hint(us)).toMatch(/^1 US gallon weighs about 8\.3 lb\. /u);
});
