/** Per field what each test found on its newest day, strip beside strip. */
import type { RecordId } from "../../record/ids.ts";
import { newestFirst } from "../../science/together.ts";
import { readDay } from "../measure/visit/day-strips.ts";
import type { House } from "../parts/house.ts";
import { wantedBy } from "../parts/results-desk.ts";
import { allFields, type SameField } from "../parts/same-field.ts";
import type { Settings } from "../parts/settings.ts";
import { newestTests, type TestFound } from "./newest-test.ts";

/** A day with two strips, by one of its visits. */
export interface Beside {
  readonly day: string;
  readonly visit: RecordId<"visit">;
}

/** What was found on a field: the tests that found something. */
export interface FieldFound {
  readonly same: SameField;
  readonly tests: readonly TestFound[];
  /** The days that can be looked at side by side, the newest first. */
  readonly besides: readonly Beside[];
}

export interface FindingsNow {
  readonly found: readonly FieldFound[];
  /** Fields that have visits and are not shown yet. */
  readonly more: boolean;
}

/** The days on which one of the tests shown found something on two strips, the newest first. */
export const besidesOf = (tests: readonly TestFound[]): readonly Beside[] => {
  const visits = new Map<string, RecordId<"visit">>();
  for (const { day, strips } of tests) {
    const visit = strips[0]?.visits[0];
    if (visit !== undefined && strips.filter(({ found }) => found.ok).length > 1 && !visits.has(day))
      visits.set(day, visit);
  }
  return [...visits].map(([day, visit]) => ({ day, visit })).sort(newestFirst);
};

const findingOf = async (
  house: House,
  settings: Settings,
  same: SameField,
): Promise<readonly FieldFound[]> => {
  const tests = await newestTests(
    { records: house.records, dayOf: (visit) => readDay(house, settings, visit) },
    await house.results.all(same.ids, wantedBy(settings)),
  );
  return tests.length === 0 ? [] : [{ same, tests, besides: besidesOf(tests) }];
};

/** Reads the findings of the fields that were visited last. */
export const readFindings = async (house: House, settings: Settings, most: number): Promise<FindingsNow> => {
  const [fields, visits] = await Promise.all([
    allFields(house.records),
    house.records.list({ kind: "visit" }),
  ]);
  const groupOf = new Map(fields.flatMap((same) => same.ids.map((id) => [id, same] as const)));
  const lastDay = new Map<SameField, string>();
  for (const { body } of visits) {
    const same = groupOf.get(body.field);
    if (same !== undefined && body.day > (lastDay.get(same) ?? "")) lastDay.set(same, body.day);
  }
  const byDay = [...lastDay].sort(([, a], [, b]) => (a < b ? 1 : -1)).map(([same]) => same);
  const found: FieldFound[] = [];
  let looked = 0;
  // One after another: ten questions at once would not be answered any sooner.
  for (const same of byDay) {
    if (found.length >= most) break;
    looked += 1;
    found.push(...(await findingOf(house, settings, same)));
  }
  return { found, more: looked < byDay.length };
};
