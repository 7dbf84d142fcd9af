/** Words of photos: taking them, refusing them in plain words, looking at them. */
import { plural, writeNumber } from "../numbers.ts";
import { TONGUE } from "../words.common.ts";
import type { WordsOf } from "../words-of.ts";

const english = () => ({
  photos: {
    take: "Take a photo",
    choose: "Choose a picture",
    hint: "It is made smaller for this device. The position that a camera writes into a picture is left out.",
    making: "Making the photo smaller …",
    makingOf: (number: number, of: number) =>
      `Making photo ${writeNumber(number, TONGUE)} of ${writeNumber(of, TONGUE)} smaller …`,
    kept: (count: number) =>
      `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "photo", other: "photos" })} kept.`,
    again: "This picture is here already.",
    plain:
      "This photo is all of one shade. Look at it before you go on, and take it again if it should show something.",
    title: "Photos",
    count: (count: number) =>
      `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "photo", other: "photos" })}`,
    alt: (number: number, of: number, taken: string) =>
      `Photo ${writeNumber(number, TONGUE)} of ${writeNumber(of, TONGUE)}, ${taken}`,
    taken: (day: string, clock: string) => `${day}, ${clock}`,
    opening: "Opening the picture …",
    missing: "The picture is not on this device. It may lie in another part of the copy that was brought in.",
    more: (count: number) => `Show ${writeNumber(count, TONGUE)} more`,
    delete: "Delete this photo",
    deleteAsk: "Delete this photo?",
    deleteHint: "It can be brought back for 30 days.",
    deleted: "Photo deleted.",
    back: "Photo is back.",
    none: "No photo of this field yet.",
    /** What a photo is of, where photos of a whole field or day stand together. */
    of: {
      line: (strip: string) => `Line, ${strip}`,
      ring: (strip: string) => `Ring, ${strip}`,
      hole: (strip: string) => `Hole, ${strip}`,
      note: "Note without words",
      spot: (name: string) => `Marked spot: ${name}`,
    },
  },
  /** Why a picture was not kept, by code. */
  problems: {
    "device/not-a-picture": "This file is no picture that this browser can open. It was not kept.",
    "device/picture-heif":
      "This picture is in the HEIC format, which this browser cannot open. Take it with the camera key here, or set the phone's camera to its most compatible format (JPEG).",
    "device/picture-too-large":
      "This picture is too large for this device ({is}; {most} at most). Take it with the camera's usual size.",
    "device/picture-unreadable": "The file could not be read. Is it still where it was?",
    "device/picture-not-made":
      "This browser could not make the picture smaller, and it was not kept. Close other apps and try again.",
  } satisfies Readonly<Record<string, string>>,
});

export const PHOTO_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
