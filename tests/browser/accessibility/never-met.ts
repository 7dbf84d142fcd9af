/** Classes with a look of their own that stand on nothing in any state, or for a moment only, and why. */
export const NEVER_MET: Readonly<Record<string, string>> = {
  progress: "stands while a file is made or read",
  "demo-progress": "stands while the example farm is brought in",
  "goes-on": "stands only past midnight, which comes by the zone of the clock; it is a heading with a key",
  "room-waits": "an empty place while the browser is asked how much room there is",
};
