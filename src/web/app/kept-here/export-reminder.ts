import type { KeptFacts } from '../store/kept-facts.ts';

const dayMs = 86_400_000;

/** After so long, or so many changes, a boat should lie somewhere else too. Common practice: a week, or a long evening’s work. */
const dueAfter = { days: 7, changes: 100 } as const;

/** What a boat’s owner is reminded of; undefined where all of her is in an export, or the last change is young. */
export interface ExportReminder {
  /** changes that are in no export */
  readonly changes: number;
  /** whole days since the first of them */
  readonly days: number;
  /** true where she never was exported */
  readonly isFirst: boolean;
}

/**
 * Whether it is time to export a boat that is kept in this browser only. `quietUntilMs` is until when a person asked not to
 * be reminded.
 */
export const exportReminder = (
  { changes, changedMs, exportedMs }: KeptFacts,
  { nowMs, quietUntilMs = 0 }: { nowMs: number; quietUntilMs?: number },
): ExportReminder | undefined => {
  if (changes === 0 || changedMs === undefined || nowMs < quietUntilMs) return undefined;
  // a clock that was set back makes no days
  const days = Math.max(0, Math.floor((nowMs - changedMs) / dayMs));
  if (days < dueAfter.days && changes < dueAfter.changes) return undefined;
  return { changes, days, isFirst: exportedMs === undefined };
};

/** Until when one who does not want to be reminded now is left in peace. */
export const quietFrom = (nowMs: number): number => nowMs + dueAfter.days * dayMs;
