/** Small values that the app keeps beside the records. */
import type { Json } from "../record/canonical.ts";
import type { MetaKey } from "../store/meta.ts";

const text = (stored: Json): string | undefined => (typeof stored === "string" ? stored : undefined);

/** Label of this installation; made here and never taken from a file. */
export const DEVICE: MetaKey<string> = { name: "device", durability: "strict", read: text };

/** Address of the screen that was open last. */
export const WHERE: MetaKey<string> = { name: "where", durability: "relaxed", read: text };

/** Versions of the science, and what was asked of it, by which the results of the fields were worked out last. */
export const WORKED_OUT_BY: MetaKey<string> = { name: "worked-out-by", durability: "relaxed", read: text };
