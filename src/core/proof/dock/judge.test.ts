import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TestEntry } from '../../tests-shape.ts';
import { type Found, judge } from './judge.ts';

const nothing = (): undefined => undefined;
const aTest = (parts: Partial<TestEntry>): TestEntry => ({
  id: 'dock/data-ohm:nav:end-1',
  group: 'bus',
  test: 'data-ohm',
  kind: 'number',
  about: ['nav'],
  power: 'off',
  source: 'esd-can',
  ...parts,
});
const ohm = aTest({ right: { least: 55, most: 64 }, passes: { least: 50, most: 70 } });

describe('a reading held against its test', () => {
  test('is right, in doubt or wrong, and told by how much', () => {
    const verdicts = [49, 50, 60, 64, 65, 70, 71].map((value) => judge(ohm, value, nothing).verdict);
    expect(verdicts).toEqual(['wrong', 'doubtful', 'right', 'right', 'doubtful', 'doubtful', 'wrong']);
    expect(judge(ohm, 71, nothing)).toEqual({ verdict: 'wrong', why: 'passes', by: 1, limit: 70 });
    expect(judge(ohm, 50, nothing)).toMatchObject({ why: 'window', by: 5, limit: 55 });
    expect(judge(ohm, Number.POSITIVE_INFINITY, nothing).verdict).toBe('wrong');
  });

  test('an open circuit is what is wanted between a data wire and the minus', () => {
    const wire = aTest({ test: 'high-to-minus', right: { least: 1_000_000 }, passes: { least: 1000 } });
    const verdicts = [999, 1000, 999_999, 1_000_000, Number.POSITIVE_INFINITY].map(
      (v) => judge(wire, v, nothing).verdict,
    );
    expect(verdicts).toEqual(['wrong', 'doubtful', 'doubtful', 'right', 'right']);
  });

  test('of volts counts against those at the feed too, and says that wires are swapped', () => {
    const far = aTest({
      test: 'bus-volts',
      passes: { least: 9, most: 16 },
      under: { test: 'feed', rightV: 0.8, mostV: 1.5 },
    });
    const under = (value: number) => judge(far, value, () => 12.5);
    expect([12, 11.5, 10.9, 8].map((value) => under(value).verdict)).toEqual(['right', 'doubtful', 'wrong', 'wrong']);
    expect(under(11.5)).toMatchObject({ why: 'under', limit: 0.8, against: 12.5 });
    expect(judge(far, 11.5, nothing).verdict).toBe('right');
    expect(judge(far, -12.4, nothing)).toMatchObject({ verdict: 'wrong', why: 'swapped' });
  });

  test('that nothing says the window of is only noted, beside the one it is held against', () => {
    const hull = aTest({ test: 'minus-to-hull', like: 'off' });
    expect(judge(hull, 0.4, () => 0.1)).toMatchObject({ verdict: 'noted', why: 'like', against: 0.1 });
    expect(judge(hull, 0.4, () => 0.1).by).toBeCloseTo(0.3, 9);
    expect(judge(hull, 0.4, nothing)).toEqual({ verdict: 'noted', why: 'alone' });
  });

  test('of a yes or no is what was answered', () => {
    const shown = aTest({ test: 'shown', kind: 'yes-no' });
    expect([true, false].map((found) => judge(shown, found, nothing).verdict)).toEqual(['right', 'wrong']);
  });

  test('never gets better the farther it lies outside', () => {
    const worth = { right: 0, noted: 0, doubtful: 1, wrong: 2 };
    const figure = fc.integer({ min: 0, max: 120 });
    fc.assert(
      fc.property(figure, figure, fc.constantFrom<Found | undefined>(undefined, 60), (one, other, upper) => {
        const at = (value: number): number => worth[judge(ohm, value, () => upper).verdict];
        const [inner, outer] = [one, other].sort((a, b) => Math.abs(a - 59.5) - Math.abs(b - 59.5));
        if (inner === undefined || outer === undefined || inner > 59.5 !== outer > 59.5) return;
        expect(at(outer)).toBeGreaterThanOrEqual(at(inner));
      }),
    );
  });
});
