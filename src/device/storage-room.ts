/** Room on the device, and whether the browser promises not to clear it away. */
import { failed, ok, type Result } from "../record/result.ts";

/**
 * `kept`: the browser will not clear the records away by itself. `not-kept`: it may, when room is short.
 * `not-here`: this browser makes no such promise.
 */
export type Keeping = "kept" | "not-kept" | "not-here";

/** Room as the browser estimates it. */
export interface StorageRoom {
  readonly usedBytes: number;
  /** The most that this app may use; an estimate that the browser rounds and may not be able to keep. */
  readonly quotaBytes: number;
}

// Missing outside https and in WebKit builds without these calls, whatever the typings say.
const storageManager = (): Partial<StorageManager> | null =>
  typeof navigator !== "undefined" && "storage" in navigator ? navigator.storage : null;

const keeping = async (question: "persist" | "persisted"): Promise<Keeping> => {
  const manager = storageManager();
  if (manager === null || typeof manager[question] !== "function") return "not-here";
  try {
    return (await manager[question]()) ? "kept" : "not-kept";
  } catch {
    return "not-kept";
  }
};

/**
 * Asks the browser to keep the records. Ask after the first real save and out of a touch: asked at the
 * start, some browsers refuse, and Firefox puts a question before a person who has nothing to keep yet.
 *
 * @example
 * if ((await askToKeep()) !== "kept") remindOfBackup();
 */
export const askToKeep = (): Promise<Keeping> => keeping("persist");

/** Whether the records are kept already. Asks nobody. */
export const isKept = (): Promise<Keeping> => keeping("persisted");

/**
 * How much room is used and allowed.
 *
 * @returns `device/room-unknown` when the browser does not say
 */
export const storageRoom = async (): Promise<Result<StorageRoom>> => {
  const manager = storageManager();
  if (manager === null || typeof manager.estimate !== "function") return failed("device/room-unknown");
  try {
    const { usage, quota } = await manager.estimate();
    if (usage === undefined || quota === undefined) return failed("device/room-unknown");
    return ok({ usedBytes: usage, quotaBytes: quota });
  } catch {
    return failed("device/room-unknown");
  }
};
