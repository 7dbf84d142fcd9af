import { expect, it } from "vitest";
import { coverOfField, type LineOfField } from "../../../src/science/ground-cover/field-cover.ts";
import { idOf } from "../record/made-up.ts";
import { line, reached } from "./counts.ts";

let counted = 0;
const on = (day: string, strip: number, hits: number, more: Partial<LineOfField> = {}): LineOfField => {
  counted += 1;
  return {
    id: idOf("observation", counted),
    visit: idOf("visit", 1),
    day,
    strip: idOf("strip", strip),
    oldGrass: null,
    place: "between-rows",
    finished: true,
    counts: line(hits),
    ...more,
  };
};
const WANTED = { stoneCounts: false, target: 0.3 };

it("puts the lines of a strip on a day together: 220 hits of 500 marks by hand", () => {
  const lines = [44, 36, 52, 41, 47].map((hits) => on("2026-05-07", 1, hits));
  const [found] = coverOfField(lines, WANTED).onDays;
  if (found === undefined) throw new Error("nothing found");
  expect(reached(found.cover)).toMatchObject({ value: 0.44, n: 5 });
  expect(found.chance).toBeGreaterThan(0.95);
});

it("keeps days and strips apart, newest day first, and leaves open lines out of the value", () => {
  const { onDays, lines, unfinished } = coverOfField(
    [
      on("2025-05-07", 1, 10),
      on("2026-05-07", 1, 40),
      on("2026-05-07", 1, 90, { finished: false }),
      on("2026-05-07", 2, 70),
    ],
    WANTED,
  );
  expect(onDays.map(({ day, strip }) => [day, strip])).toEqual([
    ["2026-05-07", idOf("strip", 1)],
    ["2026-05-07", idOf("strip", 2)],
    ["2025-05-07", idOf("strip", 1)],
  ]);
  expect(onDays[0]).toMatchObject({
    finished: 1,
    unfinished: 1,
    cover: { value: { value: 0.4, n: 1 } },
    chance: null,
  });
  expect(lines).toBe(4);
  expect(unfinished).toHaveLength(1);
});

it("says what has to be borne in mind with each cover, and nothing where there is none", () => {
  const cautionsOf = (...lines: readonly LineOfField[]) =>
    coverOfField(lines, WANTED).onDays[0]?.cautions.map(({ code, facts }) => [code, facts]);
  const day = "2026-05-07";
  expect(cautionsOf(on(day, 1, 44), on(day, 1, 36), on(day, 1, 52))).toEqual([]);
  // 8 of 300 marks hit, below the ten at which a range can be trusted.
  expect(cautionsOf(on(day, 1, 0), on(day, 1, 5), on(day, 1, 3))).toEqual([
    ["science/few-hits", { hits: 8 }],
  ]);
  expect(cautionsOf(on(day, 1, 8, { finished: false }))).toEqual([]);
  const [grass] = coverOfField(
    [2, 5, 1].map((hits) => on(day, 1, hits, { oldGrass: idOf("spot", 1) })),
    WANTED,
  ).oldGrass;
  expect(grass?.cautions).toEqual([{ code: "science/few-hits", facts: { hits: 8 } }]);
});

it("takes two visits of one day for one", () => {
  const { onDays } = coverOfField(
    [on("2026-05-07", 1, 40), on("2026-05-07", 1, 60, { visit: idOf("visit", 2) })],
    WANTED,
  );
  expect(onDays).toHaveLength(1);
  expect(onDays[0]?.visits).toEqual([idOf("visit", 1), idOf("visit", 2)]);
});

it("names each place that lines lie at, so that unlike can be said before any number", () => {
  const { onDays } = coverOfField(
    [on("2026-05-07", 1, 40), on("2026-05-07", 1, 60, { place: "wheel-track" }), on("2026-05-07", 1, 50)],
    WANTED,
  );
  expect(onDays[0]?.places).toEqual(["between-rows", "wheel-track"]);
});

it("keeps lines on old grass out of the strips, and says them apart: 2 of 5 lines are grass by hand", () => {
  const grass = { oldGrass: idOf("spot", 1) };
  const { lines, unfinished, onDays, oldGrass } = coverOfField(
    [
      on("2025-05-07", 1, 100, { oldGrass: idOf("spot", 2) }),
      on("2026-05-07", 1, 40),
      // Named on the strip, as an older record may be: the spot decides all the same.
      on("2026-05-07", 1, 98, grass),
      on("2026-05-07", 1, 60),
      on("2026-05-07", 3, 96, grass),
      on("2026-05-07", 1, 90, { ...grass, finished: false }),
    ],
    WANTED,
  );
  // (40 + 60) of 200 marks; with the grass it would be (40 + 98 + 60) of 300.
  expect(onDays).toMatchObject([
    { strip: idOf("strip", 1), finished: 2, unfinished: 0, cover: { value: { value: 0.5, n: 2 } } },
  ]);
  // (98 + 96) of 200 marks, whatever strip they name.
  expect(oldGrass).toMatchObject([
    {
      day: "2026-05-07",
      spots: [idOf("spot", 1)],
      finished: 2,
      unfinished: 1,
      cover: { value: { value: 0.97, n: 2 } },
    },
    { day: "2025-05-07", spots: [idOf("spot", 2)], cover: { value: { value: 1, n: 1 } } },
  ]);
  expect(lines).toBe(6);
  // A line that was begun there is gone on with like any other.
  expect(unfinished).toHaveLength(1);
});

it("sets the aim of a rule on residue against residue alone: a green cover crop does not fulfil it", () => {
  // Half of the ground is green; residue lies on 8 to 12 of 100 marks.
  const lines = [8, 12, 10, 9].map((hits) =>
    on("2026-05-07", 1, hits, { counts: { ...line(hits), green: 50, bare: 50 - hits } }),
  );
  const chance = (target: number) => coverOfField(lines, { stoneCounts: false, target }).onDays[0]?.chance;
  expect(chance(0.3)).toBeLessThan(0.01);
  // The same share as an aim of one's own is one of ground cover.
  expect(chance(0.31)).toBeGreaterThan(0.99);
});
