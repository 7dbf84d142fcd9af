/** Sentences for what can go wrong with files, by code. */
export const filesProblemWords: Readonly<Record<string, string>> = {
  "exchange/photo-without-record": "A photo in this file belongs to no record. It was not taken.",
  "exchange/not-a-zip": "This is not a Mulchmark file. Nothing was changed.",
  "exchange/not-ours": "This file was not made by Mulchmark. Nothing was changed.",
  "exchange/from-the-future":
    "This file was made by a newer Mulchmark {app}: it needs version {needs} ({what}), this one knows {knows}. Nothing was changed. Bring Mulchmark up to date, then bring the file in again.",
  "exchange/manifest-not-valid":
    "This file is damaged at its head ({where}). Nothing was changed. Ask for it again.",
  "exchange/damaged": "This file is damaged ({what}). Nothing was changed. Ask for it again.",
  "exchange/unexpected-file":
    "This file holds something that does not belong in it: {file}. Nothing was changed.",
  "exchange/too-large": "This file holds more than a Mulchmark file may ({what}). Nothing was changed.",
  "exchange/encrypted": "This file is locked with a password. Unlock it first. Nothing was changed.",
  "exchange/unknown-packing":
    "This file is packed in a way that Mulchmark does not read. If somebody packed it anew, ask for it as it was. Nothing was changed.",
  "exchange/file-gone":
    "The file could not be read to its end. Is it still where it was? Nothing was changed.",
  "exchange/volume-1-first":
    "This is part {number} of a copy and holds photos only. Bring part 1 in first. Nothing was changed.",
  "exchange/not-json": "This record cannot be read.",
  "exchange/not-staged": "This file does not wait any more. Choose it again.",
  "exchange/stopped": "Stopped. Nothing was changed.",
  "exchange/not-as-written":
    "Reading the copy back gave something else than what was written, so it is no copy. Make it again.",
  "exchange/changed-meanwhile": "Records changed while the copy was made. Make it again.",
  "exchange/record-too-large": "One record is too large for a copy ({id}). No copy was made.",
  "exchange/too-many-records": "There are more records than one copy can hold. No copy was made.",
  "exchange/no-worker":
    "This browser could not start working on the file. Load Mulchmark again, then try again.",
  "exchange/finished": "Bringing in {name} was broken off and is finished now: {new} new, {changed} changed.",
  "device/share-refused": "This device would not send the file. Save it instead.",
  "device/save-refused": "This browser would not take the file. Try again, or free some room first.",
};
