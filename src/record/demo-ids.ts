/**
 * Ids of the example farm. All of them begin alike, so that it can be taken away by its own ids alone, and
 * left out of copies, whatever somebody measured on it meanwhile.
 */
import { DEMO_MARK, isDemoId } from "./demo-mark.ts";
import { KINDS, type Kind, type RecordId } from "./ids.ts";

/** Which example farm: its edition (what is in it), and the how many-eth bringing in. */
export interface DemoRound {
  /** Raised when what is in the farm changes, so that two editions never mix. */
  readonly edition: number;
  /** An id that was erased never lives again: after a taking away the farm comes with new ids. */
  readonly round: number;
}

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, "0");

const roundText = ({ edition, round }: DemoRound): string => hex(edition, 2) + hex(round, 3);

/** Id of the record that is written down as number `count` of this round. */
export const demoId = <K extends Kind>(kind: K, round: DemoRound, count: number): RecordId<K> =>
  `${kind}-${DEMO_MARK}${roundText(round)}${hex(count, 15)}`;

/** Id of a revision or an entry of this round. */
export const demoShortId = (round: DemoRound, count: number): string =>
  `fa11${roundText(round)}${hex(count, 7)}`;

/** How the ids of the example farm begin, kind by kind. */
export const DEMO_BEGINNINGS: readonly string[] = KINDS.map((kind) => `${kind}-${DEMO_MARK}`);

/** Which edition and round an id of the example farm belongs to. */
export const demoRoundOf = (id: string): DemoRound => {
  const from = id.indexOf("-") + 1 + DEMO_MARK.length;
  return {
    edition: Number.parseInt(id.slice(from, from + 2), 16),
    round: Number.parseInt(id.slice(from + 2, from + 5), 16),
  };
};

const ANY_DEMO_ID = new RegExp(`\\b(?:${KINDS.join("|")})-${DEMO_MARK}[0-9a-f]{20}\\b`, "g");

/** What of the example farm a record speaks of. */
const spokenOf = (bodies: readonly { readonly body: unknown }[]): readonly RecordId[] =>
  bodies.flatMap(({ body }) => JSON.stringify(body).match(ANY_DEMO_ID) ?? []) as RecordId[];

/** A record as far as this has to know it. */
interface Speaking {
  readonly id: RecordId;
  readonly revs: readonly { readonly body: unknown }[];
}

/**
 * Finds out what a person's own records rest on: a line that was counted on the example farm with its rope
 * would say nothing any more without that rope.
 *
 * @example
 * const resting = restingOnDemo();
 * for (const record of all) resting.add(record);
 * resting.needed(); // ids of the example farm that have to stay
 */
export const restingOnDemo = () => {
  const spokenBy = new Map<RecordId, readonly RecordId[]>();
  const own = new Set<RecordId>();
  const wanted = new Set<RecordId>();
  return {
    /** Takes note of one record; deleted ones too, because they can be brought back. */
    add: ({ id, revs }: Speaking): void => {
      const spoken = spokenOf(revs);
      if (isDemoId(id)) spokenBy.set(id, spoken);
      else if (spoken.length > 0) {
        own.add(id);
        for (const one of spoken) wanted.add(one);
      }
    },
    /** Records of one's own that rest on the example farm. */
    own: (): ReadonlySet<RecordId> => own,
    /** All that they rest on, and what that rests on in turn. */
    needed: (): ReadonlySet<RecordId> => {
      const needed = new Set(wanted);
      // A set that grows while it is walked through is walked through to its new end.
      for (const id of needed) for (const one of spokenBy.get(id) ?? []) needed.add(one);
      return needed;
    },
  };
};
