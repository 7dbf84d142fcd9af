import { describe, expect, it } from "vitest";
import {
  type CautionFacts,
  type CautionsRead,
  cautionsDue,
  fromOtherFarm,
  nowRead,
  wasDug,
} from "../../../src/screens/parts/cautions-due.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { CAUTION_WORDS } from "../../../src/screens/parts/words.cautions.ts";

const dayMs = 86_400_000;
const nowMs = Date.UTC(2024, 4, 7, 9);
const facts: CautionFacts = {
  test: "ring",
  field: "field-1",
  person: "person-1",
  dugBefore: false,
  fromOtherFarm: null,
  events: [],
  day: "2024-05-07",
  nowMs,
};
const namesOf = (more: Partial<CautionFacts>, read: CautionsRead = {}): readonly string[] =>
  cautionsDue({ ...facts, ...more }, read).map(({ name }) => name);
const afterReading = (more: Partial<CautionFacts> = {}): CautionsRead =>
  nowRead({}, cautionsDue({ ...facts, ...more }, {}), nowMs);

describe("buried services", () => {
  it("are said once on each field, before its first ring or hole", () => {
    expect(namesOf({})[0]).toBe("services");
    expect(namesOf({ dugBefore: true })).not.toContain("services");
    expect(namesOf({}, afterReading())).toEqual([]);
    expect(namesOf({ test: "hole", nowMs: nowMs + 4000 * dayMs }, afterReading())).not.toContain("services");
    expect(namesOf({ field: "field-2" }, afterReading())).toEqual(["services"]);
  });

  it("are silenced by a ring or hole of an earlier visit, and by no line or note", () => {
    const [earlier, now] = ["visit-1", "visit-2"] as never[] as [never, never];
    const dug = (type: "line" | "ring" | "hole" | "note", visit = earlier) =>
      wasDug([{ body: { type, visit } }], now);
    expect(dug("ring")).toBe(true);
    expect(dug("hole")).toBe(true);
    expect(dug("line")).toBe(false);
    expect(dug("note")).toBe(false);
    expect(dug("hole", now)).toBe(false);
  });
});

describe("clean boots, spade and rings", () => {
  it("are said when the visit before was another farm's", () => {
    const before = { visit: "visit-1", farm: "farm-1" } as const;
    expect(fromOtherFarm(null, "farm-1")).toBeNull();
    expect(fromOtherFarm(before as never, "farm-1")).toBeNull();
    expect(fromOtherFarm(before as never, "farm-2")).toBe("visit-1");
    expect(fromOtherFarm(before as never, null)).toBe("visit-1");
    expect(fromOtherFarm({ ...before, farm: null } as never, null)).toBeNull();
  });

  it("are said once for each time of coming", () => {
    const coming = { fromOtherFarm: "visit-1" };
    const read = afterReading(coming);
    expect(namesOf(coming)).toContain("clean-kit");
    expect(namesOf(coming, read)).toEqual([]);
    expect(namesOf({ fromOtherFarm: "visit-2" }, read)).toEqual(["clean-kit"]);
  });
});

describe("a spraying", () => {
  const sprayed = (day: string, what: "sprayed" | "tilled" = "sprayed") => ({
    events: [{ id: "event-1", body: { day, what } }],
  });

  it("is said once a day while it is recent, and leaves the rest to the label", () => {
    const on = sprayed("2024-05-06");
    expect(namesOf(on)).toContain("sprayed");
    expect(namesOf(on, afterReading(on))).toEqual([]);
    const tomorrow = { ...on, day: "2024-05-08", nowMs: nowMs + dayMs };
    expect(namesOf(tomorrow, afterReading(on))).toEqual(["sprayed"]);
    expect(cautionsDue({ ...facts, ...on }, {}).find(({ name }) => name === "sprayed")?.day).toBe(
      "2024-05-06",
    );
    expect(CAUTION_WORDS.en(TRADE_WORDS["uk-ie"]).names.sprayed.mind).toContain("label");
  });

  it("is not said of old sprayings, of later ones, or of other work", () => {
    expect(namesOf(sprayed("2024-04-06"))).toContain("sprayed");
    expect(namesOf(sprayed("2024-04-05"))).not.toContain("sprayed");
    expect(namesOf(sprayed("2024-05-08"))).toContain("sprayed");
    expect(namesOf(sprayed("2024-05-09"))).not.toContain("sprayed");
    expect(namesOf(sprayed("2024-05-06", "tilled"))).not.toContain("sprayed");
  });
});

it("speaks before a line only of coming onto the field: a spraying, and boots from another farm", () => {
  const coming = {
    test: "line" as const,
    fromOtherFarm: "visit-1",
    events: [{ id: "event-1", body: { day: "2024-05-06", what: "sprayed" as const } }],
  };
  expect(namesOf({ test: "line" })).toEqual([]);
  expect(namesOf(coming)).toEqual(["sprayed", "clean-kit"]);
  const read = afterReading(coming);
  expect(namesOf(coming, read)).toEqual([]);
  // The ring that comes next has its own to say, and these two were read.
  const ring = namesOf({ ...coming, test: "ring" }, read);
  expect(ring[0]).toBe("services");
  expect(ring).not.toContain("sprayed");
  expect(ring).not.toContain("clean-kit");
});

describe("once a season and person", () => {
  it("names mustard at holes alone, and what is driven in at rings alone", () => {
    expect(namesOf({ test: "ring" })).toContain("driving");
    expect(namesOf({ test: "hole" })).not.toContain("driving");
    expect(namesOf({ test: "hole" })).toContain("mustard");
    expect(namesOf({ test: "ring" })).not.toContain("mustard");
    expect(namesOf({ test: "ring" })).toContain("lifting");
    expect(namesOf({ test: "hole" }, afterReading())).toEqual(["mustard"]);
  });

  it("is said to another person, and to nobody in particular, on its own", () => {
    expect(namesOf({ person: "person-2" }, afterReading())).toContain("livestock");
    expect(namesOf({ person: null }, afterReading())).toContain("livestock");
    expect(namesOf({ person: null }, afterReading({ person: null }))).toEqual([]);
  });

  it("is said again after half a year, and when the clock was set back", () => {
    const known = { dugBefore: true };
    expect(namesOf({ ...known, nowMs: nowMs + 179 * dayMs }, afterReading())).toEqual([]);
    expect(namesOf({ ...known, nowMs: nowMs + 181 * dayMs }, afterReading())).toContain("heat");
    expect(namesOf({ ...known, nowMs: nowMs - 2 * dayMs }, afterReading())).toContain("heat");
    // The facts of an open screen are a moment older than the touch.
    expect(namesOf({ ...known, nowMs: nowMs - 1 }, afterReading())).toEqual([]);
  });
});

it("keeps what was read without growing for ever, the newest longest", () => {
  const many = Object.fromEntries(Array.from({ length: 2500 }, (_, at) => [`services field-${at}`, at]));
  const read = nowRead(many, cautionsDue(facts, many), nowMs);
  expect(Object.keys(read)).toHaveLength(2000);
  expect(read["livestock person-1"]).toBe(nowMs);
  expect(read["services field-0"]).toBeUndefined();
});

it("defers to local codes and licensed practice", () => {
  for (const trade of Object.values(TRADE_WORDS))
    expect(CAUTION_WORDS.en(trade).local).toMatch(/local codes.*licensed/i);
});
