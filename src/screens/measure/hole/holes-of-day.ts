/** The holes of a day, with what their entries say. */
import { type HoleReading, readHole } from "../../../record/hole/reading.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { HoleTemplate } from "../../../record/kinds/kit.ts";
import type { HoleHeader } from "../../../record/kinds/observation.ts";
import { holeOf } from "../../../science/earthworms/hole.ts";
import type { HoleCount } from "../../../science/earthworms/hole-count.ts";
import { groundName } from "../../parts/ground-name.ts";
import type { House } from "../../parts/house.ts";
import { fieldName } from "../../parts/names.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { sameField } from "../../parts/same-field.ts";
import { visitsOf } from "../../parts/visits.ts";
import { sizeWords } from "./sizes.ts";
import type { HoleWords } from "./words.ts";

/** A hole with its reading. */
export interface DayHole {
  readonly id: RecordId<"observation">;
  readonly header: HoleHeader;
  readonly template: HoleTemplate | null;
  readonly reading: HoleReading;
}

/** Reads the holes among these observations, by their number. */
export const readHoles = async (
  records: Reader,
  observations: readonly Listed<"observation">[],
): Promise<readonly DayHole[]> => {
  const headers = observations.flatMap(({ id, body }) =>
    body.type === "hole" ? [{ id, header: body }] : [],
  );
  if (headers.length === 0) return [];
  const wanted = new Set(
    headers.flatMap(({ header }) => (header.template === null ? [] : [header.template])),
  );
  const [kit, entries] = await Promise.all([
    records.many([...wanted]),
    records.entries(headers.map(({ id }) => id)),
  ]);
  const templates = new Map(
    kit.flatMap(({ id, body }) => (body.type === "hole-template" ? [[id as string, body] as const] : [])),
  );
  return headers
    .map(({ id, header }) => ({
      id,
      header,
      template: header.template === null ? null : (templates.get(header.template) ?? null),
      reading: readHole(entries.get(id) ?? []),
    }))
    .sort((a, b) => a.header.number - b.header.number || a.header.startedAtMs - b.header.startedAtMs);
};

/** The holes of one visit. */
export const holesOfVisit = async (records: Reader, visit: RecordId<"visit">): Promise<readonly DayHole[]> =>
  readHoles(records, await records.list({ visit, kind: "observation" }));

/** The holes of every visit of the field on the day of this one: two phones may have begun a visit each. */
export const holesOfDay = async (records: Reader, visit: Listed<"visit">): Promise<readonly DayHole[]> => {
  const same = await sameField(records, visit.body.field);
  const visits = same === undefined ? [visit] : await visitsOf(records, same.ids);
  const onDay = visits.filter(({ id, body }) => id === visit.id || body.day === visit.body.day);
  const lists = await Promise.all(onDay.map(({ id }) => records.list({ visit: id, kind: "observation" })));
  return readHoles(records, lists.flat());
};

/** The hole as science takes it. */
export const countOfHole = ({ reading, header, template }: DayHole): HoleCount =>
  holeOf(reading, header, template);

/** What stands in the head of a hole's screens. */
export interface HoleHeading {
  readonly title: string;
  readonly under: string;
}

/** The heading of a hole; undefined when it is not on this device. */
export const holeHeading = async (
  house: House,
  holeWords: HoleWords,
  id: RecordId<"observation">,
): Promise<HoleHeading | undefined> => {
  const { records } = house;
  const hole = await records.one(id);
  if (hole?.body.type !== "hole") return undefined;
  const { field: fieldId, strip: stripId, spot: spotId, template, place, depthM, sidesM } = hole.body;
  const [field, strip, spot, kit] = await Promise.all([
    records.one(fieldId),
    records.one(stripId),
    spotId === undefined ? undefined : records.one(spotId),
    template === null ? undefined : records.one(template),
  ]);
  const words = house.words.value;
  const sides = kit?.body.type === "hole-template" ? kit.body.sidesM : sidesM;
  return {
    title: `${fieldName(words, field)} · ${groundName(words, strip, spot)}`,
    under: [
      sizeWords(holeWords, { sidesM: sides, depthM }, house.settings.value.habits),
      ...(place === null ? [] : [words.place[place]]),
    ].join(" · "),
  };
};
