/** Words of the bars above the screens, and of what stands there when the records cannot be opened. */
export const barWords = () => ({
  bars: {
    busy: "Another window is busy with the records. What you touched waits and is not lost.",
    full: "This device has no room left. Readings are still taken; photos are not.",
    newer: "A newer Mulchmark is open in another window. Load this window again to go on.",
    blocked: "Another window still runs an older Mulchmark. Close it to go on.",
    changed: "Mulchmark was brought up to date in another window. Load this window again when it suits you.",
    chunk: "A part of Mulchmark is not on this device any more. Load this window again; nothing is lost.",
    update: "A newer Mulchmark is ready. Nothing will be lost.",
    take: "Take it",
    taking: "The newer Mulchmark is being taken. This window is loaded again in a moment.",
    load: "Load again",
    gone: "The records cannot be reached, and loading again has not helped. These values are not saved yet: write them down.",
    refused:
      "Something that you entered before this window was loaded again could not be kept. Look whether your last touches are there.",
    close: "Close",
  },
  closed: {
    title: "The records cannot be opened",
    future:
      "They were made by a newer Mulchmark: this one knows version {knows}, they need version {has}. Nothing was changed. Bring Mulchmark up to date, then open it again.",
    other: "Nothing was changed. Close other windows of Mulchmark and load this one again.",
    load: "Load again",
  },
});
