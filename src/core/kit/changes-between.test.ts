import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from '../backbone/canonical-json.ts';
import { canonicalSheet } from '../boat/canonical-sheet.ts';
import { checkChanges } from '../boat/checks/check-changes.ts';
import type { Sheet } from '../boat/sheet.ts';
import { applyChanges } from '../boat/sheet-changes.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { changesBetween } from './changes-between.ts';
import { typical } from './sloop.test-helper.ts';

const screen = typical('multifunction-display-9');

const withPort = (
  sheet: Sheet,
  id: string,
  change: (port: Sheet['ports'][number]) => Sheet['ports'][number],
): Sheet => ({
  ...sheet,
  ports: sheet.ports.map((port) => (port.id === id ? change(port) : port)),
});

test('a figure of one port is changed where it stands, and one that is gone is taken out', () => {
  const one = withPort(screen, 'n2k', (port) => ({ ...port, len: 9 }));
  expect(changesBetween(screen, one, 'seen')).toEqual([{ path: 'ports.n2k.len', value: 9, how: 'seen' }]);
  const none = withPort(screen, 'n2k', ({ len: _, ...port }) => port);
  expect(changesBetween(screen, none, 'manual')).toEqual([{ path: 'ports.n2k.len', how: 'manual' }]);
});

test('a message that is struck out is one change, and one that is new gives the list anew', () => {
  const [first, ...others] = screen.ports.find(({ id }) => id === 'n2k')?.hears ?? [];
  const fewer = withPort(screen, 'n2k', (port) => ({ ...port, hears: others }));
  expect(changesBetween(screen, fewer, 'manual')).toEqual([
    { path: `ports.n2k.hears.${first?.pgn ?? first?.reading}`, how: 'manual' },
  ]);
  const more = withPort(screen, 'n2k', (port) => ({ ...port, hears: [...(port.hears ?? []), { pgn: 130_842 }] }));
  expect(changesBetween(screen, more, 'manual').map(({ path }) => path)).toEqual(['ports.n2k.hears']);
});

test('the same sheet in another order of its keys has no change', () => {
  expect(changesBetween(screen, JSON.parse(canonicalJson(screen)), 'seen')).toEqual([]);
});

test('between any two typical sheets the changes hold for a unit, and make the one of the other', () => {
  const sheet = fc.constantFrom(...typicalSheets);
  fc.assert(
    fc.property(sheet, sheet, (from, to) => {
      const changes = changesBetween(from, to, 'seen');
      const wanted = { ...to, id: from.id };
      expect(canonicalJson(canonicalSheet(applyChanges(from, changes)))).toBe(canonicalJson(canonicalSheet(wanted)));
      const unit = { id: 'unit', name: 'Unit', sheet: from.id, fate: 'stays', place: 'helm', changes } as const;
      expect(checkChanges({ ...unit, changes: [...changes] }, from, [])).toEqual([]);
    }),
    { numRuns: 300 },
  );
});
