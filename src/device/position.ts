/** Where somebody stands. A position is welcome and never waited for. */
import type { AccuracyMeans, Stood } from "../record/shapes.ts";
import { readClock } from "./clock.ts";

/** One fix as it arrived. */
export interface PositionFix {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Radius in metres as the device gave it. */
  readonly accuracyM: number;
  /** What that radius stands for on this device. */
  readonly accuracyMeans: AccuracyMeans;
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
/** No new fix for this long after one: it says where somebody stood then, not where they stand. */
export const LOST_AFTER_MS = 30_000;

/** Two fixes this far apart, whose own clock went on like ours to within the limit, are both taken live. */
const IN_STEP_AFTER_MS = 3000;
const IN_STEP_LIMIT_MS = 2000;
/** Fixes kept for that comparison. */
const IN_STEP_AMONG = 60;

/** Whether the browser will ask, allows or refuses. Asks nobody, never throws. */
export const positionPermission = async (): Promise<PositionPermission> => {
  if (typeof navigator === "undefined" || !("permissions" in navigator)) return "unknown";
  try {
    return (await navigator.permissions.query({ name: "geolocation" })).state;
  } catch {
    return "unknown";
  }
};

interface Platform {
  readonly userAgent: string;
  /** Chromium alone has it. */
  readonly userAgentData?: { readonly platform?: string };
}

/**
 * What the radius of a fix stands for on this device, as far as somebody answers for it. The W3C text wants a
 * 95 % radius, but browsers hand through what the system below them says:
 *
 * - Android: `Location.getAccuracy()` is a 68 % radius (Android reference, `android.location.Location`, published).
 *   Chromium hands it through unchanged (its `LocationProviderAdapter`, published source), and so does Firefox
 *   (`GeckoAppShell`, from memory).
 * - Apple: `CLLocation.horizontalAccuracy` is "the radius of uncertainty" without a share (Core Location reference,
 *   published). An answer in Apple's forum for developers speaks of 63 to 68 % (thread 699996, published); that is
 *   no documentation, and nothing promises it for later systems.
 * - Windows: `ILatLongReport.GetErrorRadius` is the circle in which the place "is probably located" (Win32
 *   reference, published): no share.
 * - Desktop browsers that ask a service by wireless networks: the radius comes without a share (from memory).
 *
 * No browser is known to keep to 95 %. Android that hides behind the user agent of a computer is not known.
 *
 * @param platform a `Navigator`
 *
 * @example
 * accuracyMeansOn({ userAgent: "Mozilla/5.0 (Android 15; Mobile; rv:140.0) Gecko/140.0 Firefox/140.0" }) // "68-percent"
 */
export const accuracyMeansOn = ({ userAgent, userAgentData }: Platform): AccuracyMeans =>
  userAgentData?.platform === "Android" || /\bAndroid\b/.test(userAgent) ? "68-percent" : "not-known";

/**
 * A fix from what the browser gave, or null when its numbers cannot be a position.
 *
 * @param given a `GeolocationPosition`
 * @param receivedAtMs wall clock at arrival
 * @param accuracyMeans what radii stand for on this device
 */
export const toFix = (
  given: {
    readonly coords: Pick<GeolocationCoordinates, "latitude" | "longitude" | "accuracy" | "altitude">;
    readonly timestamp: number;
  },
  receivedAtMs: number,
  accuracyMeans: AccuracyMeans,
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
    accuracyMeans,
    altitudeM: typeof altitude === "number" && Number.isFinite(altitude) ? altitude + 0 : null,
    atMs: Math.round(given.timestamp),
    receivedAtMs,
    stale,
  };
};

/**
 * Tells live fixes from old ones when the device's clock and the clock of the fixes disagree: positions from
 * the sky carry the true time, and on a device whose clock was set a minute wrong every one of them would
 * be taken for old. Old fixes are handed out at once, live ones come as time goes by.
 *
 * @returns a function that takes when a fix was taken and when it arrived on our monotonic clock, and says
 * whether it is live
 */
export const inStep = (): ((atMs: number, monoMs: number) => boolean) => {
  let before: readonly { readonly atMs: number; readonly monoMs: number }[] = [];
  return (atMs, monoMs) => {
    const live = before.some((one) => {
      const passedMs = monoMs - one.monoMs;
      return passedMs >= IN_STEP_AFTER_MS && Math.abs(atMs - one.atMs - passedMs) <= IN_STEP_LIMIT_MS;
    });
    before = [...before, { atMs, monoMs }].slice(-IN_STEP_AMONG);
    return live;
  };
};

/** What to do with what the watch brings. */
export interface StandingStillWatch {
  onFix(fix: PositionFix): void;
  /**
   * Told once per change. After `slow` and `unavailable` a fix may still come; after `denied` none does.
   * `slow` comes also when there were fixes and no new one follows: what was known is then old.
   */
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
  const isLive = inStep();
  const accuracyMeans = accuracyMeansOn(navigator);
  const tell = (problem: PositionProblem): void => {
    if (signal.aborted || told === problem || told === "denied") return;
    told = problem;
    onProblem(problem);
  };
  const sayIfSilent = (): void => {
    if (told === null) tell("slow");
  };
  let silence = setTimeout(sayIfSilent, SLOW_AFTER_MS);
  const end = (): void => {
    ended = true;
    clearTimeout(silence);
    if (watch !== null) geolocation.clearWatch(watch);
    watch = null;
  };
  const take = (given: GeolocationPosition): void => {
    if (signal.aborted) return;
    const { wallMs, monoMs } = readClock();
    const fix = toFix(given, wallMs, accuracyMeans);
    if (fix === null) {
      tell("unavailable");
      return;
    }
    const stale = !isLive(fix.atMs, monoMs) && fix.stale;
    // A stale fix does not stop the waiting: what is wanted is where the person stands now.
    if (!stale) {
      clearTimeout(silence);
      silence = setTimeout(askAnew, SLOW_AFTER_MS);
      told = null;
    }
    onFix({ ...fix, stale });
  };
  const miss = (error: GeolocationPositionError): void => {
    if (error.code === 1) {
      tell("denied");
      end();
    } else tell(error.code === 3 ? "slow" : "unavailable");
  };
  const begin = (): void => {
    try {
      watch = geolocation.watchPosition(take, miss, { enableHighAccuracy: true, maximumAge: 0 });
      if (ended) end(); // refused before the watch had a number
    } catch {
      tell("unavailable");
      end();
    }
  };
  // Some devices speak only when they are moved. A new watch has to answer, so its silence means something;
  // but it is begun only where that asks the person nothing.
  const askAnew = (): void => {
    silence = setTimeout(sayIfSilent, LOST_AFTER_MS - SLOW_AFTER_MS);
    void positionPermission().then((permission) => {
      if (ended || permission !== "granted") return;
      if (watch !== null) geolocation.clearWatch(watch);
      begin();
    });
  };
  signal.addEventListener("abort", end, { once: true });
  begin();
};
