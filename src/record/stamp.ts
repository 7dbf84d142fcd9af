/**
 * When a revision was made, as the device's own clock read it. It decides nothing but order in lists
 * and ties: clocks in the field are wrong by hours, sometimes by decades, and capture never waits for
 * them.
 */
export interface Stamp {
  /** Wall clock in milliseconds since 1970, as read. */
  readonly wallMs: number;
  /** Counts up within one start of the app, so that two revisions of one millisecond keep their order. */
  readonly counter: number;
  /** The installation, for ties only. */
  readonly device: string;
}

/**
 * Order of two stamps: negative when `a` is earlier.
 *
 * @example
 * compareStamps({ wallMs: 1, counter: 0, device: "a" }, { wallMs: 2, counter: 0, device: "a" }) // => -1
 */
export const compareStamps = (a: Stamp, b: Stamp): number =>
  Math.sign(a.wallMs - b.wallMs) || Math.sign(a.counter - b.counter) || compareText(a.device, b.device);

/**
 * Order of two texts by UTF-16 code units, the same on every device and in every language.
 * (`localeCompare` differs between devices, and files would then differ too.)
 *
 * @example
 * compareText("a", "b") // => -1
 */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
