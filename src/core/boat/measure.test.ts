import { describe, expect, it } from 'vitest';
import { lengthMm } from './measure.ts';

describe('the doubt of a length nobody gave a doubt for', () => {
  it.each([
    [10, 'taped', 9.6, 10.4],
    [10, 'papers', 9, 11],
    [10, 'guessed', 9, 13],
    [1.2, 'guessed', 0.7, 1.7],
  ] as const)('PW-93 (practice): %f m %s is %f to %f m', (valueM, how, leastM, mostM) => {
    const { shortestMm, longestMm } = lengthMm({ valueM, how });
    expect([shortestMm / 1000, longestMm / 1000]).toEqual([leastM, mostM]);
  });

  it('goes no lower than nothing', () => {
    expect(lengthMm({ valueM: 0.3, how: 'guessed' }).shortestMm).toBe(0);
  });
});
