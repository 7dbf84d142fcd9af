/** What stands behind the ground cover of one strip on one day. */
import type { RecordId } from "../../record/ids.ts";
import type { Result } from "../../record/result.ts";
import { GIVE_OR_TAKE } from "../../science/constants.ts";
import type { Caution } from "../../science/estimate.ts";
import { hitsOf, type KindOfAMark, marksByKind } from "../../science/ground-cover/line.ts";
import { type Percentages, percentagesThatSum } from "../../science/ground-cover/percentages.ts";
import { type Chance, chanceOfAtLeast, kindAimedAt } from "../../science/ground-cover/targets.ts";
import { METHODS } from "../../science/methods/all.ts";
import { type MethodId, sourcesOf } from "../../science/methods.ts";
import { type Mark, SOURCES, type Source, type SourceId } from "../../science/sources.ts";
import { linesOfVisits } from "../measure/visit/model.ts";
import type { House } from "../parts/house.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import { wantedBy } from "../parts/results-desk.ts";
import { type SameField, sameField, sameStrip } from "../parts/same-field.ts";
import type { Settings } from "../parts/settings.ts";
import { coverOfLines, type ReadLine, type StripCover } from "../parts/strip-cover.ts";
import { visitsOf } from "../parts/visits.ts";

/** One line as it went into the strip. */
export interface LineInStrip {
  readonly line: ReadLine;
  readonly index: number;
  readonly hits: number;
  readonly marks: number;
}

/** A constant as it was used. */
export interface ConstantUsed {
  readonly symbol: string;
  readonly value: number;
  readonly unit: string;
  readonly mark: Mark | "your-setting";
  readonly source: Source | null;
}

export interface WorkedOut {
  readonly same: SameField | undefined;
  readonly strip: Listed<"strip">;
  readonly day: string;
  readonly visit: RecordId<"visit">;
  readonly cover: StripCover;
  readonly lines: readonly LineInStrip[];
  /** Kinds in whole percent that sum to 100. */
  readonly kinds: Result<Percentages<KindOfAMark>>;
  readonly chance: Result<Chance> | null;
  readonly cautions: readonly Caution[];
  readonly methods: readonly MethodId[];
  readonly constants: ReadonlyMap<MethodId, readonly ConstantUsed[]>;
  readonly sources: readonly SourceId[];
}

/** The day that is asked for, with all visits of the field on it: the given visit's, else the newest. */
const dayOf = async (
  { records, results }: House,
  settings: Settings,
  { field, strip, visit }: { field: SameField; strip: RecordId<"strip">; visit: RecordId<"visit"> | null },
): Promise<readonly Listed<"visit">[]> => {
  const asked = visit === null ? undefined : await records.one(visit);
  const day =
    asked?.body.day ??
    (await results.field(field.ids, wantedBy(settings))).onDays.find((one) => one.strip === strip)?.day;
  const all = await visitsOf(records, field.ids);
  const onDay = all.filter(({ body }) => body.day === day);
  return asked === undefined || onDay.some(({ id }) => id === asked.id) ? onDay : [asked, ...onDay];
};

const linesInStrip = (lines: readonly ReadLine[], settings: Settings): readonly LineInStrip[] =>
  lines.flatMap((line, at) => {
    const seen = hitsOf(line.counts, "ground-cover", { stoneCounts: settings.stonesCount });
    return seen.ok ? [{ line, index: at + 1, hits: seen.value.hits, marks: seen.value.marks }] : [];
  });

/** Constants of a method; what the person set takes the place of what is planned with otherwise. */
const constantsOf = (method: MethodId, settings: Settings): readonly ConstantUsed[] =>
  METHODS[method].constants.map(({ symbol, value, unit, source }) => {
    const set = method === "lines-needed" && symbol === "d" && settings.marginPoints / 100 !== GIVE_OR_TAKE;
    return set
      ? { symbol, value: settings.marginPoints / 100, unit, mark: "your-setting", source: null }
      : { symbol, value, unit, mark: SOURCES[source].mark, source: SOURCES[source] };
  });

const once = <T>(items: readonly T[]): readonly T[] => [...new Set(items)];

const cautionsOnce = (cautions: readonly Caution[]): readonly Caution[] => [
  ...new Map(cautions.map((caution) => [JSON.stringify(caution), caution])).values(),
];

const stripOf = async (
  records: Reader,
  id: RecordId<"strip">,
): Promise<{
  readonly strip: Listed<"strip">;
  readonly same: (id: RecordId<"strip">) => RecordId<"strip">;
} | null> => {
  const [strip, joins] = await Promise.all([records.one(id), records.joins()]);
  return strip === undefined ? null : { strip, same: sameStrip(joins) };
};

/** Reads how a strip's ground cover was worked out; null when the strip is not on this device. */
export const readWorkedOut = async (
  house: House,
  settings: Settings,
  stripId: RecordId<"strip">,
  visitId: RecordId<"visit"> | null,
): Promise<WorkedOut | null> => {
  const { records } = house;
  const asked = await stripOf(records, stripId);
  const field = asked === null ? undefined : await sameField(records, asked.strip.body.field);
  if (asked === null || field === undefined) return null;
  const { strip, same } = asked;
  const visits = await dayOf(house, settings, { field, strip: same(stripId), visit: visitId });
  const [visit] = visits;
  if (visit === undefined) return null;
  const all = await linesOfVisits(records, visits);
  const lines = all.filter(({ header }) => same(header.strip) === same(stripId));
  const cover = coverOfLines(lines, settings);
  const counts = cover.finished.map((line) => line.counts);
  const { target, ...counting } = wantedBy(settings);
  const chance = target === null ? null : chanceOfAtLeast(counts, kindAimedAt(target), counting, target);
  const byKind = marksByKind(counts);
  const kinds = byKind.ok ? percentagesThatSum(byKind.value) : byKind;
  const worked = [cover.cover, cover.more, ...(chance === null ? [] : [chance])].flatMap((one) =>
    one.ok && cover.cover.ok ? [one.value] : [],
  );
  const methods = once<MethodId>([
    ...(cover.cover.ok ? (["marks-share"] as const) : []),
    ...worked.flatMap((one) => one.methods),
    ...(kinds.ok ? kinds.value.methods : []),
  ]);
  const noRange = cover.cover.ok && !cover.cover.value.range.ok ? [cover.cover.value.range.problem] : [];
  return {
    same: field,
    strip,
    day: visit.body.day,
    visit: visit.id,
    cover,
    lines: linesInStrip(lines, settings),
    kinds,
    chance,
    cautions: cautionsOnce([...noRange, ...worked.flatMap((one) => one.cautions)]),
    methods,
    constants: new Map(methods.map((method) => [method, constantsOf(method, settings)])),
    sources: sourcesOf(methods),
  };
};
