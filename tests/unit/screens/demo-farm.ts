/** The example farm in memory: its commands applied by the real code, without a database. */
import { applyCommand } from "../../../src/record/command/apply.ts";
import type { Command } from "../../../src/record/command/command.ts";
import type { DemoRound } from "../../../src/record/demo-ids.ts";
import { kindOf, type RecordId } from "../../../src/record/ids.ts";
import type { BodyOf } from "../../../src/record/kinds/all.ts";
import { type RecordState, shown } from "../../../src/record/record.ts";
import { DEMO_EDITION, demoCommands } from "../../../src/screens/demo/commands.ts";
import { farmWords } from "../../../src/screens/demo/words.farm.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

export const ROUND: DemoRound = { edition: DEMO_EDITION, round: 0 };
/** 12 April 2026, 10:00 by the clock of this machine. */
export const NOW_MS = new Date(2026, 3, 12, 10).getTime();

export type States = Map<RecordId, RecordState>;

/** The steps as they are written. */
export const stepsAt = (nowMs = NOW_MS, round = ROUND, seed?: number): readonly (readonly Command[])[] => [
  ...demoCommands({
    round,
    nowMs,
    words: farmWords(TRADE_WORDS["uk-ie"]),
    ...(seed === undefined ? {} : { seed }),
  }),
];

/** Applies commands; returns how many changed anything. Throws when one is refused. */
export const applyTo = (states: States, commands: readonly Command[]): number => {
  let changed = 0;
  for (const command of commands) {
    const applied = applyCommand(states.get(command.id), command);
    if (!applied.ok)
      throw new Error(`${command.id} ${applied.problem.code} ${JSON.stringify(applied.problem.facts)}`);
    states.set(command.id, applied.value.record);
    if (!applied.value.already) changed += 1;
  }
  return changed;
};

/** The whole farm. */
export const farmAt = (nowMs = NOW_MS, seed?: number): States => {
  const states: States = new Map();
  for (const step of stepsAt(nowMs, ROUND, seed)) applyTo(states, step);
  return states;
};

/** The records of one kind with their bodies. */
export const all = <K extends keyof BodyOf>(
  states: States,
  kind: K,
): { readonly id: RecordId<K>; readonly body: BodyOf[K]; readonly state: RecordState }[] =>
  [...states.values()].flatMap((state) => {
    const body = shown(state)?.body;
    return kindOf(state.id) === kind && body !== undefined
      ? [{ id: state.id as RecordId<K>, body: body as BodyOf[K], state }]
      : [];
  });
