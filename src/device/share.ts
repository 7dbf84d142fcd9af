/** Handing a finished file to somebody, or putting it on the device. */
import { failed, ok, type Result } from "../record/result.ts";

/**
 * Which of the two this browser allows for this file. Only `canShare` knows: Chromium shares pictures and
 * PDF but neither .zip nor .geojson, iPhones share nearly all.
 *
 * @example
 * howToDeliver(new File([bytes], "farm.zip", { type: "application/zip" })) // => "save" in Chromium
 */
export const howToDeliver = (file: File): "share" | "save" => {
  if (typeof navigator === "undefined" || typeof navigator.share !== "function") return "save";
  if (typeof navigator.canShare !== "function") return "save";
  try {
    return navigator.canShare({ files: [file] }) ? "share" : "save";
  } catch {
    return "save";
  }
};

/**
 * Opens the phone's own sheet to send the file. It must be called straight from a touch, with the file
 * ready: a touch that is spent on preparing the file is no longer good for sharing.
 *
 * @returns `cancelled` when the person closed the sheet, which is nothing to complain about;
 *   `device/share-refused` when the browser would not (touch too old, file not allowed): save it then
 */
export const shareFile = async (file: File): Promise<Result<"shared" | "cancelled">> => {
  // Checked again: the sheet of some browsers opens without the file when it may not be shared.
  if (howToDeliver(file) !== "share") return failed("device/share-refused", { file: file.name });
  try {
    await navigator.share({ files: [file] });
    return ok("shared");
  } catch (reason) {
    if (reason instanceof DOMException && reason.name === "AbortError") return ok("cancelled");
    return failed("device/share-refused", { file: file.name });
  }
};

/**
 * The address of a saved file stays good for this long. Safari first asks whether to download and reads
 * the file only after the answer: taken away at once, an empty or no file would be saved.
 */
const ADDRESS_GOOD_MS = 5 * 60_000;

/**
 * Saves the file where this browser puts downloads. Call it from a touch.
 *
 * @returns `handed-over`: the browser has it, but does not tell whether and where it was written, so words
 *   must not claim that; `device/save-refused` when it would not take it
 */
export const saveFile = (file: File): Result<"handed-over"> => {
  try {
    const address = URL.createObjectURL(file);
    const link = document.createElement("a");
    link.href = address;
    link.download = file.name;
    link.hidden = true;
    document.body.append(link); // Firefox ignores a click on a link outside the page
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), ADDRESS_GOOD_MS);
    return ok("handed-over");
  } catch {
    return failed("device/save-refused", { file: file.name });
  }
};
