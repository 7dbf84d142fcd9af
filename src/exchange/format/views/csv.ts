/** Tables for people (RFC 4180). */

/** A cell. Numbers and texts are told apart by their type: only texts are kept from being formulas. */
export type Cell = string | number | null;

// Includes the line feed, by which a quoted cell can begin a line of its own. List after OWASP, "CSV Injection".
const FORMULA = /^[=+\-@\t\r\n]/u;
const NEEDS_QUOTES = /[",\r\n]/u;

const plain = (cell: Cell): string => {
  if (cell === null) return "";
  if (typeof cell === "number") return String(cell);
  return FORMULA.test(cell) ? `'${cell}` : cell;
};

const quoted = (text: string): string => (NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/**
 * One row. A text that a spreadsheet would take for a formula gets `'` in front; a number never does, or
 * every western longitude would become text.
 *
 * @example
 * csvRow(["=1+1", -3.5, 'say "so"', null]) // => `'=1+1,-3.5,"say ""so""",\r\n`
 */
export const csvRow = (cells: readonly Cell[]): string =>
  `${cells.map((cell) => quoted(plain(cell))).join(",")}\r\n`;

/** What a table begins with: the byte order mark, without which spreadsheets misread UTF-8, and its headers. */
export const csvHead = (headers: readonly string[]): string => `\ufeff${csvRow(headers)}`;
