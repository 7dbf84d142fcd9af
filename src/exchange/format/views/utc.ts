const two = (n: number): string => String(n).padStart(2, "0");
const DAY_MS = 86_400_000;

/**
 * A moment as ISO 8601 text in UTC, by the proleptic Gregorian calendar. (This room has no clock and so
 * no `Date`; days are counted from 1 March of the year 0, when a leap day ends the year.)
 *
 * @param ms milliseconds since 1970, as a clock read them
 * @returns the text, or "" for a year that four digits cannot write
 * @example
 * utcText(1714557600000) // => "2024-05-01T10:00:00Z"
 */
export const utcText = (ms: number): string => {
  const days = Math.floor(ms / DAY_MS) + 719_468;
  const era = Math.floor(days / 146_097);
  const dayOfEra = days - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  if (year < 0 || year > 9999) return "";
  const day = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const second = Math.floor((ms - Math.floor(ms / DAY_MS) * DAY_MS) / 1000);
  const time = `${two(Math.floor(second / 3600))}:${two(Math.floor(second / 60) % 60)}:${two(second % 60)}`;
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}T${time}Z`;
};
