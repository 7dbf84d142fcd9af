/** Names of the files in an archive. */
export const MANIFEST = "manifest.json";
export const RECORDS = "records.ndjson";
export const README = "README.txt";
export const VIEWS = {
  lines: "view/lines.csv",
  marks: "view/marks.csv",
  map: "view/lines.geojson",
  rings: "view/rings.csv",
  ringReadings: "view/ring-readings.csv",
  holes: "view/holes.csv",
  holeEntries: "view/hole-entries.csv",
  points: "view/rings-and-holes.geojson",
  notes: "view/notes.csv",
} as const;

/** The name of a photo's file. */
export const photoName = (sha256: string): string => `photos/${sha256}.jpg`;

/** The digest that a photo's file name claims, or undefined for a file that is no photo. */
export const photoDigest = (name: string): string | undefined =>
  /^photos\/([0-9a-f]{64})\.jpg$/.exec(name)?.[1];

/** Is this the name of a file that the manifest lists? */
export const isListedName = (name: string): boolean =>
  name === RECORDS ||
  name === README ||
  Object.values<string>(VIEWS).includes(name) ||
  photoDigest(name) !== undefined;

const two = (n: number): string => String(n).padStart(2, "0");

/**
 * The name that a volume is saved under.
 *
 * @param day the calendar day on the device, such as `2024-05-01`
 * @example
 * volumeFileName("2024-05-01", 1, 1) // => "mulchmark-2024-05-01.zip"
 */
export const volumeFileName = (day: string, number: number, of: number): string =>
  of === 1 ? `mulchmark-${day}.zip` : `mulchmark-${day}-${two(number)}-of-${two(of)}.zip`;
