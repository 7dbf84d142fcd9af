/** Brings the example farm in and takes it away, by its own ids alone. */
import { readClock } from "../../device/clock.ts";
import { applyCommand } from "../../record/command/apply.ts";
import type { Command } from "../../record/command/command.ts";
import { DEMO_BEGINNINGS, type DemoRound, demoRoundOf, restingOnDemo } from "../../record/demo-ids.ts";
import { isDemoId } from "../../record/demo-mark.ts";
import { KINDS, kindOf, type RecordId } from "../../record/ids.ts";
import { type Named, namesBeginning } from "../../store/beginning-with.ts";
import { list, listDeleted } from "../../store/list.ts";
import type { House } from "../parts/house.ts";
import { wordsOf } from "../parts/words-of.ts";
import { DEMO_EDITION, DEMO_STEPS, demoCommands } from "./commands.ts";
import { firstOf, sealOf } from "./demo-pen.ts";
import type { DemoHere } from "./here.ts";
import { DEMO_FARM_WORDS } from "./words.ts";

/** The example farm on this device. */
export interface DemoState {
  readonly here: DemoHere;
  /** The records that are here, deleted ones too. */
  readonly ids: readonly RecordId[];
  /** The round that a bringing in writes. */
  readonly next: DemoRound;
}

type Demo = Pick<House, "records" | "write" | "tell" | "settings">;
/** How far it has come, from 0 to 1. */
export type OnShare = (share: number) => void;

/** Work written together: enough to be quick, and little enough for a slow phone to answer in between. */
const LEAST_AT_ONCE = 10;
const MOST_AT_ONCE = 60;
/** Applying commands in memory may take this long; writing them takes about six times as long (as measured). */
const APPLYING_MS = 5;

/** How much work this device can do at once: the first step is applied in memory, twice, and the second timed. */
const workAtOnce = (step: readonly Command[]): number => {
  const apply = (): void => {
    for (const command of step) applyCommand(undefined, command);
  };
  apply();
  const beganMs = readClock().monoMs;
  apply();
  const eachMs = (readClock().monoMs - beganMs) / Math.max(1, step.length);
  return Math.min(MOST_AT_ONCE, Math.max(LEAST_AT_ONCE, Math.floor(APPLYING_MS / eachMs)));
};

/** A mark on a line is written by reading all marks before it. */
const workOf = (command: Command): number =>
  command.op === "append" && command.draft.type === "mark" ? 2 : 1;

/** Commands in parts of about the same work, in their order. */
const inParts = (commands: readonly Command[], most: number): readonly (readonly Command[])[] => {
  const parts: Command[][] = [];
  let work = most;
  for (const command of commands) {
    if (work >= most) {
      parts.push([]);
      work = 0;
    }
    parts.at(-1)?.push(command);
    work += workOf(command);
  }
  return parts;
};

/** Records erased together. */
const ERASED_AT_ONCE = 60;

const stateFrom = (names: readonly Named[]): DemoState => {
  const here = names.filter(({ erased }) => !erased).map(({ id }) => id);
  const rounds = names.map(({ id }) => demoRoundOf(id)).filter(({ edition }) => edition === DEMO_EDITION);
  const last: DemoRound = {
    edition: DEMO_EDITION,
    round: rounds.reduce((highest, { round }) => Math.max(highest, round), 0),
  };
  const isOfLast = (id: RecordId): boolean => {
    const { edition, round } = demoRoundOf(id);
    return edition === last.edition && round === last.round;
  };
  const broken = names.some(({ id, erased }) => erased && isOfLast(id));
  const next = broken ? { ...last, round: last.round + 1 } : last;
  if (here.length === 0) return { here: "none", ids: here, next };
  if (broken || !here.some(isOfLast)) return { here: "rest", ids: here, next };
  return { here: here.includes(sealOf(last)) ? "whole" : "part", ids: here, next };
};

/** Looks what of the example farm is here; null when the store cannot answer, and the reason is shown. */
export const readDemo = async ({
  records,
  tell,
}: Pick<Demo, "records" | "tell">): Promise<DemoState | null> => {
  const names = await namesBeginning(records.connection, DEMO_BEGINNINGS);
  if (names.ok) return stateFrom(names.value);
  tell(names.problem);
  return null;
};

/** A farm that was cut short is gone on with as of the moment at which it was begun. */
const beganMs = async ({ records }: Demo, state: DemoState): Promise<number> => {
  const farm = state.here === "part" ? await records.one(firstOf(state.next)) : undefined;
  return farm?.revision.stamp.wallMs ?? readClock().wallMs;
};

/**
 * Brings the example farm in. When it is here already nothing changes; when it was cut short the rest is
 * brought in.
 *
 * @returns whether the whole of it is here now; the reason why not is shown
 */
export const bringDemo = async (house: Demo, onShare: OnShare): Promise<boolean> => {
  const state = await readDemo(house);
  if (state === null) return false;
  if (state.here === "whole") return true;
  const words = wordsOf(DEMO_FARM_WORDS, house.settings.value);
  let step = 0;
  let most = 0;
  const nowMs = await beganMs(house, state);
  for (const commands of demoCommands({ round: state.next, nowMs, words })) {
    most = most === 0 ? workAtOnce(commands) : most;
    for (const part of inParts(commands, most)) {
      const written = await house.write(...part);
      if (!written.ok) {
        house.tell(written.problem);
        return false;
      }
    }
    step += 1;
    onShare(Math.min(1, step / DEMO_STEPS));
  }
  return true;
};

/** What taking the example farm away did. */
export interface TakenAway {
  readonly gone: number;
  /** Records of one's own that rest on the example farm and stay. */
  readonly own: number;
  /** Records of the example farm that stay because those rest on them. */
  readonly needed: number;
}

/** What somebody wrote down on the example farm, and what of the farm that rests on. */
const resting = async ({ records, tell }: Demo) => {
  const found = restingOnDemo();
  for (const kind of KINDS) {
    const rows = await list(records.connection, { kind });
    if (!rows.ok) {
      tell(rows.problem);
      return null;
    }
    for (const row of rows.value) found.add(row);
  }
  const deleted = await listDeleted(records.connection);
  if (!deleted.ok) {
    tell(deleted.problem);
    return null;
  }
  for (const row of deleted.value) found.add(row);
  return found;
};

/**
 * Takes the example farm away: erases the records that carry its ids and no others. What somebody measured on
 * it stays, and so does what that rests on (the field, the strip, the visit, the rope): without its rope a
 * line says nothing.
 *
 * @returns what was done, or null when it could not be brought to its end; the reason is shown
 */
export const takeDemoAway = async (house: Demo, onShare: OnShare): Promise<TakenAway | null> => {
  const [state, found] = [await readDemo(house), await resting(house)];
  if (state === null || found === null) return null;
  const needed = found.needed();
  // Measurements first, so that none is left for a moment without its field.
  const going = state.ids
    .filter((id) => isDemoId(id) && !needed.has(id))
    .sort((a, b) => KINDS.indexOf(kindOf(b)) - KINDS.indexOf(kindOf(a)));
  for (let from = 0; from < going.length; from += ERASED_AT_ONCE) {
    const erase: Command[] = going.slice(from, from + ERASED_AT_ONCE).map((id) => ({ op: "erase", id }));
    const written = await house.write(...erase);
    if (!written.ok) {
      house.tell(written.problem);
      return null;
    }
    onShare(Math.min(1, (from + ERASED_AT_ONCE) / going.length));
  }
  return { gone: going.length, own: found.own().size, needed: state.ids.length - going.length };
};
