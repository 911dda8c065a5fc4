/** A number with its sign, a true minus, and no negative zero. */
export function signed(value: number, digits: number): string {
  const size = Math.abs(value).toFixed(digits);
  if (Number(size) === 0) return size;
  return value < 0 ? `−${size}` : `+${size}`;
}

/** A Markdown table, its columns padded so that the source reads as a table too. */
export function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column].length)));
  const line = (cells: readonly string[], fill: string): string =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column], fill)).join(' | ')} |`;
  const rule = line(
    head.map(() => ''),
    '-',
  );
  return [line(head, ' '), rule, ...rows.map((row) => line(row, ' '))].join('\n');
}
