import { afterEach, expect, it, vi } from "vitest";
import { CUES } from "../../../src/device/cue.ts";
import { canSound, switchSoundOn, TONES } from "../../../src/device/sound.ts";
import { canVibrate, VIBRATIONS, vibrateFor } from "../../../src/device/vibrate.ts";

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
