import { expect, test } from 'vitest';
import type { BoatSummary } from './boat-summary.ts';
import { manyBoatsText } from './many-boats-text.ts';

const summary: BoatSummary = {
  boat: 'Tern',
  open: { danger: 0, fault: 2, doubt: 12, advice: 0 },
  accepted: 1,
  readings: { arrive: 55, wanted: 56 },
  parts: { cost: 123_456_789, currency: 'EUR' },
  hoursH: { least: 60.2, most: 111.4 },
};
const longName = `${'a-folder/'.repeat(12)}tern.boat.json`;

test('many boats stand in a table that goes into 80 columns, however long their paths', () => {
  const rows = [{ file: 'skua.boat.json' }, { file: longName, summary }];
  const text = manyBoatsText('check', rows);
  expect(text).toMatch(
    /^boat +danger {2}fault {2}doubt {2}advice {2}accepted\nskua +not read\n…[-a-z/]+\/tern +- +2 +12 +- +1\n/,
  );
  expect(text).toContain('\n\n2 boats: 1 with a danger or a fault, 1 not read.\n');
  expect(Math.max(...text.split('\n').map(({ length }) => length))).toBe(80);
  const wide = manyBoatsText(
    'plan',
    rows.map((row) => ({ ...row, seconds: 12.34 })),
  );
  expect(wide).toMatch(/55\/56 {2}1234567\.89 EUR {2}60-111 {5}12\.3\n/);
});
