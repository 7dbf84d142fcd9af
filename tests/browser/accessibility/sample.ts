/** A farm with something on every screen, and the address of each. */
import { href, type Route } from "../../../src/screens/parts/route.ts";
import { beginSample, fieldOf, lineOf, marksRead, type Rows, sampleStartMs } from "../../bench/seed.ts";

/** The sample's rows, and the address of every screen that has one. */
export interface SampleFarm {
  readonly rows: Rows;
  readonly addresses: Readonly<Record<string, string>>;
}

/** Makes the sample. */
export const sampleFarm = (): SampleFarm => {
  const { add, rows } = beginSample();
  const person = add("person", { name: "One who counts" });
  const farm = add("farm", { name: "Hollow Lane" });
  const field = add("field", fieldOf("Long Bottom", farm));
  add("field", fieldOf("A field with a very long name that was typed by somebody in a hurry"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: 2024 });
  const strip = add("strip", { field, name: "straw left", done: ["straw-left"], wholeField: false, rep: 1 });
  add(
    "strip",
    { field, name: "straw off", done: ["straw-carried-off"], wholeField: false, rep: 1 },
    {
      beside: {
        field,
        name: "straw carried off",
        done: ["straw-carried-off"],
        wholeField: false,
        rep: 2,
      },
    },
  );
  const rope = add("kit", { type: "rope", name: "R1", marks: 50, spacingM: 0.3 });
  const on = { visit, field, strip, rope };
  const full = "rrrrrrfbrrrrrgrrrrrrrrsrrrrrrrbrrrrrrrrrrrgrrrrrrr";
  const finished = [full, full.replaceAll("g", "b"), full.replaceAll("s", "r")].map((letters, at) =>
    add("observation", lineOf(on, { startedAtMs: sampleStartMs + at * 600_000, person }), {
      entries: marksRead(letters),
    }),
  );
  add("observation", lineOf(on), { entries: marksRead("rrb"), deleted: true });
  const counted = add("observation", lineOf(on, { startedAtMs: sampleStartMs + 3_600_000 }), {
    entries: marksRead("rrrb"),
  });
  const misses = add(
    "observation",
    lineOf(on, { way: "misses-only", startedAtMs: sampleStartMs + 3_700_000 }),
  );
  const totals = add("observation", lineOf(on, { way: "totals", startedAtMs: sampleStartMs + 3_800_000 }));
  const five = add(
    "observation",
    lineOf(on, { fifthKey: "dung", askThickness: true, startedAtMs: sampleStartMs + 3_900_000 }),
  );
  const [sheet] = finished;
  if (sheet === undefined) throw new Error("The sample has no finished line");
  const routes: { readonly [At in Route["at"]]: Extract<Route, { at: At }> } = {
    welcome: { at: "welcome" },
    measure: { at: "measure" },
    visit: { at: "visit", visit },
    "line-new": { at: "line-new", visit },
    line: { at: "line", line: counted },
    "line-sheet": { at: "line-sheet", line: sheet },
    fields: { at: "fields" },
    "field-new": { at: "field-new" },
    field: { at: "field", field },
    "worked-out": { at: "worked-out", strip, visit },
    findings: { at: "findings" },
    send: { at: "send" },
    settings: { at: "settings" },
    kit: { at: "kit" },
    deleted: { at: "deleted" },
    "two-versions": { at: "two-versions" },
  };
  return {
    rows: rows(),
    addresses: {
      ...Object.fromEntries(Object.entries(routes).map(([name, route]) => [name, href(route)])),
      "line, five keys": href({ at: "line", line: five }),
      "line, misses only": href({ at: "line", line: misses }),
      "line, totals": href({ at: "line", line: totals }),
    },
  };
};
