/** Each answer has its own short tone, for those who hear better than they see in the sun; and the alarm. */
import type { Cue } from "./cue.ts";

interface Tone {
  /** Frequencies played one after the other, in hertz; 0 is a pause. */
  readonly pitchesHz: readonly number[];
  readonly noteMs: number;
}

/**
 * Between 400 and 1400 Hz, which small loudspeakers give loudest; told apart by pitch, by number of
 * notes and by rising or falling. Own choice, no source.
 */
export const TONES: Readonly<Record<Cue, Tone>> = {
  residue: { pitchesHz: [660], noteMs: 80 },
  bare: { pitchesHz: [440], noteMs: 160 },
  green: { pitchesHz: [880, 1175], noteMs: 70 },
  stone: { pitchesHz: [1320, 1320], noteMs: 60 },
  own: { pitchesHz: [660, 440], noteMs: 80 },
  undo: { pitchesHz: [880, 660, 440], noteMs: 60 },
  problem: { pitchesHz: [440, 415, 440, 415], noteMs: 120 },
};

/** The alarm of a reading that is due: three calls in about two seconds, each of two notes. Own choice. */
export const DUE_TONE: Tone = {
  pitchesHz: [988, 1319, 988, 1319, 0, 988, 1319, 988, 1319, 0, 988, 1319, 988, 1319],
  noteMs: 140,
};

/** Loudness of a tone, 1 being the most that the loudspeaker gives undistorted. */
const LOUDNESS = 0.4;
/** The alarm has to be heard over wind and from a few steps away. */
const DUE_LOUDNESS = 0.9;
/** Time to swell and to fade, in seconds; without it every tone begins and ends with a crack. */
const RAMP_S = 0.008;

/** A loudspeaker that was switched on. */
export interface Loudspeaker {
  /** Plays the tone of one answer now, or nothing. */
  play(cue: Cue): void;
}

/** Whether this browser can make tones. */
export const canSound = (): boolean => typeof AudioContext === "function";

/**
 * Switches the tones on until `signal` ends them. Browsers keep a page silent until somebody touches it,
 * and iPhones silence it again after a phone call: so every touch and key wakes the loudspeaker anew.
 * Call it only when the setting is on.
 *
 * @returns a loudspeaker; one that stays silent where the browser has none
 * @example
 * const loudspeaker = switchSoundOn(signal);
 * loudspeaker.play("residue");
 */
export const switchSoundOn = (signal: AbortSignal): Loudspeaker => {
  const context = signal.aborted ? null : newContext();
  if (context === null) return { play: () => undefined };

  const wake = (): void => {
    if (context.state !== "running" && context.state !== "closed") context.resume().catch(() => undefined);
  };
  document.addEventListener("pointerup", wake, { signal, capture: true, passive: true });
  document.addEventListener("keydown", wake, { signal, capture: true, passive: true });
  signal.addEventListener("abort", () => context.close().catch(() => undefined), { once: true });

  return {
    play: (cue) => {
      // A tone that waits for the loudspeaker would sound at a later answer and tell the wrong thing.
      if (context.state !== "running") wake();
      else playTone(context, TONES[cue]);
    },
  };
};

const newContext = (): AudioContext | null => {
  if (!canSound()) return null;
  try {
    return new AudioContext({ latencyHint: "interactive" });
  } catch {
    return null; // too many open, or no sound hardware
  }
};

/** One oscillator for all notes: each node more is work for the page before and after it sounds. */
const playTone = (context: AudioContext, tone: Tone, loudness = LOUDNESS): void => {
  try {
    const noteS = tone.noteMs / 1000;
    const beginS = context.currentTime;
    const oscillator = new OscillatorNode(context, { type: "triangle" });
    const gain = new GainNode(context, { gain: 0 });
    tone.pitchesHz.forEach((pitchHz, place) => {
      if (pitchHz === 0) return;
      const startS = beginS + place * noteS;
      oscillator.frequency.setValueAtTime(pitchHz, startS);
      gain.gain.setValueAtTime(0, startS);
      gain.gain.linearRampToValueAtTime(loudness, startS + RAMP_S);
      gain.gain.setValueAtTime(loudness, startS + noteS - RAMP_S);
      gain.gain.linearRampToValueAtTime(0, startS + noteS);
    });
    oscillator.connect(gain).connect(context.destination);
    oscillator.start(beginS);
    oscillator.stop(beginS + tone.pitchesHz.length * noteS);
  } catch {
    // The context was closed between the look and the tone: a missing tone must not lose an answer.
  }
};

/** A tone that could only be played this much later, in milliseconds, is not played. */
const STALE_MS = 1000;

/** One for the page: it sleeps between two alarms, since one that is awake keeps the phone from resting. */
let bell: AudioContext | null = null;
/** What became of the last attempt to wake it; null before the first. */
let woken: boolean | null = null;
let strikes = 0;

/**
 * Whether the alarm would be heard: `needs-touch` before the first touch on the page, and on an iPhone after
 * a phone call; `not-here` where the browser makes no tones.
 */
export const bellState = (): "ready" | "needs-touch" | "not-here" => {
  if (!canSound()) return "not-here";
  return (woken ?? navigator.userActivation?.hasBeenActive === true) ? "ready" : "needs-touch";
};

/** Wakes the bell. False when the browser has not let it within a second: it is silent until a touch. */
const wakeBell = async (): Promise<AudioContext | null> => {
  bell ??= newContext();
  if (bell === null) return null;
  if (bell.state === "running") {
    woken = true;
    return bell;
  }
  const tooLate = new Promise<false>((resolve) => setTimeout(() => resolve(false), STALE_MS));
  // A page that may not sound gets no answer at all.
  woken = await Promise.race([bell.resume().then(() => true), tooLate]).catch(() => false);
  return woken ? bell : null;
};

const rest = (): void => {
  if (bell?.state === "running") bell.suspend().catch(() => undefined);
};

const unlock = (): void => {
  const before = strikes;
  void wakeBell().then(() => strikes === before && rest());
};

/**
 * Lets the alarm be heard later on. Call it straight from a touch, such as the one that starts the first
 * ring: browsers keep a page silent until then.
 */
export const unlockBell = (): void => {
  if (woken === true || !canSound()) return;
  // Making a loudspeaker holds a slow phone up by more than a tenth of a second. Browsers that tell when they
  // are idle let a page sound that was touched before; iPhones want it made in the touch itself.
  if (woken === null && typeof requestIdleCallback === "function") requestIdleCallback(unlock);
  else unlock();
};

/** Lets every touch and key unlock the alarm, until `signal` ends it. */
export const unlockBellByTouch = (signal: AbortSignal): void => {
  if (typeof document === "undefined") return;
  document.addEventListener("pointerup", unlockBell, { signal, capture: true, passive: true });
  document.addEventListener("keydown", unlockBell, { signal, capture: true, passive: true });
};

/** Sounds the alarm now; silent where the page may not sound, and then `bellState` says so. */
export const strikeBell = async (): Promise<void> => {
  strikes += 1;
  const mine = strikes;
  const heard = await wakeBell();
  if (heard === null) return;
  playTone(heard, DUE_TONE, DUE_LOUDNESS);
  const endMs = DUE_TONE.pitchesHz.length * DUE_TONE.noteMs + STALE_MS;
  setTimeout(() => {
    // Else the end of one alarm would cut off the next.
    if (mine === strikes) rest();
  }, endMs);
};
