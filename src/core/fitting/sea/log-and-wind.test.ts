import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logFactor } from './log-factor.ts';
import { logRuns, speedOverDistanceKn } from './log-runs.ts';
import { meanOfMeans } from './mean-of-means.ts';
import { offTheLineM } from './off-the-line.ts';
import { inTrialOrder } from './trial-order.ts';
import { windOffset } from './wind-offset.ts';

const runsOf = (...seconds: number[]) => seconds.map((one) => ({ seconds: one, indicatedKn: 6 }));

describe('a log run to and fro (relative motion, computed)', () => {
  it('ST-01: 450 s and 900 s over a mile are 8 and 4 knots, 6 in the mean; the mean of the times would say 5.33', () => {
    const found = logRuns({ distanceNm: 1, runs: runsOf(450, 900) });
    expect(found?.speedsKn).toEqual([8, 4]);
    expect(found?.trueKn).toBeCloseTo(6, 3);
    expect(speedOverDistanceKn({ distanceNm: 1, seconds: (450 + 900) / 2 })).toBeCloseTo(5.3333, 3);
  });

  it('ST-02, ST-08: in a stream that changes the mean of means counts, 6.0 kn of four runs and 5.95 of three', () => {
    const four = [7, 5.2, 6.4, 6.2];
    expect(meanOfMeans(four)).toBeCloseTo(6, 3);
    expect(four.reduce((sum, speed) => sum + speed, 0) / 4).toBeCloseTo(6.2, 3);
    expect(meanOfMeans([7, 5.2, 6.4])).toBeCloseTo(5.95, 3);
  });

  it('ST-03, ST-06: the new factor is the old times true over indicated (practice)', () => {
    expect(logFactor({ factorBefore: 1.4, trueKn: 8, indicatedKn: 7.5 })).toBeCloseTo(1.4933, 3);
    const runs = [10, 10].map((trueKn) => ({ seconds: 3600 / trueKn, indicatedKn: 8.5 }));
    expect(logRuns({ distanceNm: 1, runs })?.pct).toBeCloseTo(117.65, 1);
  });

  it('ST-04: 14 miles in 105 minutes are 8 knots (60 D / T)', () => {
    expect(speedOverDistanceKn({ distanceNm: 14, seconds: 105 * 60 })).toBeCloseTo(8, 3);
  });

  it('finds her own speed whatever a steady stream is, and whatever one that changes evenly is over three runs', () => {
    const speed = fc.integer({ min: 40, max: 120 }).map((tenths) => tenths / 10);
    const stream = fc.integer({ min: -20, max: 20 }).map((tenths) => tenths / 10);
    const change = fc.integer({ min: -10, max: 10 }).map((tenths) => tenths / 20);
    fc.assert(
      fc.property(speed, stream, change, (own, first, more) => {
        const overGround = [0, 1, 2].map((run) => own + (run % 2 === 0 ? 1 : -1) * (first + run * more));
        expect(meanOfMeans(overGround)).toBeCloseTo(own, 9);
        expect(meanOfMeans([own + first, own - first])).toBeCloseTo(own, 9);
      }),
    );
  });

  it('says nothing of one run, of no distance, or of a log that showed nothing', () => {
    expect(logRuns({ distanceNm: 1, runs: runsOf(450) })).toBeUndefined();
    expect(logRuns({ distanceNm: 0, runs: runsOf(450, 900) })).toBeUndefined();
    expect(logRuns({ distanceNm: 1, runs: [{ seconds: 450, indicatedKn: 0 }, ...runsOf(900)] })).toBeUndefined();
    expect(meanOfMeans([])).toBeUndefined();
  });
});

describe('the wind angle on both tacks (practice)', () => {
  it('ST-05: 35 on port and 25 on starboard are turned 5 degrees to port', () => {
    expect(windOffset([{ portDeg: 35, starboardDeg: 25 }])).toMatchObject({ offsetDeg: 5, turnedTo: 'port' });
  });

  it('averages the pairs, and tells how far they lie apart', () => {
    const pairs = [
      { portDeg: 30, starboardDeg: 34 },
      { portDeg: 31, starboardDeg: 33 },
    ];
    expect(windOffset(pairs)).toEqual({ offsetDeg: -1.5, turnedTo: 'starboard', spreadDeg: 0.5 });
    expect(windOffset([{ portDeg: 30, starboardDeg: 30 }])?.turnedTo).toBe('neither');
    expect(windOffset([])).toBeUndefined();
  });
});

it('ST-07: a heading that is 3 degrees out leads 97 m past a mark a mile ahead (geometry)', () => {
  expect(Math.abs(offTheLineM({ errorDeg: 3, rangeNm: 1 }) - 97.059)).toBeLessThanOrEqual(0.5);
});

it('ST-09: heading comes before log, and log before wind, as true wind hangs on both (practice)', () => {
  expect(inTrialOrder(['wind', 'log', 'heading'])).toEqual(['heading', 'log', 'wind']);
});
