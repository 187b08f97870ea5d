import type { ReadingEntry } from '../../core/plan-shape.ts';
import { printCount } from '../lists/print-figure.ts';

const restWords = { typical: 'by typical sheet', manual: 'by the manual', recording: 'by recording', proved: 'proved' };

/** How a reading stood before the refit; nothing where the plan does not say. */
const beforeWords = ({ arrives, seenBefore }: ReadingEntry): string[] => {
  if (seenBefore === undefined) return [];
  if (arrives) return [seenBefore ? 'as before' : 'new'];
  return seenBefore ? ['lost'] : [];
};

/**
 * How it stands with one need: what it rests on, how many backups, as before or new; or why it does not arrive.
 *
 * @example needWords(entry) // 'by typical sheet, 1 backup, new'
 */
export const needWords = (entry: ReadingEntry): string => {
  const before = beforeWords(entry);
  if (!entry.arrives) return [...before, entry.whyNot?.says ?? 'does not arrive'].join(': ');
  const backups = entry.backups.length === 0 ? [] : [printCount(entry.backups.length, 'backup')];
  return [...(entry.rests === undefined ? [] : [restWords[entry.rests]]), ...backups, ...before].join(', ');
};
