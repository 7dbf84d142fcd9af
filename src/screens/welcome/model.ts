/** What the first run writes down. */

import { readClock } from "../../device/clock.ts";
import { onePageAtATime } from "../../device/one-page.ts";
import type { Command } from "../../record/command/command.ts";
import type { RecordId } from "../../record/ids.ts";
import { HABITS, type HabitsName } from "../../record/units.ts";
import { getMeta } from "../../store/meta.ts";
import type { House } from "../parts/house.ts";
import { newField } from "../parts/new-field.ts";
import { dayOf } from "../parts/numbers.ts";
import { SETTINGS, type Settings } from "../parts/settings.ts";
import type { Trade } from "../parts/trade.ts";

/** The answers of the first run. */
export interface Answers {
  readonly trade: Trade;
  readonly habits: HabitsName;
  readonly name: string;
}

type Begins = Pick<House, "records" | "write" | "pen" | "changeSettings" | "tell">;

/** What the first run came to: the visit that was begun, null when none was, or that another page was faster. */
export type Begun = RecordId<"visit"> | "elsewhere" | null;

const fieldAndVisit = ({ pen }: Begins) => {
  const { field, commands } = newField(pen);
  const visit = pen.write("visit", { field, day: dayOf(readClock().wallMs), harvestYear: null });
  return { visit: visit.id, commands: [...commands, visit] };
};

/** Writes a person who measures from now on; with nothing typed nobody is written. */
const personOf = ({ pen }: Begins, name: string) => (name === "" ? null : pen.write("person", { name }));

const written = async (house: Begins, commands: readonly Command[]): Promise<boolean> => {
  if (commands.length === 0) return true;
  const result = await house.write(...commands);
  if (!result.ok) house.tell(result.problem);
  return result.ok;
};

const beginHere = async (house: Begins, answers: Answers, measureNow: boolean) => {
  const person = personOf(house, answers.name.trim());
  house.changeSettings({
    trade: answers.trade,
    habits: HABITS[answers.habits],
    person: person?.id ?? null,
  });
  // After the settings: whatever is written down is signed by who is measuring.
  const begun = measureNow ? fieldAndVisit(house) : null;
  if (!(await written(house, [...(person === null ? [] : [person]), ...(begun?.commands ?? [])]))) {
    // Who is measuring must not name a record that was never written.
    house.changeSettings({ person: null });
    return undefined;
  }
  house.changeSettings({ welcomed: true });
  return begun?.visit ?? null;
};

/** The answers of the page that was faster stand; only a name that it does not know is kept beside them. */
const goOn = async (house: Begins, name: string, stands: Partial<Settings>) => {
  house.changeSettings(stands);
  const { person } = stands;
  const known = person == null ? undefined : await house.records.one(person);
  const other = known?.body.name === name ? null : personOf(house, name);
  if (other !== null) {
    if (!(await written(house, [other]))) return undefined;
    house.changeSettings({ person: other.id });
  }
  return "elsewhere";
};

/**
 * Keeps the answers, and with `measureNow` begins a field without a name and today's visit in it. Either
 * everything is kept or nothing; and of several pages that finish the first run only one begins anything.
 *
 * @returns what was begun; undefined when it could not be written (then the problem was told and the first run
 * is not over)
 */
export const begin = (house: Begins, answers: Answers, measureNow: boolean): Promise<Begun | undefined> =>
  onePageAtATime("mulchmark-first-run", async () => {
    const { connection } = house.records;
    const stored = await getMeta(connection, SETTINGS);
    if (!stored.ok) {
      house.tell(stored.problem);
      return undefined;
    }
    const begun =
      stored.value?.welcomed === true
        ? await goOn(house, answers.name.trim(), stored.value)
        : await beginHere(house, answers, measureNow);
    // Read behind the settings: once there is an answer the next page will find them.
    await getMeta(connection, SETTINGS);
    return begun;
  });
