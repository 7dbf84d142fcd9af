/** What the first run writes down. */

import { readClock } from "../../device/clock.ts";
import type { Command } from "../../record/command/command.ts";
import type { RecordId } from "../../record/ids.ts";
import { HABITS, type HabitsName } from "../../record/units.ts";
import type { House } from "../parts/house.ts";
import { dayOf } from "../parts/numbers.ts";
import type { Trade } from "../parts/trade.ts";

/** The answers of the first run. */
export interface Answers {
  readonly trade: Trade;
  readonly habits: HabitsName;
  readonly name: string;
}

type Begins = Pick<House, "write" | "pen" | "changeSettings" | "tell">;

/**
 * Keeps the answers, and with `measureNow` begins a field without a name and today's visit in it. Either
 * everything is kept or nothing.
 *
 * @returns the visit that was begun, null when none was asked for; undefined when it could not be written
 * (then the problem was told and the first run is not over)
 */
export const begin = async (
  house: Begins,
  answers: Answers,
  measureNow: boolean,
): Promise<RecordId<"visit"> | null | undefined> => {
  const name = answers.name.trim();
  const person = name === "" ? null : house.pen.write("person", { name });
  house.changeSettings({
    trade: answers.trade,
    habits: HABITS[answers.habits],
    person: person?.id ?? null,
  });
  const commands: Command[] = person === null ? [] : [person];
  let visit: RecordId<"visit"> | null = null;
  if (measureNow) {
    const field = house.pen.write("field", {
      name: "",
      farm: null,
      boundary: null,
      rowDirectionDeg: null,
      soilTexture: null,
      harvestCrop: null,
    });
    const today = house.pen.write("visit", {
      field: field.id,
      day: dayOf(readClock().wallMs),
      harvestYear: null,
    });
    commands.push(field, today);
    visit = today.id;
  }
  if (commands.length > 0) {
    const written = await house.write(...commands);
    if (!written.ok) {
      // Who is measuring must not name a record that was never written.
      house.changeSettings({ person: null });
      house.tell(written.problem);
      return undefined;
    }
  }
  house.changeSettings({ welcomed: true });
  return visit;
};
