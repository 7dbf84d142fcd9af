/** Undo and redo on the timeline, as far back as the first step since the page was opened. */
import { useRef, useState } from "preact/hooks";
import type { Command } from "../../record/command/command.ts";
import { useHouse } from "../parts/house.ts";

/** Something that was done, and how it is taken back and done again. Commands are signed when they are made. */
export interface Step {
  /** What it was, for the keys: "Harvested, 25 Nov 2026". */
  readonly what: string;
  /** The sentence once it is done. */
  readonly said: string;
  readonly first: () => readonly Command[];
  readonly back: () => readonly Command[];
  readonly again: () => readonly Command[];
}

export interface Steps {
  /** What was said last; null before the first step. */
  readonly said: string | null;
  readonly undo: Step | null;
  readonly redo: Step | null;
  /** Does a step; true once it is written down. */
  readonly take: (step: Step) => Promise<boolean>;
  readonly goBack: () => Promise<void>;
  readonly goOn: () => Promise<void>;
}

interface Stood {
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
  readonly said: string | null;
}

/**
 * @param says how taking back and doing again are said
 */
export const useSteps = (says: {
  readonly takenBack: (what: string) => string;
  readonly doneAgain: (what: string) => string;
}): Steps => {
  const house = useHouse();
  const [stood, setStood] = useState<Stood>({ done: [], undone: [], said: null });
  // Read by a touch that comes before the page was drawn again.
  const now = useRef(stood);
  const stand = (next: Stood) => {
    now.current = next;
    setStood(next);
    if (next.said !== null) house.say(next.said);
  };
  const write = async (commands: readonly Command[]): Promise<boolean> => {
    const written = await house.write(...commands);
    if (!written.ok) house.tell(written.problem);
    return written.ok;
  };
  return {
    said: stood.said,
    undo: stood.done.at(-1) ?? null,
    redo: stood.undone.at(-1) ?? null,
    take: async (step) => {
      if (!(await write(step.first()))) return false;
      stand({ done: [...now.current.done, step], undone: [], said: step.said });
      return true;
    },
    goBack: async () => {
      const step = now.current.done.at(-1);
      if (step === undefined || !(await write(step.back()))) return;
      const { done, undone } = now.current;
      stand({ done: done.slice(0, -1), undone: [...undone, step], said: says.takenBack(step.what) });
    },
    goOn: async () => {
      const step = now.current.undone.at(-1);
      if (step === undefined || !(await write(step.again()))) return;
      const { done, undone } = now.current;
      stand({ done: [...done, step], undone: undone.slice(0, -1), said: says.doneAgain(step.what) });
    },
  };
};
