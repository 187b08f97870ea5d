/**
 * One cell of a CSV file by RFC 4180. A cell that a spreadsheet would take for a formula (it starts with = + - @, a tab
 * or a carriage return) gets an apostrophe before it, so that text from a boat file is never run.
 */
export const csvCell = (text: string): string => {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/** Rows as a CSV file: cells by `csvCell`, every line ended with CR LF. */
export const csvText = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
