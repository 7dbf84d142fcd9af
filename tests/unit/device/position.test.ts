import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import {
  accuracyMeansOn,
  positionPermission,
  toFix,
  watchStandingStill,
} from "../../../src/device/position.ts";

const given = (change: Record<string, number | null> = {}, timestamp = 1_000_000) => ({
  coords: { latitude: 52.1, longitude: -1.3, accuracy: 4, altitude: 80, ...change } as GeolocationCoordinates,
  timestamp,
});
describe("a fix", () => {
  it("keeps what the device gave", () => {
    expect(toFix(given(), 1_000_200, "68-percent")).toEqual({
      latitudeDeg: 52.1,
      longitudeDeg: -1.3,
      accuracyM: 4,
      accuracyMeans: "68-percent",
      altitudeM: 80,
      atMs: 1_000_000,
      receivedAtMs: 1_000_200,
      stale: false,
    });
  });

  it("is stale when older than ten seconds at arrival, or from the future", () => {
    expect(toFix(given(), 1_010_000, "68-percent")?.stale).toBe(false);
    expect(toFix(given(), 1_010_001, "68-percent")?.stale).toBe(true);
    expect(toFix(given(), 989_999, "68-percent")?.stale).toBe(true);
  });

  it.each([
    { latitude: 91 },
    { longitude: Number.NaN },
    { accuracy: -1 },
    { accuracy: Number.POSITIVE_INFINITY },
  ])("that cannot be is none: %j", (change) => {
    expect(toFix(given(change), 1_000_000, "68-percent")).toBeNull();
  });

  it("may lack an altitude", () => {
    expect(toFix(given({ altitude: null }), 1_000_000, "68-percent")?.altitudeM).toBeNull();
  });
});

describe("what a stated radius stands for", () => {
  // Forms of user agents as browsers publish them, from memory.
  const onPhone =
    "Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Mobile Safari/537.36";

  it("is 68 % on Android, whose location reference says so", () => {
    expect(accuracyMeansOn({ userAgent: onPhone })).toBe("68-percent");
    expect(accuracyMeansOn({ userAgent: "", userAgentData: { platform: "Android" } })).toBe("68-percent");
    const firefox = "Mozilla/5.0 (Android 15; Mobile; rv:140.0) Gecko/140.0 Firefox/140.0";
    expect(accuracyMeansOn({ userAgent: firefox })).toBe("68-percent");
  });

  it.each([
    "Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1",
    "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Safari/537.36",
    "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0",
    "",
  ])("is not known where no documentation says it: %s", (userAgent) => {
    expect(accuracyMeansOn({ userAgent })).toBe("not-known");
  });
});

describe("the watch", () => {
  let succeed: (fix: GeolocationPosition) => void = () => undefined;
  let fail: (error: { code: number }) => void = () => undefined;
  const clearWatch = vi.fn();
  const watchPosition = vi.fn((onFix: typeof succeed, onError: typeof fail) => {
    succeed = onFix;
    fail = onError;
    return 7;
  });
  const start = () => {
    const heard: string[] = [];
    const stop = new AbortController();
    watchStandingStill({
      onFix: (one) => heard.push(one.stale ? "stale" : "fix"),
      onProblem: (problem) => heard.push(problem),
      signal: stop.signal,
    });
    return { heard, stop };
  };
  const arrives = (ageMs = 0) => succeed(given({}, Date.now() - ageMs) as GeolocationPosition);

  beforeEach(() => {
    vi.useFakeTimers();
    vi.clearAllMocks();
    vi.stubGlobal("navigator", { geolocation: { watchPosition, clearWatch } });
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it("asks for the best position and for no old one", () => {
    start();
    expect(watchPosition.mock.calls[0]).toContainEqual({ enableHighAccuracy: true, maximumAge: 0 });
  });

  it("says slow after ten seconds, once, and still takes what comes", () => {
    const { heard } = start();
    vi.advanceTimersByTime(9_999);
    expect(heard).toEqual([]);
    vi.advanceTimersByTime(60_000);
    arrives();
    expect(heard).toEqual(["slow", "fix"]);
  });

  it("is not slow once a fix came, but a stale fix does not count as one", () => {
    const quick = start();
    arrives();
    vi.advanceTimersByTime(20_000);
    expect(quick.heard).toEqual(["fix"]);
    const old = start();
    arrives(60_000);
    vi.advanceTimersByTime(20_000);
    expect(old.heard).toEqual(["stale", "slow"]);
  });

  it("ends when refused, and says so once", () => {
    const { heard } = start();
    fail({ code: 1 });
    fail({ code: 2 });
    vi.advanceTimersByTime(20_000);
    expect(heard).toEqual(["denied"]);
    expect(clearWatch).toHaveBeenCalledWith(7);
  });

  it("tells each problem once, and again after a fix", () => {
    const { heard } = start();
    fail({ code: 2 });
    fail({ code: 2 });
    fail({ code: 3 });
    arrives();
    fail({ code: 2 });
    expect(heard).toEqual(["unavailable", "slow", "fix", "unavailable"]);
  });

  it("is silent after its end", () => {
    const { heard, stop } = start();
    stop.abort();
    arrives();
    fail({ code: 1 });
    vi.advanceTimersByTime(20_000);
    expect(heard).toEqual([]);
    expect(clearWatch).toHaveBeenCalledTimes(1);
    expect(vi.getTimerCount()).toBe(0);
  });

  it("says unavailable where there is no such thing, or where it throws", async () => {
    vi.stubGlobal("navigator", {});
    expect(start().heard).toEqual(["unavailable"]);
    expect(await positionPermission()).toBe("unknown");
    vi.stubGlobal("navigator", {
      geolocation: {
        clearWatch,
        watchPosition: () => {
          throw new Error("blocked by policy");
        },
      },
    });
    expect(start().heard).toEqual(["unavailable"]);
  });
});
