import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { showBadge } from "../../../src/device/badge.ts";
import { openClaims } from "../../../src/device/claims.ts";
import { isInstalled, isIosTab } from "../../../src/device/install.ts";
import { keepScreenOn } from "../../../src/device/screen-on.ts";
import { howToDeliver, saveFile, shareFile } from "../../../src/device/share.ts";
import { bellState, strikeBell, unlockBell } from "../../../src/device/sound.ts";
import { askToKeep, isKept, storageRoom } from "../../../src/device/storage-room.ts";
import { vibrateForDue } from "../../../src/device/vibrate.ts";

const file = new File(["x"], "field.zip", { type: "application/zip" });

beforeEach(() => vi.stubGlobal("navigator", {}));
afterEach(() => vi.unstubAllGlobals());

it("a browser without any of the abilities gets answers, not errors", async () => {
  const states: string[] = [];
  keepScreenOn((state) => states.push(state), new AbortController().signal);
  expect(states).toEqual(["not-here"]);
  expect(await askToKeep()).toBe("not-here");
  expect(await isKept()).toBe("not-here");
  expect(await storageRoom()).toMatchObject({ ok: false, problem: { code: "device/room-unknown" } });
  expect(howToDeliver(file)).toBe("save");
  expect(await shareFile(file)).toMatchObject({ ok: false, problem: { code: "device/share-refused" } });
  expect(saveFile(file)).toMatchObject({ ok: false, problem: { code: "device/save-refused" } });
  expect([isInstalled(), isIosTab()]).toEqual([false, false]);
});

it("a WebKit with a storage manager that cannot persist", async () => {
  vi.stubGlobal("navigator", { storage: { estimate: async () => ({ usage: 5, quota: 10 }) } });
  expect(await askToKeep()).toBe("not-here");
  expect(await storageRoom()).toEqual({ ok: true, value: { usedBytes: 5, quotaBytes: 10 } });
});

it("promises that a browser breaks", async () => {
  const breaks = async () => {
    throw new Error("private window");
  };
  vi.stubGlobal("navigator", { storage: { persist: breaks, persisted: breaks, estimate: breaks } });
  expect([await askToKeep(), await isKept()]).toEqual(["not-kept", "not-kept"]);
  expect((await storageRoom()).ok).toBe(false);
});

it("an iPhone's tab and its installed app", () => {
  vi.stubGlobal("navigator", { standalone: false });
  expect([isInstalled(), isIosTab()]).toEqual([false, true]);
  vi.stubGlobal("navigator", { standalone: true });
  expect([isInstalled(), isIosTab()]).toEqual([true, false]);
});

it("a share sheet that opens, that is closed, and that is refused", async () => {
  const canShare = () => true;
  vi.stubGlobal("navigator", { canShare, share: async () => undefined });
  expect(howToDeliver(file)).toBe("share");
  expect(await shareFile(file)).toEqual({ ok: true, value: "shared" });
  const reject = (name: string) => async () => {
    throw new DOMException("", name);
  };
  vi.stubGlobal("navigator", { canShare, share: reject("AbortError") });
  expect(await shareFile(file)).toEqual({ ok: true, value: "cancelled" });
  vi.stubGlobal("navigator", { canShare, share: reject("NotAllowedError") });
  expect(await shareFile(file)).toMatchObject({ ok: false, problem: { code: "device/share-refused" } });
});

it("an alarm without locks, small store, sound, vibration and badge sounds nothing and breaks nothing", async () => {
  expect(await openClaims(() => true)("a 5")).toBe(true);
  expect(bellState()).toBe("not-here");
  unlockBell();
  await strikeBell();
  expect(vibrateForDue()).toBe(false);
  expect(() => showBadge(1)).not.toThrow();
});

it("a badge that is forbidden harms nothing, and none is taken away by nought", async () => {
  const setAppBadge = vi.fn(() => Promise.reject(new DOMException("", "NotAllowedError")));
  const clearAppBadge = vi.fn(async () => undefined);
  vi.stubGlobal("navigator", { setAppBadge, clearAppBadge });
  showBadge(3);
  showBadge(0);
  await Promise.resolve();
  expect(setAppBadge).toHaveBeenCalledWith(3);
  expect(clearAppBadge).toHaveBeenCalledOnce();
});
