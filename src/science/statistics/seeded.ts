/** Numbers that look like chance and come out the same on every machine. */

/**
 * A generator of numbers from 0 up to 1, 32 bits each (small fast counter, 128 bits of state).
 *
 * @param seed any number; its whole part below 2³² counts
 *
 * Source: Doty-Humphrey 2010, PractRand: sfc32 (from memory). Its use here is tested, not its bits.
 *
 * @example
 * const next = seeded(1);
 * const again = seeded(1);
 * next() === again() // => true
 */
export const seeded = (seed: number): (() => number) => {
  let a = seed >>> 0;
  let b = 0x9e3779b9;
  let c = 0x243f6a88;
  let counter = 1;
  const next = (): number => {
    const mixed = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + mixed) | 0;
    return (mixed >>> 0) / 2 ** 32;
  };
  // Seeds that differ in one bit have parted by then.
  for (let round = 0; round < 15; round++) next();
  return next;
};
