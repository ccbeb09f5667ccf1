// Rows as comma-separated values (RFC 4180), safe to open in a spreadsheet.

/** What a spreadsheet may take for a formula, also behind blanks. */
const FORMULA = /^\s*[=+\-@]/;

/** Text that no spreadsheet calculates: an apostrophe before what looks like a formula. */
export const defused = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);

const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** Rows as one text, each ended as the standard has it; a comma, a quotation mark or a line break puts a cell in quotes. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(quoted).join(',')}\r\n`).join('');
