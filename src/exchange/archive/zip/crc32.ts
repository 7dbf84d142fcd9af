/** The check sum of zip files (ISO 3309, polynomial 0xEDB88320), piece by piece. */
const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/**
 * Adds bytes to a check sum.
 *
 * @param before what the bytes before gave; 0 to begin
 * @example
 * crc32(0, new TextEncoder().encode("123456789")) // => 0xcbf43926
 */
export const crc32 = (before: number, bytes: Uint8Array): number => {
  let value = ~before;
  for (const byte of bytes) value = (value >>> 8) ^ (TABLE[(value ^ byte) & 255] ?? 0);
  return ~value >>> 0;
};
