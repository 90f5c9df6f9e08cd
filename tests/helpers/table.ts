/** Prints rows as a table: the first column to the left, figures to the right. */
export function printTable(rows: readonly Record<string, string>[]): void {
  const heads = Object.keys(rows[0] ?? {});
  const widths = heads.map((head) => Math.max(...rows.map((each) => each[head].length), head.length));
  const line = (cells: string[]): string =>
    `| ${cells.map((cell, i) => (i ? cell.padStart(widths[i]) : cell.padEnd(widths[i]))).join(' | ')} |`;
  console.log(line(heads));
  console.log(line(widths.map((width) => '-'.repeat(width))));
  for (const each of rows) console.log(line(Object.values(each)));
}
