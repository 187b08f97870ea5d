import { describe, expect, test } from 'vitest';
import { proofLimits } from '../../facts/proof-limits.ts';
import { turnDeg } from './turn-deg.ts';

describe('two headings side by side', () => {
  test('MS-92: differ by the shorter turn, across north, and 5° is the limit (project choice)', () => {
    const a = [358, 358, 229.3];
    const b = [2, 4, 79.2];
    const apart = a.map((first, at) => Math.abs(turnDeg((b[at] ?? 0) - first)));
    for (const [at, due] of [4, 6, 150.1].entries()) expect(apart[at]).toBeCloseTo(due, 2);
    expect(apart.map((deg) => deg <= proofLimits.headingApart.value)).toEqual([true, false, false]);
  });
});
