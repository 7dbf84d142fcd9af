import type { Kind } from "../../record/ids.ts";

/** What kinds of record are called; bars say it before any screen of records is open. */
export const kindWords = () => ({
  records: {
    kinds: {
      person: "person",
      farm: "farm",
      field: "field",
      strip: "strip",
      spot: "marked spot",
      kit: "kit",
      visit: "visit",
      observation: "measurement",
      photo: "photo",
      event: "timeline entry",
      rain: "rain reading",
      guess: "guess",
      earlier: "earlier result (paper)",
      join: "same thing",
    } satisfies Record<Kind, string>,
  },
});
