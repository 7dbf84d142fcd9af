/** Every limit that a method lists is where its caution begins: looked at from both sides. */
import { expect, it } from "vitest";
import type { CautionLimit, Method } from "../../../src/science/method.ts";
import { METHODS } from "../../../src/science/methods/all.ts";
import type { Looks } from "./limit-looks.ts";
import { COMPARED_LOOKS } from "./limit-looks-compared.ts";
import { MEASURED_LOOKS } from "./limit-looks-measured.ts";

const LOOKS: Looks = { ...COMPARED_LOOKS, ...MEASURED_LOOKS };

const stands = ({ said, value }: CautionLimit, looked: number): boolean =>
  ({ below: looked < value, "up-to": looked <= value, from: looked >= value, above: looked > value })[said];

const LISTED = Object.entries<Method>(METHODS).flatMap(([id, { limits = [] }]) =>
  limits.map((one) => {
    const about = `${one.caution.slice("science/".length)} ${one.of}`;
    const twice = limits.filter(({ caution, of }) => caution === one.caution && of === one.of).length > 1;
    return { id, about: twice ? `${about} ${one.said}` : about, one };
  }),
);

it("has a look at every limit, and at no others", () => {
  const looks = Object.entries(LOOKS).flatMap(([id, all]) =>
    Object.keys(all).map((about) => `${id} ${about}`),
  );
  expect(LISTED.map(({ id, about }) => `${id} ${about}`).sort()).toEqual(looks.sort());
  expect(LISTED.length).toBeGreaterThan(30);
});

it.each(LISTED)("$id says $about where it lists", ({ id, about, one }) => {
  const looks = LOOKS[id]?.[about] ?? [];
  expect(new Set(looks.map(([looked]) => stands(one, looked))).size).toBe(2);
  for (const [looked, said] of looks)
    expect([looked, said.some(({ code }) => code === one.caution)]).toEqual([looked, stands(one, looked)]);
});
