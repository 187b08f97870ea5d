import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isLongEnough, rateVerdict } from './rate-window.ts';

describe('the rate of a message beside its plan', () => {
  test('MS-90: passes from half to twice the planned interval (project choice)', () => {
    const plannedMs = [100, 1000, 1000, 250, 2500];
    const seenMs = [50, 1005, 2024, 1000, 49];
    const ok = plannedMs.map((planned, at) => rateVerdict({ plannedMs: planned, seenMs: seenMs[at] ?? 0 }) === 'right');
    expect(ok).toEqual([true, true, false, false, false]);
  });

  test('a slower message is never called too often, nor a faster one too seldom', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 100_000 }), (plannedMs, seenMs) => {
        const verdict = rateVerdict({ plannedMs, seenMs });
        expect(verdict).not.toBe(seenMs > plannedMs ? 'too-often' : 'too-seldom');
      }),
    );
  });

  test('what comes once a minute is not missed in ten seconds', () => {
    expect(isLongEnough(10, 60_000)).toBe(false);
    expect(isLongEnough(180, 60_000)).toBe(true);
    expect(isLongEnough(undefined, 60_000)).toBe(true);
  });
});
