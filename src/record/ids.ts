/** Every kind of record that is written down, in the order in which lists and files name them. */
export const KINDS = [
  "person",
  "farm",
  "field",
  "strip",
  "spot",
  "kit",
  "visit",
  "observation",
  "photo",
  "event",
  "rain",
  "guess",
  "earlier",
  "join",
] as const;

/** What a record is about. */
export type Kind = (typeof KINDS)[number];

/**
 * A record's id: its kind, a hyphen and 128 random bits in hexadecimal. The kind stands in the id so
 * that one id can never name two kinds of record, whatever a file claims.
 */
export type RecordId<K extends Kind = Kind> = `${K}-${string}`;

const ID_FORM = new RegExp(`^(${KINDS.join("|")})-[0-9a-f]{32}$`);

/** Random bytes as hexadecimal text; chance is passed in so that this room stays pure. */
export type Chance = (bytes: number) => string;

/**
 * Makes a new id for a record.
 *
 * @param kind what the record is about
 * @param chance gives 16 random bytes as 32 hexadecimal digits
 */
export const newRecordId = <K extends Kind>(kind: K, chance: Chance): RecordId<K> => `${kind}-${chance(16)}`;

/** Makes a 64-bit id: for a revision, an entry, a start of the app, an installation. */
export const newShortId = (chance: Chance): string => chance(8);

/** Is this text a well-formed record id? */
export const isRecordId = (text: string): text is RecordId => ID_FORM.test(text);

/**
 * The kind that an id names.
 *
 * @example
 * kindOf("field-00000000000000000000000000000001") // => "field"
 */
export const kindOf = <K extends Kind>(id: RecordId<K>): K => id.slice(0, id.indexOf("-")) as K;
