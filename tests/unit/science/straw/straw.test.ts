import { describe, expect, it } from "vitest";
import {
  breakEven,
  gainOfSelling,
  type StrawSale,
  worthPerHa,
} from "../../../../src/science/straw/break-even.ts";
import { couldLeave } from "../../../../src/science/straw/could-leave.ts";
import { balerTakes, chaffShare, leaveAs } from "../../../../src/science/straw/leave-as.ts";
import { baledDryShare, type StrawYear, strawLedger } from "../../../../src/science/straw/ledger.ts";
import {
  afterRain,
  asElement,
  nutrientPerTonne,
  nutrientTaken,
} from "../../../../src/science/straw/nutrients.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, endsOf, kgPerHa, metres, own, share } from "./figures.ts";

describe("ledger", () => {
  const year = (harvestYear: number, more: Partial<StrawYear> = {}): StrawYear => ({
    strip: "strip-a",
    harvestYear,
    areaHa: 4,
    grown: kgPerHa([6000, 7000, 8000]),
    bales: [],
    grazings: [],
    broughtBack: null,
    ...more,
  });
  const bales = [
    {
      count: 40,
      weight: own([240, 250, 260], "kg", "bale-weight"),
      dryShare: own([0.8, 0.85, 0.9], "1", "dry-matter"),
    },
  ];
  const grazings = [{ head: 20, days: 10, eaten: own([6, 8, 10], "kg", "eaten") }];

  it("is bales times weight, head times days, and what is left between the ends", () => {
    const { lines } = reached(strawLedger([year(2025, { bales, grazings })]));
    const [line] = lines;
    // 40·240·0.8/4 = 1920, 40·250·0.85/4 = 2125, 40·260·0.9/4 = 2340; 20·10·6/4 = 300, 400, 500.
    expect(endsOf(line?.carriedOff ?? kgPerHa(-1))).toEqual([1920, 2125, 2340]);
    expect(endsOf(line?.grazed ?? kgPerHa(-1))).toEqual([300, 400, 500]);
    expect(endsOf(line?.left ?? kgPerHa(-1))).toEqual([6000 - 2840, 7000 - 2525, 8000 - 2220]);
    expect(codesOf(line?.grazed ?? kgPerHa(-1))).toEqual(["science/dung-not-counted"]);
  });

  it("sums years in any order per strip, with what is missing said", () => {
    const compost = kgPerHa([900, 1000, 1100]);
    const all = [
      year(2025, { bales }),
      year(2022, { broughtBack: compost }),
      year(2023, { grown: null, bales }),
      year(2025, { strip: "strip-b" }),
    ];
    const { lines, sums } = reached(strawLedger(all));
    expect(lines.map(({ strip, harvestYear }) => `${strip} ${harvestYear}`)).toEqual([
      "strip-a 2022",
      "strip-a 2023",
      "strip-a 2025",
      "strip-b 2025",
    ]);
    const [a, b] = sums;
    expect(a).toMatchObject({ years: 3, yearsGrown: 2 });
    expect(endsOf(a?.grown ?? kgPerHa(-1))).toEqual([12_000, 14_000, 16_000]);
    expect(endsOf(a?.carriedOff ?? kgPerHa(-1))).toEqual([3840, 4250, 4680]);
    expect(endsOf(a?.broughtBack ?? kgPerHa(-1))).toEqual([900, 1000, 1100]);
    expect(a?.cautions).toEqual([
      { code: "science/years-without-a-line", facts: { years: 1 } },
      { code: "science/grown-not-known", facts: { years: 1 } },
    ]);
    expect(b?.cautions).toEqual([]);
    expect(reached(strawLedger([...all].reverse()))).toEqual(reached(strawLedger(all)));
  });

  it("holds what is left at nothing and says when more went than grew", () => {
    const { lines } = reached(strawLedger([year(2025, { areaHa: 1, bales })]));
    const left = lines[0]?.left ?? kgPerHa(-1);
    expect(left.low).toBe(0);
    const { lines: more } = reached(strawLedger([year(2025, { areaHa: 0.5, bales })]));
    expect(codesOf(more[0]?.left ?? kgPerHa(-1))).toContain("science/more-gone-than-grown");
    expect(endsOf(more[0]?.left ?? kgPerHa(-1))).toEqual([0, 0, 0]);
  });

  it("is empty without years; twice a year, no area and counts below nothing are reasons", () => {
    expect(reached(strawLedger([]))).toEqual({ lines: [], sums: [] });
    expect(reasonOf(strawLedger([year(2025), year(2024), year(2025)]))).toBe("science/year-twice");
    for (const areaHa of [0, -1, Number.NaN])
      expect(reasonOf(strawLedger([year(2025, { areaHa })]))).toBe("science/not-a-straw-year");
    expect(reasonOf(strawLedger([year(2025.5)]))).toBe("science/not-a-straw-year");
    const [bale] = bales;
    if (bale === undefined) throw new Error("no bale");
    expect(reasonOf(strawLedger([year(2025, { bales: [{ ...bale, count: -1 }] })]))).toBe(
      "science/not-a-straw-year",
    );
    expect(
      reasonOf(strawLedger([year(2025, { bales: [{ ...bale, weight: own(-5, "kg", "bale-weight") }] })])),
    ).toBe("science/not-a-range");
    expect(baledDryShare().low).toBeGreaterThan(0.3);
  });
});

describe("what could leave", () => {
  it("pairs little grown with much lost and much needed: the low end may be nothing", () => {
    const could = reached(
      couldLeave({
        grown: kgPerHa([5000, 7000, 9000]),
        loss: share([0.4, 0.5, 0.6]),
        needed: kgPerHa([1800, 2000, 2400]),
        carbonFloor: null,
      }),
    );
    // 1800/0.6, 2000/0.5, 2400/0.4.
    expect(endsOf(could.mustStay).map(Math.round)).toEqual([3000, 4000, 6000]);
    expect(endsOf(could.couldLeave).map(Math.round)).toEqual([0, 3000, 6000]);
    expect(endsOf(could.share).map((one) => Number(one.toFixed(4)))).toEqual([0, 0.4286, 0.6667]);
    expect(codesOf(could.couldLeave)[0]).toBe("science/local-rules-first");
    expect(codesOf(could.couldLeave)).toContain("science/may-be-none-could-leave");
  });

  it("says when nothing could leave, also of nothing grown", () => {
    const nothing = { loss: share(0.5), needed: kgPerHa(4000), carbonFloor: null };
    for (const grown of [0, 5000]) {
      const could = reached(couldLeave({ ...nothing, grown: kgPerHa(grown) }));
      expect(endsOf(could.couldLeave)).toEqual([0, 0, 0]);
      expect(endsOf(could.share)).toEqual([0, 0, 0]);
      expect(codesOf(could.couldLeave)).toContain("science/none-could-leave");
    }
  });

  it("keeps to the carbon floor where it asks for more, and refuses a loss of everything", () => {
    const need = { grown: kgPerHa(8000), loss: share(0.5), needed: kgPerHa(1000) };
    expect(reached(couldLeave({ ...need, carbonFloor: kgPerHa(5250) })).mustStay.middle).toBe(5250);
    expect(reached(couldLeave({ ...need, carbonFloor: kgPerHa(1500) })).mustStay.middle).toBe(2000);
    expect(reasonOf(couldLeave({ ...need, loss: share(1), carbonFloor: null }))).toBe("science/not-a-range");
  });
});

describe("as a cutting height, swaths or years", () => {
  const taking = {
    cut: metres(0.1),
    stems: { length: metres(0.8), shape: own(1, "1", "stem-shape") },
    chaff: own(0, "1", "chaff"),
    baler: own(1, "1", "baler-takes"),
  };

  it("with even stems, no chaff and a baler that misses nothing", () => {
    // A usual cut keeps 1/8; half may leave: the cut goes to half of the length, and 0.875/0.5 is one in two.
    const as = reached(leaveAs(share(0.5), taking));
    expect(as.usualTake.middle).toBeCloseTo(0.875, 12);
    expect(as.middle).toMatchObject({ share: 0.5, oneSwathIn: 2, oneYearIn: 2 });
    expect(as.middle.cutM).toBeCloseTo(0.4, 12);
  });

  it("takes every swath at the usual height when more could leave than a baling carries", () => {
    const as = reached(leaveAs(share(0.9), taking));
    expect(as.middle).toMatchObject({ cutM: 0.1, oneSwathIn: 1, oneYearIn: 1 });
  });

  it("just half is every second, not every third", () => {
    expect(reached(leaveAs(share(0.4375), taking)).middle.oneSwathIn).toBe(2);
  });

  it("says leave all for nothing, and for less than one in 20", () => {
    const none = reached(leaveAs(share([0, 0.01, 0.5]), taking));
    expect(none.low).toEqual({ share: 0, cutM: null, oneSwathIn: null, oneYearIn: null });
    expect(none.middle.oneSwathIn).toBeNull();
    expect(none.cautions.map(({ code }) => code)).toContain("science/leave-all-at-the-low-end");
  });

  it("errs towards leaving at the low end", () => {
    const stems = { length: metres([0.7, 0.8, 0.9]), shape: own([0.9, 1.2, 1.5], "1", "stem-shape") };
    const as = reached(
      leaveAs(share([0.2, 0.3, 0.4]), { ...taking, stems, chaff: chaffShare(), baler: balerTakes() }),
    );
    expect(as.low.cutM ?? 0).toBeGreaterThan(as.middle.cutM ?? 9);
    expect(as.middle.cutM ?? 0).toBeGreaterThanOrEqual(as.high.cutM ?? 9);
    expect(as.low.oneSwathIn ?? 0).toBeGreaterThan(as.high.oneSwathIn ?? 99);
    expect(reasonOf(leaveAs(share(2), taking))).toBe("science/not-a-range");
    expect(reasonOf(leaveAs(share(0.5), { ...taking, cut: metres(-1) }))).toBe("science/not-a-range");
  });
});

describe("nutrients", () => {
  it("have no figure where none was found", () => {
    expect(reasonOf(nutrientPerTonne("oilseed-rape", "N"))).toBe("science/no-figure-for-crop");
    expect(reasonOf(nutrientPerTonne("oats", "K2O"))).toBe("science/no-figure-for-crop");
    expect(reasonOf(nutrientPerTonne("cotton", "N"))).toBe("science/no-figure-for-crop");
  });

  it("are nothing of no straw, and refuse what cannot be", () => {
    const potash = reached(nutrientPerTonne("winter-wheat", "K2O"));
    expect(endsOf(reached(nutrientTaken(potash, kgPerHa(0))))).toEqual([0, 0, 0]);
    expect(reasonOf(nutrientTaken(potash, kgPerHa(-1)))).toBe("science/not-a-range");
    expect(reasonOf(afterRain(potash, share(1.5)))).toBe("science/not-a-range");
    for (const kg of [-1, Number.NaN]) expect(reasonOf(asElement("N", kg))).toBe("science/no-number");
  });
});

describe("price at which selling breaks even", () => {
  const money = (value: number | readonly [number, number, number]) => own(value, "{money}/har", "worth");
  const sale: StrawSale = {
    sold: kgPerHa(4000),
    nutrients: [
      {
        nutrient: "P2O5",
        content: own(1, "kg/t", "nutrient"),
        price: own(1, "{money}/kg", "nutrient-price"),
      },
      {
        nutrient: "K2O",
        content: own(10, "kg/t", "nutrient"),
        price: own(0.8, "{money}/kg", "nutrient-price"),
      },
    ],
    baling: own(20, "{money}/t", "baling"),
    worth: [{ name: "water-kept", perHa: money([0, 20, 60]) }],
    costs: [
      { name: "slugs", perHa: money([0, 10, 40]) },
      { name: "nitrogen-tied-up", perHa: money([0, 20, 40]) },
    ],
  };

  it("adds nutrients, baling and water, and takes off what mulch costs", () => {
    const even = reached(breakEven(sale));
    // 1 + 8 + 20 per tonne; over 4 t: (0 − 80)/4, (20 − 30)/4, (60 − 0)/4.
    expect(endsOf(even.price)).toEqual([29 - 20, 29 - 2.5, 29 + 15]);
    expect(even.items.map(({ name }) => name)).toEqual([
      "P2O5",
      "K2O",
      "baling",
      "water-kept",
      "slugs",
      "nitrogen-tied-up",
    ]);
    const sum = even.items.reduce((all, { perTonne }) => all + perTonne.middle, 0);
    expect(sum).toBeCloseTo(even.price.middle, 12);
    expect(codesOf(even.price)).toEqual(["science/local-rules-first", "science/only-what-was-counted"]);
  });

  it("can lie below nothing, and the tonnes widen it the right way", () => {
    const costly = reached(
      breakEven({
        ...sale,
        sold: kgPerHa([1000, 2000, 4000]),
        worth: [],
        costs: [{ name: "slugs", perHa: money(100) }],
      }),
    );
    expect(endsOf(costly.price)).toEqual([29 - 100, 29 - 50, 29 - 25]);
  });

  it("gives the gain by tonne and by hectare, and says when it cannot tell", () => {
    const even = reached(breakEven(sale));
    const gain = reached(gainOfSelling(own(35, "{money}/t", "straw-price"), even, sale.sold));
    expect(endsOf(gain.perTonne)).toEqual([-9, 8.5, 26]);
    expect(endsOf(gain.perHa)).toEqual([-36, 34, 104]);
    expect(codesOf(gain.perHa)).toContain("science/price-inside-range");
    const sure = reached(gainOfSelling(own(100, "{money}/t", "straw-price"), even, sale.sold));
    expect(codesOf(sure.perHa)).not.toContain("science/price-inside-range");
  });

  it("refuses no straw, and prices that are none", () => {
    expect(reasonOf(breakEven({ ...sale, sold: kgPerHa(0) }))).toBe("science/not-a-range");
    expect(reasonOf(breakEven({ ...sale, baling: own(-1, "{money}/t", "baling") }))).toBe(
      "science/not-a-range",
    );
    const even = reached(breakEven(sale));
    expect(reasonOf(gainOfSelling(own(Number.NaN, "{money}/t", "straw-price"), even, sale.sold))).toBe(
      "science/not-a-range",
    );
    expect(reasonOf(worthPerHa({ low: -1, middle: 0, high: 1 }, { low: 1, middle: 1, high: 1 }))).toBe(
      "science/not-a-range",
    );
    expect(reasonOf(worthPerHa({ low: 0, middle: 0, high: 1e9 }, { low: 1, middle: 1, high: 1e9 }))).toBe(
      "science/not-a-range",
    );
  });
});
