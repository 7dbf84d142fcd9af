/** Each answer has its own short tone, for those who hear better than they see in the sun. */
import type { Cue } from "./cue.ts";

interface Tone {
  /** Frequencies played one after the other, in hertz. */
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

/** Loudness of a tone, 1 being the most that the loudspeaker gives undistorted. */
const LOUDNESS = 0.4;
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

const playTone = (context: AudioContext, tone: Tone): void => {
  try {
    const noteS = tone.noteMs / 1000;
    tone.pitchesHz.forEach((pitchHz, place) => {
      const startS = context.currentTime + place * noteS;
      const oscillator = new OscillatorNode(context, { type: "triangle", frequency: pitchHz });
      const gain = new GainNode(context, { gain: 0 });
      gain.gain.setValueAtTime(0, startS);
      gain.gain.linearRampToValueAtTime(LOUDNESS, startS + RAMP_S);
      gain.gain.setValueAtTime(LOUDNESS, startS + noteS - RAMP_S);
      gain.gain.linearRampToValueAtTime(0, startS + noteS);
      oscillator.connect(gain).connect(context.destination);
      oscillator.start(startS);
      oscillator.stop(startS + noteS);
    });
  } catch {
    // The context was closed between the look and the tone: a missing tone must not lose an answer.
  }
};
