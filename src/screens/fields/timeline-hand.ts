/** The hand that writes on the timeline. */
import type { RecordId } from "../../record/ids.ts";
import type { ManagementEvent } from "../../record/kinds/event.ts";
import type { Rain } from "../../record/kinds/rain.ts";
import type { House } from "../parts/house.ts";
import { stripName } from "../parts/names.ts";
import { writeDay } from "../parts/numbers.ts";
import { eventOf, rainText, type TimelineNow } from "./timeline-model.ts";
import type { Step } from "./timeline-steps.ts";
import type { TimelineWords } from "./timeline-words.ts";

/** What writes on the timeline; every step says what it was and can be taken back. */
export interface TimelineHand {
  readonly addEvent: (
    what: ManagementEvent["what"],
    at: { readonly day: string; readonly strip: RecordId<"strip"> | null },
  ) => Promise<RecordId<"event"> | null>;
  readonly addRain: (said: Pick<Rain, "day" | "depthMm">) => Promise<boolean>;
  readonly change: <K extends "event" | "rain">(
    id: RecordId<K>,
    before: K extends "event" ? ManagementEvent : Rain,
    after: K extends "event" ? ManagementEvent : Rain,
  ) => Promise<boolean>;
  readonly remove: (
    id: RecordId<"event"> | RecordId<"rain">,
    body: ManagementEvent | Rain,
  ) => Promise<boolean>;
}

/** What stands there, in words: "Harvested, 25 Nov 2026, whole field". */
const describe = (
  house: House,
  says: TimelineWords,
  now: TimelineNow,
  body: ManagementEvent | Rain,
): string => {
  const words = house.words.value;
  const day = writeDay(body.day, words.common.tongue);
  if ("depthMm" in body)
    return `${says.rainOf(rainText(body, house.settings.value.habits.depthSoaked))}, ${day}`;
  const strip = now.strips.find(({ id }) => id === body.strip) ?? now.named.get(body.strip ?? "strip-");
  return [says.events[body.what], day, body.strip === null ? says.wholeField : stripName(words, strip)].join(
    ", ",
  );
};

/** @param take does a step and keeps it for undo */
export const handOf = (
  house: House,
  says: TimelineWords,
  now: TimelineNow,
  take: (step: Step) => Promise<boolean>,
): TimelineHand => {
  const { pen } = house;
  const what = (body: ManagementEvent | Rain): string => describe(house, says, now, body);
  const add = async <K extends "event" | "rain">(
    kind: K,
    body: K extends "event" ? ManagementEvent : Rain,
  ): Promise<RecordId<K> | null> => {
    const command = pen.write<"event" | "rain">(kind, body);
    const taken = await take({
      what: what(body),
      said: says.written(what(body)),
      first: () => [command],
      back: () => [pen.remove(command.id)],
      again: () => [pen.restore(command.id)],
    });
    return taken ? (command.id as RecordId<K>) : null;
  };
  return {
    addEvent: (name, at) => add("event", eventOf(now.field, name, at)),
    addRain: async (said) => (await add("rain", { field: now.field, ...said })) !== null,
    change: (id, before, after) => {
      const to = (body: ManagementEvent | Rain) => [pen.change<"event" | "rain">(id, body)];
      return take({
        what: what(after),
        said: says.changed(what(after)),
        first: () => to(after),
        back: () => to(before),
        again: () => to(after),
      });
    },
    remove: (id, body) =>
      take({
        what: what(body),
        said: says.deleted(what(body)),
        first: () => [pen.remove(id)],
        back: () => [pen.restore(id)],
        again: () => [pen.remove(id)],
      }),
  };
};
