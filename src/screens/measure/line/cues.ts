/** What a touch is felt and heard as. */
import type { Cue } from "../../../device/cue.ts";
import { type Loudspeaker, switchSoundOn } from "../../../device/sound.ts";
import { vibrateFor } from "../../../device/vibrate.ts";
import type { Entry } from "../../../record/entry.ts";
import type { Settings } from "../../parts/settings.ts";

let loudspeaker: Loudspeaker | null = null;

/** The cue of an entry: marks have their own, everything else feels like residue. */
export const answerCue = (entry: Entry): Cue => (entry.type === "mark" ? entry.cover : "residue");

/** Vibrates and sounds as the settings allow. Sound starts at the first touch after it was switched on. */
export const cue = (settings: Settings, what: Cue): void => {
  if (settings.vibrate) vibrateFor(what);
  if (!settings.sound) return;
  loudspeaker ??= switchSoundOn(new AbortController().signal);
  loudspeaker.play(what);
};
