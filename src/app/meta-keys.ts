/** Small values that the app keeps beside the records. */
import type { Json } from "../record/canonical.ts";
import type { Settings } from "../screens/parts/settings.ts";
import type { MetaKey } from "../store/meta.ts";

const text = (stored: Json): string | undefined => (typeof stored === "string" ? stored : undefined);

/** Label of this installation; made here and never taken from a file. */
export const DEVICE: MetaKey<string> = { name: "device", durability: "strict", read: text };

/** Address of the screen that was open last. */
export const WHERE: MetaKey<string> = { name: "where", durability: "relaxed", read: text };

type StoredSettings = Partial<Settings> & { readonly [key: string]: Json };

/** What the person chose; a value that an older app did not have is taken from the first settings. */
export const SETTINGS: MetaKey<StoredSettings> = {
  name: "settings",
  durability: "relaxed",
  read: (stored) =>
    typeof stored === "object" && stored !== null && !Array.isArray(stored)
      ? (stored as StoredSettings)
      : undefined,
};
