/** SHA-256 (FIPS 180-4), piece by piece, for files that are never in memory as a whole. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** A digest that is being made. */
export interface Digest {
  /** Adds bytes, or the UTF-8 bytes of a text. */
  add(piece: Uint8Array | string): void;
  /** The digest in 64 hexadecimal digits. Nothing can be added afterwards. */
  hex(): string;
}

/**
 * Begins a SHA-256 digest.
 *
 * @example
 * const digest = beginDigest();
 * digest.add("abc");
 * digest.hex() // => "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
 */
export const beginDigest = (): Digest => {
  const hash = sha256.create();
  return {
    add(piece) {
      hash.update(typeof piece === "string" ? utf8ToBytes(piece) : piece);
    },
    hex: () => bytesToHex(hash.digest()),
  };
};
