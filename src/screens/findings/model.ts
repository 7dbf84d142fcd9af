/** Per field what each test found on its newest day, strip beside strip. */
import type { RecordId } from "../../record/ids.ts";
import { readDay } from "../measure/visit/day-strips.ts";
import type { House } from "../parts/house.ts";
import { wantedBy } from "../parts/results-desk.ts";
import { allFields, type SameField } from "../parts/same-field.ts";
import type { Settings } from "../parts/settings.ts";
import { newestTests, type TestFound } from "./newest-test.ts";

/** What was found on a field: the tests that found something. */
export interface FieldFound {
  readonly same: SameField;
  readonly tests: readonly TestFound[];
  /** The newest visit on which one test found something on two strips; null when there is none. */
  readonly beside: RecordId<"visit"> | null;
}

export interface FindingsNow {
  readonly found: readonly FieldFound[];
  /** Fields that have visits and are not shown yet. */
  readonly more: boolean;
}

const besideOf = (tests: readonly TestFound[]): RecordId<"visit"> | null => {
  const [newest] = tests
    .filter(({ strips }) => strips.filter(({ found }) => found.ok).length > 1)
    .sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0));
  return newest?.strips[0]?.visits[0] ?? null;
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
  return tests.length === 0 ? [] : [{ same, tests, beside: besideOf(tests) }];
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
