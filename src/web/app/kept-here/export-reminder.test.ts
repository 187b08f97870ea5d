import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { KeptFacts } from '../store/kept-facts.ts';
import { exportReminder, quietFrom } from './export-reminder.ts';

const dayMs = 86_400_000;
const facts = (more: Partial<KeptFacts>): KeptFacts => ({
  name: 'Tern',
  says: '',
  tag: '',
  states: [],
  changes: 0,
  ...more,
});

test.each([
  ['nothing is changed', facts({}), 100, undefined],
  ['a change is six days old', facts({ changes: 3, changedMs: 0 }), 6.9, undefined],
  ['a change is seven days old', facts({ changes: 3, changedMs: 0 }), 7, { changes: 3, days: 7, isFirst: true }],
  [
    'a hundred changes are of today',
    facts({ changes: 100, changedMs: 0 }),
    0.1,
    { changes: 100, days: 0, isFirst: true },
  ],
  [
    'she was exported before',
    facts({ changes: 1, changedMs: dayMs, exportedMs: dayMs / 2 }),
    9,
    { changes: 1, days: 8, isFirst: false },
  ],
  ['the clock was set back', facts({ changes: 5, changedMs: 9 * dayMs }), 1, undefined],
] as const)('where %s', (_, kept, atDays, expected) => {
  expect(exportReminder(kept, { nowMs: atDays * dayMs })).toEqual(expected);
});

test('one who asked for peace has it for a week, and no export is forgotten for good', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 0, max: 400 }), (changes, days) => {
      const kept = facts({ changes, changedMs: 0 });
      const quietUntilMs = quietFrom(days * dayMs);
      for (let later = 0; later < 7; later += 1) {
        expect(exportReminder(kept, { nowMs: (days + later) * dayMs, quietUntilMs })).toBeUndefined();
      }
      expect(exportReminder(kept, { nowMs: quietUntilMs, quietUntilMs })).toMatchObject({ changes });
    }),
  );
});
