import { describe, expect, it } from 'vitest';
import { conductorsOf } from './conductors-of.ts';
import { currentByOhmA } from './drop-by-ohm.ts';
import { currentByRuleA } from './drop-rules.ts';
import tables from './drop-tables.check.json' with { type: 'json' };
import { sizeByDrop } from './size-by-drop.ts';

const sizeAt = ({ currentA, loopFt, dropV }: { currentA: number; loopFt: number; dropV: number }): string =>
  sizeByDrop({ system: 'awg', currentA, loopM: loopFt * 0.3048, dropV, engineSpace: false })?.size ?? '-';

describe.each(tables.awg)(
  'the table of gauges for $table (ABYC E-11 with K = 10.75, second-hand; computed)',
  ({ dropV, rows }) => {
    it.each(rows)('is met in every cell at $currentA A', ({ currentA, sizes }) => {
      expect(tables.awgLoopFt.map((loopFt) => sizeAt({ currentA, loopFt, dropV })).join(' ')).toBe(sizes);
    });

    it('has a thicker gauge or the same at every step of length and of current', () => {
      const order = [...conductorsOf('awg').map(({ size }) => size), '-'];
      const ranks = rows.map(({ sizes }) => sizes.split(' ').map((size) => order.indexOf(size)));
      for (const [at, row] of ranks.entries()) {
        expect(row).toEqual([...row].sort((one, other) => one - other));
        for (const [step, rank] of row.entries()) expect(rank).toBeGreaterThanOrEqual(ranks[at - 1]?.[step] ?? 0);
      }
    });
  },
);

describe.each(tables.metric)(
  'the table of metric currents for $table (ISO 10133 and IEC 60228, second-hand; computed)',
  ({ dropV, rows }) => {
    it.each(rows)('is met in every cell of $areaMm2 mm²', ({ areaMm2, byRule, class5Tinned }) => {
      const ohmPerKm = conductorsOf('metric').find((one) => one.areaMm2 === areaMm2)?.ohmPerKm20 ?? Number.NaN;
      const amps = (text: string): readonly number[] => text.split(' ').map(Number);
      const [rule, real] = [amps(byRule), amps(class5Tinned)];
      expect([rule.length, real.length]).toEqual([tables.metricLoopM.length, tables.metricLoopM.length]);
      for (const [at, loopM] of tables.metricLoopM.entries()) {
        // half a hundredth: the printed digits
        expect(Math.abs(currentByRuleA({ rule: 'iso', areaMm2, loopM, dropV }) - (rule[at] ?? 0))).toBeLessThan(0.0051);
        expect(Math.abs(currentByOhmA({ dropV, loopM, ohmPerKm }) - (real[at] ?? 0))).toBeLessThan(0.0051);
      }
    });
  },
);

interface WrongCell {
  readonly table: string;
  readonly currentA: number;
  readonly loopFt: number;
  readonly needed: string;
  /** absent where only that the cell is too thin was noted */
  readonly printed?: string;
}

/** Cells that tables of sellers print too thin. */
const wrongCells: readonly WrongCell[] = [
  {
    table: 'A, 12 V 3 %: the end of the row repeats that of 25 ft',
    currentA: 70,
    loopFt: 30,
    needed: '1',
    printed: '2',
  },
  {
    table: 'A, 12 V 3 %: the end of the row repeats that of 25 ft',
    currentA: 80,
    loopFt: 30,
    needed: '1',
    printed: '2',
  },
  {
    table: 'A, 12 V 3 %: the end of the row repeats that of 25 ft',
    currentA: 90,
    loopFt: 30,
    needed: '1/0',
    printed: '1',
  },
  {
    table: 'A, 12 V 3 %: the end of the row repeats that of 25 ft',
    currentA: 100,
    loopFt: 30,
    needed: '1/0',
    printed: '1',
  },
  { table: 'A, 12 V 3 %: the row repeats that of 100 ft', currentA: 20, loopFt: 110, needed: '1', printed: '2' },
  { table: 'A, 12 V 3 %: the row repeats that of 100 ft', currentA: 25, loopFt: 110, needed: '1/0', printed: '1' },
  { table: 'A, 12 V 3 %: the row repeats that of 100 ft', currentA: 40, loopFt: 110, needed: '3/0', printed: '2/0' },
  { table: 'A, 12 V 3 %: the row repeats that of 100 ft', currentA: 50, loopFt: 110, needed: '4/0', printed: '3/0' },
  { table: 'A, 12 V 3 %: one size thin, by a tolerance', currentA: 15, loopFt: 60, needed: '4', printed: '6' },
  { table: 'A, 12 V 3 %: one size thin, by a tolerance', currentA: 15, loopFt: 140, needed: '1', printed: '2' },
  { table: 'A, 12 V 3 %: one size thin, by a tolerance', currentA: 5, loopFt: 170, needed: '4', printed: '6' },
  { table: 'B, 12 V 3 %', currentA: 20, loopFt: 10, needed: '10', printed: '12' },
  { table: 'B, 12 V 3 %', currentA: 50, loopFt: 10, needed: '6', printed: '8' },
  { table: 'B, 12 V 3 %', currentA: 5, loopFt: 100, needed: '6', printed: '8' },
  { table: 'B, 12 V 3 %: thin', currentA: 30, loopFt: 30, needed: '4' },
  { table: 'B, 12 V 3 %: thin', currentA: 50, loopFt: 30, needed: '2' },
  { table: 'B, 12 V 3 %: thin', currentA: 70, loopFt: 30, needed: '1' },
  { table: 'B, 12 V 3 %: thin', currentA: 80, loopFt: 30, needed: '1' },
  { table: 'B, 12 V 3 %: thin', currentA: 90, loopFt: 30, needed: '1/0' },
  { table: 'B, 12 V 3 %: thin', currentA: 100, loopFt: 30, needed: '1/0' },
  { table: 'B, 12 V 3 %: there is none so thick', currentA: 70, loopFt: 100, needed: '-' },
  { table: 'C, 12 V 10 %', currentA: 20, loopFt: 15, needed: '14', printed: '16' },
  { table: 'C, 12 V 10 %', currentA: 70, loopFt: 40, needed: '4', printed: '6' },
  { table: 'C, 12 V 10 %', currentA: 40, loopFt: 70, needed: '4', printed: '6' },
  { table: 'C, 12 V 10 %', currentA: 30, loopFt: 100, needed: '4', printed: '6' },
  { table: 'C, 12 V 10 %', currentA: 70, loopFt: 100, needed: '1', printed: '2' },
  { table: 'C, 12 V 10 %', currentA: 90, loopFt: 100, needed: '1/0', printed: '1' },
];

describe('a cell that a seller prints too thin', () => {
  it.each(wrongCells)('is not copied from table $table: $currentA A over $loopFt ft needs $needed', (cell) => {
    const { currentA, loopFt, needed, printed } = cell;
    const dropV = cell.table.includes('10 %') ? 1.2 : 0.36;
    expect(sizeAt({ currentA, loopFt, dropV })).toBe(needed);
    if (printed === undefined) return;
    const mils = conductorsOf('awg').find(({ size }) => size === printed)?.circularMils ?? Number.NaN;
    expect((10.75 * currentA * loopFt) / mils).toBeGreaterThan(dropV);
  });
});
