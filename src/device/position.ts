/** Where somebody stands. A position is welcome and never waited for. */
import type { Stood } from "../record/shapes.ts";
import { readClock } from "./clock.ts";

/** One fix as it arrived. */
export interface PositionFix {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Radius in metres as the device gave it: by the W3C text 95 % of fixes lie within, on some phones 68 %. */
  readonly accuracyM: number;
  /** Metres above the ellipsoid, null when not given. */
  readonly altitudeM: number | null;
  /** When the fix was taken, by its own clock. */
  readonly atMs: number;
  /** When it reached this page, by the wall clock. */
  readonly receivedAtMs: number;
  /** Old at arrival, or dated in the future: perhaps taken at another place. Never shown as new. */
  readonly stale: boolean;
}

/** Why there is no position; the words that a record keeps. */
export type PositionProblem = Exclude<Stood["why"], null | "not-asked">;

/** Whether the person was asked before. `unknown` where the browser does not tell. */
export type PositionPermission = "granted" | "denied" | "prompt" | "unknown";

/** No fix within this time: say so and go on. */
export const SLOW_AFTER_MS = 10_000;
/** A fix older than this at arrival is stale. */
export const STALE_AFTER_MS = 10_000;

/** Whether the browser will ask, allows or refuses. Asks nobody, never throws. */
export const positionPermission = async (): Promise<PositionPermission> => {
  if (typeof navigator === "undefined" || !("permissions" in navigator)) return "unknown";
  try {
    return (await navigator.permissions.query({ name: "geolocation" })).state;
  } catch {
    return "unknown";
  }
};

/**
 * A fix from what the browser gave, or null when its numbers cannot be a position.
 *
 * @param given a `GeolocationPosition`
 * @param receivedAtMs wall clock at arrival
 */
export const toFix = (
  given: {
    readonly coords: Pick<GeolocationCoordinates, "latitude" | "longitude" | "accuracy" | "altitude">;
    readonly timestamp: number;
  },
  receivedAtMs: number,
): PositionFix | null => {
  const { latitude, longitude, accuracy, altitude } = given.coords;
  const possible = Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 && accuracy >= 0 && accuracy <= 1e7;
  if (!possible || !Number.isFinite(given.timestamp)) return null;
  // A cached fix from the last field must not mark the start of a line in this one.
  const stale = Math.abs(receivedAtMs - given.timestamp) > STALE_AFTER_MS;
  return {
    latitudeDeg: latitude + 0,
    longitudeDeg: longitude + 0,
    accuracyM: accuracy + 0,
    altitudeM: typeof altitude === "number" && Number.isFinite(altitude) ? altitude + 0 : null,
    atMs: Math.round(given.timestamp),
    receivedAtMs,
    stale,
  };
};

/** What to do with what the watch brings. */
export interface StandingStillWatch {
  onFix(fix: PositionFix): void;
  /** Told once per change. After `slow` and `unavailable` a fix may still come; after `denied` none does. */
  onProblem(problem: PositionProblem): void;
  /** Ends the watch. */
  readonly signal: AbortSignal;
}

/**
 * Watches the position of somebody who stands still. Until the first call of either function the state is
 * "asking". Returns at once, never throws, ends with its signal.
 *
 * @example
 * watchStandingStill({ onFix: (fix) => fixes.push(fix), onProblem: (why) => say(why), signal });
 */
export const watchStandingStill = ({ onFix, onProblem, signal }: StandingStillWatch): void => {
  if (signal.aborted) return;
  const geolocation =
    typeof navigator !== "undefined" && "geolocation" in navigator ? navigator.geolocation : null;
  if (geolocation === null) {
    onProblem("unavailable");
    return;
  }
  let told: PositionProblem | null = null;
  let watch: number | null = null;
  let ended = false;
  const tell = (problem: PositionProblem): void => {
    if (signal.aborted || told === problem || told === "denied") return;
    told = problem;
    onProblem(problem);
  };
  const slow = setTimeout(() => told === null && tell("slow"), SLOW_AFTER_MS);
  const end = (): void => {
    ended = true;
    clearTimeout(slow);
    if (watch !== null) geolocation.clearWatch(watch);
    watch = null;
  };
  const take = (given: GeolocationPosition): void => {
    if (signal.aborted) return;
    const fix = toFix(given, readClock().wallMs);
    if (fix === null) {
      tell("unavailable");
      return;
    }
    // A stale fix does not stop the waiting: what is wanted is where the person stands now.
    if (!fix.stale) {
      clearTimeout(slow);
      told = null;
    }
    onFix(fix);
  };
  const miss = (error: GeolocationPositionError): void => {
    if (error.code === 1) {
      tell("denied");
      end();
    } else tell(error.code === 3 ? "slow" : "unavailable");
  };
  signal.addEventListener("abort", end, { once: true });
  try {
    watch = geolocation.watchPosition(take, miss, { enableHighAccuracy: true, maximumAge: 0 });
    if (ended) end(); // refused before the watch had a number
  } catch {
    tell("unavailable");
    end();
  }
};
