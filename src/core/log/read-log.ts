import { type LogEntry, logEntrySchema } from './log-entry.ts';

/** A line that is no entry. */
export interface BrokenLine {
  /** from 1 */
  readonly line: number;
  readonly says: string;
}

export interface ReadLog {
  readonly entries: readonly LogEntry[];
  readonly broken: readonly BrokenLine[];
}

/** More entries than any refit makes: beyond, a log is damaged or forged. */
const mostEntries = 200_000;
const longestLine = 8_000;

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

const entryIn = (value: unknown): LogEntry | string => {
  const read = logEntrySchema.safeParse(value);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  return issue === undefined ? 'This is no entry.' : `${issue.path.join('.') || 'entry'}: ${issue.message}`;
};

/** One entry as a value from outside; or a sentence that says why it is none. One that could not be read back is none. */
export const checkEntry = (value: unknown): LogEntry | string => {
  const entry = entryIn(value);
  const isShort = typeof entry === 'string' || JSON.stringify(entry).length <= longestLine;
  return isShort ? entry : 'This is longer than a line of a log may be.';
};

/**
 * Reads the log of a boat, a line an entry. A line that is none, such as the last one of a machine that went dark, is told
 * of and left where it is; the others count.
 */
export const readLog = (text: string): ReadLog => {
  const entries: LogEntry[] = [];
  const broken: BrokenLine[] = [];
  for (const [at, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    const entry =
      line.length > longestLine || entries.length >= mostEntries
        ? 'This is longer than a log may be.'
        : entryIn(parsed(line));
    if (typeof entry === 'string') broken.push({ line: at + 1, says: entry });
    else entries.push(entry);
  }
  return { entries, broken };
};
