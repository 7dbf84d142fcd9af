import { describe, expect, it } from "vitest";
import type { Command } from "../../../src/record/command/command.ts";
import { failed, ok, type Problem } from "../../../src/record/result.ts";
import { HABITS } from "../../../src/record/units.ts";
import { newPen } from "../../../src/screens/parts/pen.ts";
import { FIRST_SETTINGS, type Settings } from "../../../src/screens/parts/settings.ts";
import { begin } from "../../../src/screens/welcome/model.ts";

const house = (refuse = false) => {
  let settings: Settings = FIRST_SETTINGS;
  const written: Command[] = [];
  const told: Problem[] = [];
  return {
    written,
    told,
    settings: () => settings,
    pen: newPen("d".repeat(16), () => settings.person),
    changeSettings: (patch: Partial<Settings>) => {
      settings = { ...settings, ...patch };
    },
    write: (...commands: readonly Command[]) => {
      if (refuse) return Promise.resolve(failed("store/quota"));
      written.push(...commands);
      return Promise.resolve(ok([]));
    },
    tell: (problem: Problem) => {
      told.push(problem);
    },
  };
};

const answers = { trade: "us-ca", habits: "us", name: " One who counts " } as const;

describe("the first run", () => {
  it("begins a person, a field without a name and today's visit, signed by that person", async () => {
    const first = house();
    const visit = await begin(first, answers, true);
    expect(first.written.map(({ id }) => id.split("-")[0])).toEqual(["person", "field", "visit"]);
    expect(visit).toBe(first.written[2]?.id);
    expect(first.written[0]).toMatchObject({ body: { name: "One who counts" } });
    expect(first.written[1]).toMatchObject({ body: { name: "" }, by: { author: first.written[0]?.id } });
    expect(first.settings()).toMatchObject({
      welcomed: true,
      trade: "us-ca",
      habits: HABITS.us,
      person: first.written[0]?.id,
    });
  });

  it("writes nothing at all without a name and without measuring now", async () => {
    const first = house();
    expect(await begin(first, { ...answers, name: "  " }, false)).toBeNull();
    expect(first.written).toEqual([]);
    expect(first.settings()).toMatchObject({ welcomed: true, person: null });
  });

  it("is not over when nothing could be written, and names nobody", async () => {
    const first = house(true);
    expect(await begin(first, answers, true)).toBeUndefined();
    expect(first.told).toEqual([{ code: "store/quota", facts: {} }]);
    expect(first.settings()).toMatchObject({ welcomed: false, person: null });
  });
});
