/** Tells every window and worker which records changed. Ids only: whoever shows one reads it again. */
import type { RecordId } from "../record/ids.ts";

/** Ids of records that were written; `everything` after a time in which messages may have been missed. */
export type Changed = readonly RecordId[] | "everything";
export type ChangeListener = (changed: Changed) => void;

/** The channel between windows and workers of this app. */
export interface Changes {
  /** Tells all listeners here and everywhere else. */
  readonly announce: (changed: Changed) => void;
  /** Tells the listeners here alone. */
  readonly announceHere: (changed: Changed) => void;
  /** @returns ends the subscription */
  readonly subscribe: (listener: ChangeListener) => () => void;
  readonly close: () => void;
  readonly reopen: () => void;
}

/** Opens the channel. */
export const openChanges = (name: string): Changes => {
  const listeners = new Set<ChangeListener>();
  let channel: BroadcastChannel | undefined;
  const announceHere = (changed: Changed): void => {
    for (const listener of [...listeners]) listener(changed);
  };
  const reopen = (): void => {
    channel?.close();
    channel = new BroadcastChannel(`${name}-changes`);
    channel.onmessage = ({ data }: MessageEvent<Changed>) => announceHere(data);
  };
  reopen();
  return {
    announceHere,
    announce: (changed) => {
      channel?.postMessage(changed);
      announceHere(changed);
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: () => {
      channel?.close();
      channel = undefined;
    },
    reopen,
  };
};
