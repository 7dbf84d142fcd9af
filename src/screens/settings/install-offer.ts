/** The browser's offer to install, which comes once and early, kept until somebody looks at Settings. */
import { type Signal, signal } from "@preact/signals";
import type { InstallOffer } from "../../device/install.ts";

/** The offer, or null when there is none. The app fills it at its very start from `watchInstallOffer`. */
export const installOffer: Signal<InstallOffer | null> = signal(null);
