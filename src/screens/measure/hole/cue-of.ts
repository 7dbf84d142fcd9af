import type { Cue } from "../../../device/cue.ts";
import type { Entry } from "../../../record/entry.ts";
import type { WormGroup } from "../../../record/hole/entries.ts";

/** Each kind of worm is felt and heard differently, so that eyes stay on the pot. */
const GROUP_CUES: Readonly<Record<WormGroup, Cue>> = {
  young: "bare",
  surface: "green",
  topsoil: "stone",
  deep: "own",
};

/** The cue of an entry: worms have their own, everything else feels like a worm into the pot. */
export const cueOf = (entry: Entry): Cue => (entry.type === "placed" ? GROUP_CUES[entry.group] : "residue");
