import { afterEach, expect, it, vi } from "vitest";
import { ONE_RINGING_MS } from "../../../src/device/alarm.ts";
import { CUES } from "../../../src/device/cue.ts";
import { canSound, DUE_TONE, switchSoundOn, TONES } from "../../../src/device/sound.ts";
import { canVibrate, DUE_VIBRATION, VIBRATIONS, vibrateFor } from "../../../src/device/vibrate.ts";

afterEach(() => vi.unstubAllGlobals());

it("no two cues feel or sound the same", () => {
  expect(new Set(CUES.map((cue) => VIBRATIONS[cue].join())).size).toBe(CUES.length);
  expect(new Set(CUES.map((cue) => JSON.stringify(TONES[cue]))).size).toBe(CUES.length);
});

it("the cue of every answer is over before the next touch of a fast counter", () => {
  for (const cue of CUES.filter((one) => one !== "problem")) {
    expect(VIBRATIONS[cue].reduce((sum, ms) => sum + ms, 0)).toBeLessThanOrEqual(250);
    expect(TONES[cue].pitchesHz.length * TONES[cue].noteMs).toBeLessThanOrEqual(250);
  }
});

it("no answer feels or sounds like the alarm, which lasts about two seconds", () => {
  for (const cue of CUES) {
    expect(VIBRATIONS[cue].join()).not.toBe(DUE_VIBRATION.join());
    expect(TONES[cue].pitchesHz.length).toBeLessThan(DUE_TONE.pitchesHz.length);
  }
  const lastsMs = DUE_TONE.pitchesHz.length * DUE_TONE.noteMs;
  expect(lastsMs).toBeGreaterThan(1500);
  expect(lastsMs).toBeLessThanOrEqual(ONE_RINGING_MS);
});

it("a device that can do neither is left in peace", () => {
  vi.stubGlobal("navigator", {});
  expect(canVibrate()).toBe(false);
  expect(vibrateFor("bare")).toBe(false);
  expect(canSound()).toBe(false);
  expect(() => switchSoundOn(new AbortController().signal).play("bare")).not.toThrow();
});

it("a phone that throws instead of vibrating harms nothing", () => {
  vi.stubGlobal("navigator", {
    vibrate: () => {
      throw new Error("blocked");
    },
  });
  expect(vibrateFor("bare")).toBe(false);
});

it("a phone that vibrates gets the pattern of the answer", () => {
  const vibrate = vi.fn(() => true);
  vi.stubGlobal("navigator", { vibrate });
  expect(vibrateFor("stone")).toBe(true);
  expect(vibrate).toHaveBeenCalledWith([...VIBRATIONS.stone]);
});
