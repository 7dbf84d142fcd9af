/** Numbers, days and plurals as the person's language writes them. */

/** Languages that the app speaks, as BCP 47 tags; the region only picks how days and numbers look. */
export type Tongue = string;

// Under the plain C locale some engines report a language that Intl refuses; the app must start anyway.
const usable = (tag: string): string => {
  try {
    return Intl.getCanonicalLocales(tag)[0] ?? "en";
  } catch {
    return "en";
  }
};

/** Making a formatter costs more than a hundred uses of it: a list that made one per row would stutter. */
const keptBy = <Key extends readonly (string | number)[], T>(
  make: (...key: Key) => T,
): ((...key: Key) => T) => {
  const made = new Map<string, T>();
  return (...key) => {
    const name = key.join(" ");
    const there = made.get(name);
    if (there !== undefined) return there;
    const fresh = make(...key);
    made.set(name, fresh);
    return fresh;
  };
};

const numberFormat = keptBy(
  (tongue: Tongue, decimals: number) =>
    new Intl.NumberFormat(usable(tongue), { maximumFractionDigits: decimals }),
);
const pluralRules = keptBy((tongue: Tongue) => new Intl.PluralRules(usable(tongue)));
const dayFormat = keptBy(
  (tongue: Tongue) =>
    new Intl.DateTimeFormat(usable(tongue), {
      day: "numeric",
      month: "short",
      year: "numeric",
      timeZone: "UTC",
    }),
);
// A phone that is carried into another time zone gets another formatter.
const clockFormat = keptBy(
  (tongue: Tongue, _minutesFromUtc: number) =>
    new Intl.DateTimeFormat(usable(tongue), { hour: "2-digit", minute: "2-digit" }),
);

/**
 * Writes a number with at most the given decimals.
 *
 * @example
 * writeNumber(12.5, "en-GB", 1) // => "12.5"
 */
export const writeNumber = (value: number, tongue: Tongue, decimals = 0): string =>
  // A hyphen before a figure reads as a dash; a number is less than nothing by the sign for it, and nothing has none.
  numberFormat(tongue, decimals)
    .format(Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value)
    .replace(/^-/u, "\u2212");

/** A share of 1 as whole percent without the sign. */
export const writePercent = (share: number, tongue: Tongue): string => writeNumber(share * 100, tongue);

/**
 * Picks the word for a number.
 *
 * @example
 * plural(1, "en", { one: "line", other: "lines" }) // => "line"
 */
export const plural = (
  count: number,
  tongue: Tongue,
  forms: { readonly one: string; readonly other: string },
): string => (pluralRules(tongue).select(count) === "one" ? forms.one : forms.other);

/** A calendar day (`2026-11-25`) in words, without shifting it through a time zone. */
export const writeDay = (day: string, tongue: Tongue): string =>
  dayFormat(tongue).format(new Date(`${day}T00:00:00Z`));

/** The clock time of a moment on this device. */
export const writeClock = (atMs: number, tongue: Tongue): string =>
  clockFormat(tongue, new Date().getTimezoneOffset()).format(new Date(atMs));

/** The calendar day of a moment on this device's own calendar. */
export const dayOf = (atMs: number): string => {
  const date = new Date(atMs);
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${String(date.getFullYear()).padStart(4, "0")}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
};
