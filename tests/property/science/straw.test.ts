import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverOfStrip } from "../../../src/science/ground-cover/strip.ts";
import { coverFromMass, massForCover } from "../../../src/science/residue/cover-mass.ts";
import { cutFor, shareBelow } from "../../../src/science/residue/cutting-height.ts";
import { decompositionDays, lossAfter, massLeft } from "../../../src/science/residue/decay.ts";
import { lossByRain, lossByWind } from "../../../src/science/residue/erosion.ts";
import { lossRateOfLines } from "../../../src/science/residue/own-loss.ts";
import { coverAfterPasses, lossByPasses } from "../../../src/science/residue/passes.ts";
import type { Ranged } from "../../../src/science/residue/ranged.ts";
import { strawGrown } from "../../../src/science/residue/straw-grown.ts";
import { breakEven, gainOfSelling } from "../../../src/science/straw/break-even.ts";
import { couldLeave } from "../../../src/science/straw/could-leave.ts";
import { leaveAs } from "../../../src/science/straw/leave-as.ts";
import { strawLedger } from "../../../src/science/straw/ledger.ts";
import { nutrientTaken } from "../../../src/science/straw/nutrients.ts";
import { line, PLAIN, reached } from "../../unit/science/counts.ts";
import { kgPerHa, metres, own, perKg, share } from "../../unit/science/straw/figures.ts";
import { hitsOnALine, seeded } from "./seeded.ts";

const rising = (max: number): fc.Arbitrary<readonly [number, number, number]> =>
  fc
    .tuple(
      fc.double({ min: 0, max, noNaN: true }),
      fc.double({ min: 0, max, noNaN: true }),
      fc.double({ min: 0, max, noNaN: true }),
    )
    .map(([a, b, c]) => {
      const [low = 0, middle = 0, high = 0] = [a, b, c].sort((x, y) => x - y);
      return [low, middle, high] as const;
    });
const masses = rising(50_000);
const shares = rising(1);
const coefficients = rising(9).map(([a, b, c]) => [a + 1, b + 1, c + 1] as const);

/** Figures among which some are none. */
const odd = fc.tuple(
  fc.constantFrom(0, 1, -1, 0.5, 5000, Number.NaN, Number.POSITIVE_INFINITY, 1e300),
  fc.constantFrom(0, 1, 0.5, 5000, Number.NaN, Number.NEGATIVE_INFINITY),
  fc.constantFrom(0, 1, 0.9, 9000, 1e300),
);

const ordered = (answer: Ranged): void => {
  expect([answer.low, answer.middle, answer.high].every(Number.isFinite)).toBe(true);
  expect(answer.low).toBeLessThanOrEqual(answer.middle);
  expect(answer.middle).toBeLessThanOrEqual(answer.high);
};

describe("laws of residue and straw", () => {
  it("more residue never gives less cover, nor another order of residues another cover", () => {
    fc.assert(
      fc.property(masses, masses, coefficients, coefficients, (one, other, a, b) => {
        const first = { mass: kgPerHa(one), coefficient: perKg(a) };
        const second = { mass: kgPerHa(other), coefficient: perKg(b) };
        const alone = reached(coverFromMass([first]));
        const both = reached(coverFromMass([first, second]));
        ordered(both);
        for (const end of ["low", "middle", "high"] as const) {
          expect(both[end]).toBeGreaterThanOrEqual(alone[end]);
          expect(both[end]).toBeLessThanOrEqual(1);
          expect(reached(coverFromMass([second, first]))[end]).toBeCloseTo(both[end], 12);
        }
      }),
    );
  });

  it("mass for a cover gives that cover back, and pounds per acre the same as kilograms per hectare", () => {
    const LB_PER_AC = 1.120851;
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        fc.double({ min: 1, max: 9, noNaN: true }),
        (c, a) => {
          const mass = reached(massForCover(share(c), perKg(a))).middle;
          const back = reached(coverFromMass([{ mass: kgPerHa(mass), coefficient: perKg(a) }])).middle;
          expect(back).toBeCloseTo(c, 9);
          const inPounds = (mass / LB_PER_AC) * ((a * LB_PER_AC) / 10_000);
          expect(-Math.expm1(-inPounds)).toBeCloseTo(c, 9);
        },
      ),
    );
  });

  it("more cover never means more soil lost, to rain or to wind", () => {
    fc.assert(
      fc.property(shares, shares, (one, other) => {
        const more = one.map((value, at) => Math.max(value, other[at] ?? 0)) as [number, number, number];
        const b = own([0.025, 0.035, 0.05], "1", "erosion-exponent");
        for (const loss of [
          (cover: Ranged) => reached(lossByRain(cover, b, 10)),
          (cover: Ranged) => reached(lossByWind(cover)),
        ]) {
          const [little, much] = [loss(share(one)), loss(share(more))];
          ordered(little);
          for (const end of ["low", "middle", "high"] as const)
            expect(much[end]).toBeLessThanOrEqual(little[end]);
        }
      }),
    );
  });

  it("longer and warmer never leaves more; cover after passes never rises", () => {
    fc.assert(
      fc.property(
        shares,
        masses,
        fc.array(fc.double({ min: -30, max: 33, noNaN: true }), { maxLength: 60 }),
        (wet, mass, temperatures) => {
          const days = reached(decompositionDays(temperatures, own(wet, "1", "wetness")));
          const warmer = reached(
            decompositionDays(
              temperatures.map((one) => Math.min(33, one + 3)),
              own(wet, "1", "wetness"),
            ),
          );
          ordered(days);
          const rate = own([0.006, 0.008, 0.01], "/d", "decay-rate");
          const left = reached(massLeft(kgPerHa(mass), reached(lossAfter(rate, days))));
          const leftWarm = reached(massLeft(kgPerHa(mass), reached(lossAfter(rate, warmer))));
          ordered(left);
          for (const end of ["low", "middle", "high"] as const) {
            expect(leftWarm[end]).toBeLessThanOrEqual(left[end] + 1e-9);
            expect(left[end]).toBeLessThanOrEqual(mass[2]);
          }
          const after = reached(coverAfterPasses(share(1), [share(wet)]));
          expect(after.high).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it("a higher cut never leaves less in the stubble, and a cut for a share gives it back", () => {
    const height = fc.double({ min: 0, max: 1, noNaN: true });
    const shape = fc.double({ min: 0.5, max: 2, noNaN: true });
    fc.assert(
      fc.property(height, height, shape, (one, other, q) => {
        const stems = { length: metres(1), shape: own(q, "1", "stem-shape") };
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const below = (cut: number): number => reached(shareBelow(metres(cut), stems)).middle;
        expect(below(high)).toBeGreaterThanOrEqual(below(low));
        expect(reached(cutFor(share(Math.min(1, below(low))), stems)).middle).toBeCloseTo(low, 5);
      }),
    );
  });

  it("what could leave and what must stay never exceed what grew, and needing more never frees straw", () => {
    fc.assert(
      fc.property(masses, masses, rising(0.9), (grown, needed, loss) => {
        const need = { grown: kgPerHa(grown), loss: share(loss), carbonFloor: null };
        const could = reached(couldLeave({ ...need, needed: kgPerHa(needed) }));
        const more = needed.map((mass) => mass + 500) as unknown as [number, number, number];
        const less = reached(couldLeave({ ...need, needed: kgPerHa(more) }));
        ordered(could.couldLeave);
        ordered(could.share);
        for (const end of ["low", "middle", "high"] as const) {
          expect(could.couldLeave[end]).toBeLessThanOrEqual(grown[2]);
          expect(could.couldLeave[end]).toBeGreaterThanOrEqual(0);
          expect(less.couldLeave[end]).toBeLessThanOrEqual(could.couldLeave[end]);
        }
      }),
    );
  });

  it("each way of leaving carries off no more than could leave", () => {
    const some = rising(0.9).map(([a, b, c]) => [a + 0.05, b + 0.05, c + 0.05] as const);
    fc.assert(
      fc.property(
        some,
        rising(0.4),
        some,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (allowed, chaff, baler, cut) => {
          const stems = { length: metres([0.7, 0.8, 0.9]), shape: own([0.9, 1.2, 1.5], "1", "stem-shape") };
          const taking = {
            cut: metres(cut),
            stems,
            chaff: own(chaff, "1", "chaff"),
            baler: own(baler, "1", "baler-takes"),
          };
          const { low, usualTake } = reached(leaveAs(share(allowed), taking));
          if (low.oneSwathIn !== null)
            expect(usualTake.high / low.oneSwathIn).toBeLessThanOrEqual(allowed[0] + 1e-6);
          // Whatever the stems and the baler really are, the cut of the low end takes no more than could leave.
          for (const [part, picked, length, q] of [
            [chaff[0], baler[2], 0.9, 0.9],
            [chaff[2], baler[0], 0.7, 1.5],
            [chaff[1], baler[1], 0.8, 1.2],
            [chaff[0], baler[2], 0.7, 1.5],
          ] as const) {
            const below = reached(
              shareBelow(metres(low.cutM ?? 0), { length: metres(length), shape: own(q, "1", "stem-shape") }),
            ).middle;
            expect((1 - part) * (1 - below) * picked).toBeLessThanOrEqual(allowed[0] + 1e-6);
          }
        },
      ),
    );
  });

  it("a price that breaks even gains nothing, and per acre and per hectare give the same price", () => {
    const AC_PER_HA = 2.471054;
    const per = rising(500);
    fc.assert(
      fc.property(
        per,
        per,
        rising(5),
        fc.double({ min: 100, max: 9000, noNaN: true }),
        (worth, costs, potash, sold) => {
          const sum = (factor: number) =>
            reached(
              breakEven({
                sold: kgPerHa(sold * factor),
                nutrients: [
                  {
                    nutrient: "K2O",
                    content: own([10, 12, 20], "kg/t", "nutrient"),
                    price: own(potash, "{money}/kg", "nutrient-price"),
                  },
                ],
                baling: own(20, "{money}/t", "baling"),
                worth: [
                  {
                    name: "water-kept",
                    perHa: own(
                      worth.map((one) => one * factor) as unknown as [number, number, number],
                      "{money}/har",
                      "worth",
                    ),
                  },
                ],
                costs: [
                  {
                    name: "slugs",
                    perHa: own(
                      costs.map((one) => one * factor) as unknown as [number, number, number],
                      "{money}/har",
                      "worth",
                    ),
                  },
                ],
              }),
            );
          const even = sum(1);
          ordered(even.price);
          const acres = sum(1 / AC_PER_HA);
          for (const end of ["low", "middle", "high"] as const)
            expect(acres.price[end]).toBeCloseTo(even.price[end], 6);
          if (even.price.middle < 0) return;
          const price = own(even.price.middle, "{money}/t", "straw-price");
          const gain = reached(gainOfSelling(price, even, kgPerHa(sold)));
          ordered(gain.perHa);
          expect(gain.perTonne.middle).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  it("never lets a NaN or an endless number out, whatever goes in", () => {
    fc.assert(
      fc.property(odd, odd, odd, (a, b, c) => {
        const grain = { yield: own(a, "kg/har", "grain-yield"), dryShare: own(b, "1", "dry-matter") };
        const could = couldLeave({
          grown: kgPerHa(a),
          loss: share(b),
          needed: kgPerHa(c),
          carbonFloor: kgPerHa(b),
        });
        const answers = [
          coverFromMass([{ mass: kgPerHa(a), coefficient: perKg(b) }]),
          massForCover(share(a), perKg(b)),
          strawGrown(grain, { way: "harvest-index", harvestIndex: share(c) }),
          strawGrown(grain, { way: "straw-per-grain", ratio: share(c) }),
          strawGrown(grain, { way: "line", slope: share(b), interceptKgPerHa: kgPerHa(c) }),
          lossAfter(own(a, "/d", "decay-rate"), own(b, "d", "decay-rate")),
          massLeft(kgPerHa(a), share(b)),
          lossByRain(share(a), own(b, "1", "erosion-exponent"), c[0]),
          lossByWind(share(a)),
          nutrientTaken(own(a, "kg/t", "nutrient"), kgPerHa(b)),
          shareBelow(metres(a), { length: metres(b), shape: own(c, "1", "stem-shape") }),
          cutFor(share(a), { length: metres(b), shape: own(c, "1", "stem-shape") }),
        ];
        answers.push(lossByPasses({ mass: kgPerHa(a), coefficient: perKg(b) }, [share(c)]));
        for (const answer of answers) if (answer.ok) ordered(answer.value);
        if (could.ok)
          for (const one of [could.value.couldLeave, could.value.mustStay, could.value.share]) ordered(one);
        const book = strawLedger([
          {
            strip: "s",
            harvestYear: 2025,
            areaHa: a[0],
            grown: kgPerHa(b),
            bales: [{ count: c[0], weight: own(a, "kg", "bale-weight"), dryShare: share(b) }],
            grazings: [{ head: b[0], days: c[1], eaten: own(c, "kg", "eaten") }],
            broughtBack: kgPerHa(c),
          },
        ]);
        if (book.ok)
          for (const { carriedOff, grazed, left } of book.value.lines)
            for (const one of [carriedOff, grazed, ...(left === null ? [] : [left])]) ordered(one);
      }),
    );
  });
});

describe("how often the range of a field's own rate holds the truth", () => {
  const RUNS = 3000;
  const logMass = (cover: number): number => Math.log(-Math.log(1 - cover));
  it.each([
    [0.8, 0.6, 3],
    [0.8, 0.6, 5],
    [0.8, 0.6, 8],
    [0.9, 0.5, 5],
    [0.6, 0.5, 5],
    [0.9, 0.5, 3],
    [0.5, 0.3, 4],
    [0.94, 0.7, 5],
  ])("%f to %f with %i lines of 100 marks on each day", (first, second, lines) => {
    const random = seeded(20_250_101);
    const truth = (logMass(first) - logMass(second)) / 200;
    let held = 0;
    for (let run = 0; run < RUNS; run++) {
      const strip = (cover: number) =>
        reached(
          coverOfStrip(
            Array.from({ length: lines }, () => line(hitsOnALine(cover, 100, 1.5625, random))),
            "residue",
            PLAIN,
          ),
        );
      const rate = lossRateOfLines(strip(first), strip(second), 200);
      if (rate.ok && rate.value.low <= truth && truth <= rate.value.high) held++;
    }
    expect(held / RUNS).toBeGreaterThan(0.92);
    expect(held / RUNS).toBeLessThan(0.98);
  });
});
