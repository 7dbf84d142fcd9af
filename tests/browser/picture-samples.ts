/** Pictures as cameras write them. What stands in the bytes follows Exif 2.32 (CIPA DC-008) and JPEG (T.81). */

const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const short = (value: number): number[] => [value >> 8, value & 255];
const long = (value: number): number[] => [
  value >>> 24,
  (value >>> 16) & 255,
  (value >>> 8) & 255,
  value & 255,
];

/** One entry of a directory: tag, type (2 text, 3 short, 4 long, 5 rational), count, value or where it lies. */
const field = (tag: number, type: number, count: number, value: readonly number[]): number[] => [
  ...short(tag),
  ...short(type),
  ...long(count),
  ...value,
];

/**
 * A JPEG with what a phone writes into it: how it was held, and the position 51° 7′ N.
 *
 * @param orientation 1 as it is, 3 upside down, 6 to be turned by a quarter clockwise, 8 counter-clockwise
 */
export const withExif = (jpeg: Uint8Array, orientation: number): Uint8Array<ArrayBuffer> => {
  const tiff = [
    ...ascii("MM"),
    ...short(42),
    ...long(8),
    ...short(2),
    ...field(0x0112, 3, 1, [...short(orientation), 0, 0]),
    ...field(0x8825, 4, 1, long(38)),
    ...long(0),
    ...short(2),
    ...field(1, 2, 2, [...ascii("N"), 0, 0, 0]),
    ...field(2, 5, 3, long(68)),
    ...long(0),
    ...[51, 1, 7, 1, 0, 1].flatMap(long),
  ];
  const segment = [0xff, 0xe1, ...short(2 + 6 + tiff.length), ...ascii("Exif"), 0, 0, ...tiff];
  return Uint8Array.from([...jpeg.subarray(0, 2), ...segment, ...jpeg.subarray(2)]);
};

/** Whether bytes hold this text. */
export const holds = (bytes: Uint8Array, text: string): boolean => {
  const wanted = ascii(text);
  return bytes.some((_, at) => wanted.every((letter, n) => bytes[at + n] === letter));
};

/** The beginning of a file in HEIC: a box `ftyp` with the brand `heic` (ISO/IEC 23008-12). */
export const heicHead = (): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([
    ...long(24),
    ...ascii("ftypheic"),
    ...long(0),
    ...ascii("mif1heic"),
    ...new Array(200).fill(7),
  ]);
