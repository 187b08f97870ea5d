import { describe, expect, test } from 'vitest';
import { pgnInfo } from '../facts/pgns.ts';
import { exactOverWorst, worstLoadPct } from './bus-load.ts';
import { worstBits } from './frame-length.ts';

/** Counted in whole recordings by a script of its own: frames by their data bytes, exact bits, time. */
const recorded = [
  {
    id: 'MS-96',
    dlc: [
      [3, 324],
      [8, 49_604],
    ],
    exactBits: 7_063_412,
    durationS: 61.181591,
    exactPct: 46.18,
    worstPct: 52.122,
  },
  {
    id: 'MS-104',
    dlc: [
      [3, 2],
      [8, 2366],
    ],
    exactBits: 336_318,
    durationS: 17.404328,
    exactPct: 7.73,
    worstPct: 8.705,
  },
] as const;

describe('load of a recorded bus', () => {
  test.each(recorded)('$id: $exactPct % exact is 0.886 of the worst case within a hundredth', (bus) => {
    const bits = bus.dlc.reduce((sum, [bytes, frames]) => sum + frames * worstBits(bytes), 0);
    const worstPct = bits / bus.durationS / 2500;
    expect(worstPct).toBeCloseTo(bus.worstPct, 2);
    expect(bus.exactBits / bus.durationS / 2500).toBeCloseTo(bus.exactPct, 2);
    expect(Math.abs((exactOverWorst * worstPct) / bus.exactPct - 1)).toBeLessThan(0.01);
  });

  test('of a bench with three units switched on has the same share (MS-106, exact bits over bits at their most)', () => {
    expect(Math.abs(exactOverWorst / (845_681 / 963_820) - 1)).toBeLessThan(0.011);
  });

  test('MS-104: is foreseen from how often each message came: exact over planned lies between 0.5 and 1.2', () => {
    const messages: readonly (readonly [pgn: number, count: number])[] = [
      [59904, 2],
      [60928, 2],
      [65306, 17],
      [65359, 174],
      [65379, 17],
      [65384, 17],
      [126208, 15],
      [126720, 78],
      [127237, 69],
      [127245, 522],
      [127250, 175],
      [127251, 175],
      [127257, 175],
      [128259, 34],
      [128267, 17],
      [128275, 17],
      [129025, 165],
      [129026, 66],
      [129038, 4],
      [129039, 9],
      [129793, 3],
      [129794, 1],
      [130306, 18],
      [130311, 34],
      [130916, 17],
      [130919, 51],
    ];
    const plannedPct = worstLoadPct(
      messages.map(([pgn, count]) => {
        const { frames = 1, planBytes = 8 } = pgnInfo(pgn) ?? {};
        return { pgn, frames, dataBytes: planBytes, count, everyMs: 17_404.328, priority: 6 };
      }),
    );
    expect(7.73 / plannedPct).toBeGreaterThan(0.5);
    expect(7.73 / plannedPct).toBeLessThan(1.2);
    // a maker's own messages are planned longer than they were; the others make the load of the recording to a tenth
    expect(Math.abs(plannedPct / 8.705 - 1)).toBeLessThan(0.1);
  });
});
