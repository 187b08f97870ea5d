import type { ListTable } from '../../table/list-table.ts';
import type { Chapter } from '../binder-shape.ts';

/** One change that was made, or one issue of these papers. */
export interface LogEntry {
  readonly dateIso: string;
  readonly what: string;
  readonly sheets: string;
  readonly by: string;
}

/** Lines left to write in, once the last issue is listed. */
const blankLines = 18;

const logTable = (entries: readonly LogEntry[]): ListTable => ({
  id: 'log',
  title: 'Change log',
  says: 'Every change from the day the work is done: what, which sheets it concerns, who did it.',
  columns: [
    { id: 'day', head: 'day', kind: 'blank', share: 0.8 },
    { id: 'what', head: 'what was changed', kind: 'blank', share: 3 },
    { id: 'sheets', head: 'sheets', kind: 'blank', share: 0.8 },
    { id: 'by', head: 'by', kind: 'blank', share: 0.8 },
  ],
  rows: [
    ...entries.map(({ dateIso, what, sheets, by }) => [dateIso, what, sheets, by]),
    ...Array.from({ length: blankLines }, () => [undefined, undefined, undefined, undefined]),
  ],
  empty: '',
});

/** What was changed and when: the issues of these papers that are known, then lines to write in. */
export const changeLogChapter = (entries: readonly LogEntry[] = []): Chapter => ({
  id: 'log',
  title: 'Change log',
  blocks: [{ kind: 'table', table: logTable(entries) }],
});
