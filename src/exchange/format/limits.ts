/** Limits of the archive format (archive-format.md, section 8). A writer keeps them, a reader refuses what exceeds them. */
export const LIMITS = {
  /** All files of a volume, unpacked. */
  volumeBytes: 2_000_000_000,
  files: 20_000,
  manifestBytes: 20_000_000,
  recordsBytes: 500_000_000,
  /** One line of records.ndjson. */
  lineBytes: 16_000_000,
  photoBytes: 20_000_000,
  /** README and views. */
  otherBytes: 500_000_000,
  /** Unpacked against packed size; asked only above `ratioFromBytes`, since a short text may well pack better. */
  ratio: 100,
  ratioFromBytes: 1_000_000,
} as const;

/** Photos of one volume, in bytes: what a phone can share and a mail server may still refuse. */
export const VOLUME_PHOTO_BYTES = 200_000_000;

/** Most bytes that a file of this name may unpack to. */
export const limitOf = (name: string): number => {
  if (name === "manifest.json") return LIMITS.manifestBytes;
  if (name === "records.ndjson") return LIMITS.recordsBytes;
  return name.startsWith("photos/") ? LIMITS.photoBytes : LIMITS.otherBytes;
};
