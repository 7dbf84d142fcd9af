import { expect, test } from "vitest";
import { VIEWS } from "../../../src/exchange/format/names.ts";
import { mapFeature } from "../../../src/exchange/format/views/map.ts";
import { piecesOf, VIEW_HEADS } from "../../../src/exchange/format/views/views.ts";
import { isDemoTest } from "../../../src/record/demo-mark.ts";
import { entry, id, position, rowsOf, tied, viewOf } from "./view-samples.ts";

const demoId = (kind: string): string => `${kind}-fa110f1e1d00${"0".repeat(20)}`;
const at = { at: position(52.5, -1.25) };
const { place: _, ...where } = tied;

/** One of each kind, with an entry where it has any. */
const tests = (field: string, rope: string) => [
  viewOf(
    {
      ...tied,
      field,
      type: "line",
      rope,
      way: "mark-by-mark",
      angleToRowsDeg: 45,
      start: at.at,
      end: at.at,
      fifthKey: null,
      askThickness: false,
      rowSpacingM: null,
      passWidthM: null,
    },
    [entry(1, { type: "mark", mark: 1, cover: "bare" })],
  ),
  viewOf(
    {
      ...tied,
      field,
      ...at,
      type: "ring",
      ring: id("kit", 6),
      outer: null,
      ruler: id("kit", 7),
      bottle: null,
      way: "ruler",
      rulerReads: "down-from-rim",
      mulch: "kept",
      rimToSoilM: [0.1],
      planMin: [1],
      follows: null,
    },
    [entry(1, { type: "start", timed: "now" })],
  ),
  viewOf(
    {
      ...tied,
      field,
      ...at,
      type: "hole",
      template: id("kit", 8),
      sidesM: null,
      depthM: 0.2,
      method: null,
      landUse: "cropland",
      minutes: 5,
      mustardMin: null,
      number: 1,
    },
    [entry(1, { type: "worm", from: "soil" })],
  ),
  viewOf({ ...where, ...at, field, type: "note", text: "dry" }, []),
];

const onMaps = new Set<string>(["map", "points"]);

/** What every piece says of being an example, by the view it stands in. */
const saidOf = (field: string, rope = id("kit", 4)): Record<string, unknown> =>
  Object.fromEntries(
    tests(field, rope).flatMap((view) => {
      if (view === undefined) throw new Error("no view");
      return piecesOf(view).map(([name, piece]) => [
        name,
        onMaps.has(name)
          ? JSON.parse(mapFeature(view) ?? "null").properties.example
          : rowsOf(VIEW_HEADS[name], piece)
              .map(({ example }) => example)
              .join(),
      ]);
    }),
  );

test("every row and every feature says whether it belongs to the example farm", () => {
  const all = (word: string, is: boolean) =>
    Object.fromEntries(Object.keys(VIEWS).map((name) => [name, onMaps.has(name) ? is : word]));
  expect(saidOf(id("field", 1))).toEqual(all("no", false));
  expect(saidOf(demoId("field"))).toEqual(all("yes", true));
  // Borrowing the rope of the example farm makes no count on one's own field an invented one.
  expect(saidOf(id("field", 1), demoId("kit"))).toEqual(all("no", false));
});

test("a test is of the example farm by its own id or by that of its field", () => {
  const [observation, field] = [id("observation", 1), id("field", 1)];
  expect(isDemoTest(observation, field)).toBe(false);
  expect(isDemoTest(demoId("observation"), field)).toBe(true);
  expect(isDemoTest(observation, demoId("field"))).toBe(true);
});
