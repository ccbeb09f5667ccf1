// Columns for people who read a terminal.

/** Rows with every column but the last padded to its widest cell, two spaces between; widths count before colour. */
export function table(
  rows: readonly (readonly string[])[],
  paint: (cell: string, column: number, row: number) => string = (cell) => cell,
): string[] {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)));
  return rows.map((row, r) =>
    row
      .map((cell, column) => {
        const gap = column === row.length - 1 ? '' : ' '.repeat((widths[column] ?? 0) - cell.length);
        return paint(cell, column, r) + gap;
      })
      .join('  ')
      .trimEnd(),
  );
}

/** `1 error`, `2 errors`, `1,200 traits`. */
export const count = (n: number, one: string, many = `${one}s`): string =>
  `${n.toLocaleString('en')} ${n === 1 ? one : many}`;

/** Bytes in kB of 1000, one decimal. */
export const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

/** One decimal; neither nothing nor certainty is ever printed. */
export function percent(p: number): string {
  if (p < 0.001) return '<0.1 %';
  if (p > 0.999) return '>99.9 %';
  return `${(p * 100).toFixed(1)} %`;
}
