import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import { plan } from '../../core/plan.ts';
import { tableCsv } from '../table/table-csv.ts';
import { blackoutList } from './blackout-list.ts';
import { blackoutRows } from './blackout-rows.ts';
import { blackoutPaper, blackoutText } from './blackout-text.ts';

const { boat } = aBoat();
const planned = plan(boat, new Map());

describe('the blackout table', () => {
  const { rows, failures, harmless } = blackoutRows(indexBoat(boat), planned);

  test('has the worst first and failures that take the same in one row', () => {
    const [worst] = rows;
    expect(worst?.what).toEqual(
      expect.arrayContaining(['Bank house', 'Panel main-panel', 'Feeder of panel main-panel']),
    );
    expect(worst?.takes).toBe('heading, position');
    expect(rows.map(({ loses }) => loses.length)).toEqual(
      [...rows.map(({ loses }) => loses.length)].sort((a, b) => b - a),
    );
  });

  test('counts what takes nothing and does not list it', () => {
    const listed = rows.reduce((sum, row) => sum + row.failures.length, 0);
    expect(listed + harmless).toBe(failures);
    expect(rows.every(({ loses, vitals }) => loses.length > 0 || vitals.length > 0)).toBe(true);
  });

  test('says perhaps where a bus is left with one terminator', () => {
    const ended = rows.find(({ failures: own }) => own.some(({ how }) => how === 'terminator'));
    expect(ended).toMatchObject({ takes: '', perhaps: 'heading, position' });
    expect(ended?.vitals).toEqual([
      { of: 'heading', perhaps: true },
      { of: 'position', perhaps: true },
    ]);
  });

  test('is text of 80 columns, single points first', () => {
    for (const text of [blackoutText(boat, planned).join('\n'), blackoutPaper(boat, planned)]) {
      expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
      expect(text).toMatch(/- Heading: \d+ single failures take it off every screen: Bank house; /);
      expect(text).toContain('At hand (common practice): the magnetic steering compass');
    }
    expect(blackoutPaper(boat, planned).replaceAll(/\s+/g, ' ')).toContain(
      '[single point: heading perhaps, position perhaps]',
    );
  });

  test('is a CSV with a row for each reading and screen, single points marked', () => {
    const lines = tableCsv(blackoutList(boat, planned)).split('\r\n');
    expect(lines).toContain('GNSS on the stern rail,position,Old radio,yes,position,unit,gnss');
    expect(lines).toContain(
      'Breaker helm-circuit of panel main-panel,position,Old radio,yes,position,fuse,main-panel.helm-circuit',
    );
  });
});

test('a boat without needs has no table', () => {
  const { boat: bare } = aBoat().with({ needs: [] });
  expect(blackoutText(bare, plan(bare, new Map()))).toEqual([]);
});
