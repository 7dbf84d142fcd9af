/** The sample farm with all that no other test needs: fields, days and tests in every state. */
import { href } from "../../../src/screens/parts/route.ts";
import { beginSample, fieldOf, lineOf, sampleStartMs } from "../../bench/seed.ts";
import { daySample } from "../screens/day-sample.ts";
import { mapSample } from "../screens/map-sample.ts";
import { yearsSample } from "../screens/years-sample.ts";
import { farmIn, type SampleFarm } from "./sample.ts";
import { testsIn } from "./sample-tests.ts";

/** Makes the sample. */
export const wholeFarm = (): SampleFarm => {
  const sample = beginSample();
  const { add, rows } = sample;
  const farm = farmIn(sample);
  const { visit, field, strip, rope } = farm.ground;
  const unnamed = add("visit", { field: add("field", fieldOf("")), day: "2024-05-07", harvestYear: null });
  const thrown = add(
    "observation",
    {
      type: "note",
      visit,
      field,
      strip,
      text: "Nothing.",
      at: { position: null, why: "slow" },
      person: null,
      startedAtMs: sampleStartMs + 4_100_000,
    },
    { deleted: true },
  );
  const water = {
    type: "note",
    visit,
    field,
    strip,
    text: "Water stands.",
    at: { position: null, why: "slow" },
    person: null,
    startedAtMs: sampleStartMs + 4_200_000,
  } as const;
  const twoVersions = add("observation", water, { beside: { ...water, text: "Water stood." } });
  const missesFive = add(
    "observation",
    lineOf(
      { visit, field, strip, rope },
      { way: "misses-only", fifthKey: "dung", startedAtMs: sampleStartMs + 3_750_000 },
    ),
  );
  const day = daySample({ reps: 2, photos: true, tracks: true }, sample);
  const map = mapSample(sample);
  const years = yearsSample(sample);
  const more = {
    "line, misses with five keys": href({ at: "line", line: missesFive }),
    "note, deleted": href({ at: "note", note: thrown }),
    "note, two versions": href({ at: "note", note: twoVersions }),
    "visit, without a name": href({ at: "visit", visit: unnamed }),
    "rings, none": href({ at: "rings", visit: unnamed }),
    "ring-new, behind another": href({ at: "ring-new", visit, follows: farm.follows }),
    "visit, a whole day": href({ at: "visit", visit: day.visit }),
    "rings, a whole day": href({ at: "rings", visit: day.visit }),
    "side-by-side, a whole day": href({ at: "side-by-side", visit: day.visit, strip: null }),
    "picture, a whole day": href({ at: "picture", visit: day.visit }),
    "field, a whole day": href({ at: "field", field: day.field }),
    "map, something of everything": href({ at: "map", field: map.field, visit: map.visit }),
    "boundary, none": href({ at: "boundary", field: map.bare }),
    "spot, marked": href({ at: "spot", field: map.field, spot: map.spot }),
    "field, three years": href({ at: "field", field: years.field }),
    ...testsIn(add, farm.ground),
  };
  return { rows: rows(), addresses: { ...farm.addresses, ...more } };
};
