/** Words for what could not be written down; they come with the code that needs them. */
export const UNSAVED_WORDS = {
  en: {
    nextMark: (what: string) => `next mark: ${what}`,
    endsHere: "the line ends there",
    oneWorm: "one worm",
    oneWormPlaced: "one worm placed",
    reading: (what: string) => (what === "" ? "one reading" : `reading: ${what}`),
    toDelete: (kind: string) => `${kind} to be deleted`,
    toRestore: (kind: string) => `${kind} to be brought back`,
    toForget: (kind: string) => `${kind} to be forgotten`,
  },
};
