/** The field that begins at `at`, as a spreadsheet copies it: in quotes where a tab, a line end or a quote is in it. */
const fieldAt = (text: string, at: number): { readonly field: string; readonly end: number } => {
  if (text[at] === '"') {
    let field = '';
    let here = at + 1;
    while (here < text.length) {
      if (text[here] === '"' && text[here + 1] === '"') {
        field += '"';
        here += 2;
      } else if (text[here] === '"') {
        const next = text[here + 1];
        if (next === undefined || next === '\t' || next === '\n' || next === '\r') return { field, end: here + 1 };
        break;
      } else {
        field += text[here];
        here += 1;
      }
    }
    // no quote that ends it: the quote is part of the words, as an inch is
  }
  let end = at;
  while (end < text.length && text[end] !== '\t' && text[end] !== '\n' && text[end] !== '\r') end += 1;
  return { field: text.slice(at, end), end };
};

/**
 * The cells of a text copied from a spreadsheet: tabs between cells, line ends between rows, the last of which is no row.
 *
 * @example cellsOfText('helm\t2.35 m\nmast\t"12"" high"\n') // [['helm', '2.35 m'], ['mast', '12" high']]
 */
export const cellsOfText = (text: string): readonly (readonly string[])[] => {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at <= text.length) {
    const { field, end } = fieldAt(text, at);
    row.push(field);
    if (text[end] === '\t') {
      at = end + 1;
      continue;
    }
    rows.push(row);
    row = [];
    at = end + (text[end] === '\r' && text[end + 1] === '\n' ? 2 : 1);
    if (at >= text.length) break;
  }
  return rows;
};

/** Cells as a spreadsheet takes them. */
export const textOfCells = (rows: readonly (readonly string[])[]): string =>
  rows
    .map((row) => row.map((cell) => (/[\t\n\r"]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join('\t'))
    .join('\n');
