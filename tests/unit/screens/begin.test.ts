import { describe, expect, it } from "vitest";
import type { Command } from "../../../src/record/command/command.ts";
import { failed, ok, type Problem } from "../../../src/record/result.ts";
import { HABITS } from "../../../src/record/units.ts";
import { newPen } from "../../../src/screens/parts/pen.ts";
import { newReader, type Reader } from "../../../src/screens/parts/reader.ts";
import { FIRST_SETTINGS, type Settings } from "../../../src/screens/parts/settings.ts";
import { begin } from "../../../src/screens/welcome/model.ts";
import type { Connection, Job } from "../../../src/store/connection.ts";
import type { Database } from "../../../src/store/schema.ts";

/** A house; `stored` is what the pages of this device keep, and `known` the name of the person there. */
const house = (refuse = false, stored?: Partial<Settings>, known = "") => {
  let settings: Settings = FIRST_SETTINGS;
  const db = { get: () => Promise.resolve(stored) };
  const connection = {
    use: (job: Job<unknown>) => job(db as unknown as Database),
    subscribe: () => () => undefined,
  } as unknown as Connection;
  const one = () => Promise.resolve({ body: { name: known } });
  const written: Command[] = [];
  const told: Problem[] = [];
  return {
    written,
    told,
    records: { ...newReader(connection), one: one as unknown as Reader["one"] },
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
  it("begins a person, a field without a name as one strip, and today's visit, signed by that person", async () => {
    const first = house();
    const visit = await begin(first, answers, true);
    expect(first.written.map(({ id }) => id.split("-")[0])).toEqual(["person", "field", "strip", "visit"]);
    expect(visit).toBe(first.written[3]?.id);
    expect(first.written[0]).toMatchObject({ body: { name: "One who counts" } });
    expect(first.written[1]).toMatchObject({ body: { name: "" }, by: { author: first.written[0]?.id } });
    // The first line needs no strip to be thought of.
    expect(first.written[2]).toMatchObject({ body: { field: first.written[1]?.id, wholeField: true } });
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

  describe("that another page has finished", () => {
    const person = `person-${"1".repeat(32)}` as const;
    const stored = { ...FIRST_SETTINGS, welcomed: true, trade: "au-nz", person } as const;

    it("begins nothing a second time, and takes over what was chosen there", async () => {
      const late = house(false, stored, "One who counts");
      expect(await begin(late, answers, true)).toBe("elsewhere");
      expect(late.written).toEqual([]);
      expect(late.settings()).toEqual(stored);
    });

    it("keeps a name that was typed here alone", async () => {
      const late = house(false, stored, "Somebody else");
      expect(await begin(late, answers, true)).toBe("elsewhere");
      expect(late.written).toMatchObject([{ body: { name: "One who counts" } }]);
      expect(late.settings()).toEqual({ ...stored, person: late.written[0]?.id });
    });

    it("says so when that name could not be written, and changes nobody", async () => {
      const late = house(true, { ...stored, person: null });
      expect(await begin(late, answers, false)).toBeUndefined();
      expect(late.told).toEqual([{ code: "store/quota", facts: {} }]);
      expect(late.settings()).toMatchObject({ welcomed: true, person: null });
    });
  });
});
