/** Which errors of the database are expected. Every other one is a bug and is thrown on. */

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : "");

// A closed connection gives InvalidStateError, a lost database process UnknownError, and a transaction
// that the browser ended by itself AbortError.
const GONE: ReadonlySet<string> = new Set(["InvalidStateError", "UnknownError", "AbortError"]);

/** Has the connection to the database been lost? Opening it again may help. */
export const isGone = (error: unknown): boolean => GONE.has(nameOf(error));

/** Is the device or the share of this app full? */
export const isQuota = (error: unknown): boolean => nameOf(error) === "QuotaExceededError";

/** Does the database have a higher version than this app knows? */
export const isFromTheFuture = (error: unknown): boolean => nameOf(error) === "VersionError";
