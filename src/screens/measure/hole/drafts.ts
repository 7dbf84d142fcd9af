/** What is written down for an answer that may take the place of earlier ones. */
import type { Draft } from "../../../record/command/command.ts";
import type { TemperatureEntry } from "../../../record/conditions.ts";
import type { HoleReading, Wetness } from "../../../record/hole/reading.ts";
import { type Counted, countedIn, type Doubtful, isLayer } from "./stand.ts";

const replacing = (ids: readonly string[]) => (ids.length === 0 ? {} : { replaces: [...ids] });

/** A number typed for a count, and whether it was odd and kept. */
export interface TypedCount {
  readonly count: number;
  readonly typed: string;
  readonly unusual: boolean;
}

/** Worms of a layer or a group at once, in the place of everything that counts there. */
export const countDraft = (reading: HoleReading, counted: Counted, said: TypedCount): Draft => {
  const { count, typed } = said;
  const more = {
    ...(said.unusual ? { unusual: true as const } : {}),
    ...replacing(countedIn(reading, counted).standsFor),
  };
  return isLayer(counted)
    ? { type: "found", from: counted, count, typed, ...more }
    : { type: "sorted", group: counted, count, typed, ...more };
};

/** A temperature of the soil, in the place of every one that stands. */
export const temperatureDraft = (
  { soilTemperature, temperaturesInDoubt }: HoleReading,
  said: Pick<TemperatureEntry, "value" | "unit" | "typed"> & { readonly unusual?: true | undefined },
): Draft => {
  const stood = soilTemperature === null ? temperaturesInDoubt : [soilTemperature.entry];
  const { value, unit, typed, unusual } = said;
  return {
    type: "temperature",
    of: "soil",
    value,
    unit,
    typed,
    ...(unusual === undefined ? {} : { unusual }),
    ...replacing(stood.map(({ id }) => id)),
  };
};

/** How wet the soil is, in the place of every answer that stands. */
export const wetnessDraft = ({ wetness, wetnessInDoubt }: HoleReading, is: Wetness): Draft => {
  const stood = wetness === null ? wetnessInDoubt : [wetness.entry];
  return { type: "wetness", is, ...replacing(stood.map(({ id }) => id)) };
};

/** One of two answers that contradict each other, to count from now on. */
export const chosenDraft = (reading: HoleReading, answer: Doubtful): Draft => {
  switch (answer.type) {
    case "temperature":
      return temperatureDraft(reading, answer);
    case "wetness":
      return wetnessDraft(reading, answer.is);
    default: {
      const counted = answer.type === "found" ? answer.from : answer.group;
      const { oneByOne } = countedIn(reading, counted);
      // Worms that were counted since were added to either answer.
      const count = answer.count + oneByOne;
      const typed = oneByOne === 0 ? answer.typed : String(count);
      return countDraft(reading, counted, { count, typed, unusual: answer.unusual === true });
    }
  }
};
