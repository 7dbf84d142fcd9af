/** Chance from the device: the only place that asks for random numbers. */

/**
 * Random bytes in hexadecimal, good enough for ids that must never meet.
 *
 * @param byteCount 1 to 65 536 (the most that the browser gives at once)
 * @returns two lower-case hexadecimal digits a byte
 * @example
 * randomHex(8) // => for example "9f86d081884c7d65"
 */
export const randomHex = (byteCount: number): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(byteCount)), (byte) =>
    byte.toString(16).padStart(2, "0"),
  ).join("");
