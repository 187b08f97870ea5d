import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineLimits } from '../facts/line-limits.ts';
import { charsPerSecond, lineLoad } from './line-load.ts';

test('432 characters a second fill 90 % of 4800 baud and 11.25 % of 38400 (BB-48, computed from the formula)', () => {
  expect(lineLoad({ charsPerS: 432, baud: 4800 }).sharePct).toBeCloseTo(90, 9);
  expect(lineLoad({ charsPerS: 432, baud: 38_400 }).sharePct).toBeCloseTo(11.25, 9);
});

test('four inputs half full at 4800 overflow an output at 4800 and fill a quarter of 38400 (BB-49, computed from the formula)', () => {
  const charsPerS = 4 * 0.5 * 480;
  expect(lineLoad({ charsPerS, baud: 4800 }).sharePct).toBeCloseTo(200, 9);
  expect(lineLoad({ charsPerS, baud: 38_400 }).sharePct).toBeCloseTo(25, 9);
});

test('heading ten times a second and four sentences once a second are more than the 80 % to plan for (MS-78, computed from the formula)', () => {
  const charsPerS = 10 * 25 + 27 + 33 + 20 + 71;
  expect(charsPerS).toBe(401);
  const { sharePct } = lineLoad({ charsPerS, baud: 4800 });
  expect(sharePct).toBeCloseTo(83.54, 2);
  expect(sharePct).toBeGreaterThan(lineLimits['nmea0183-load'].value);
});

/** What a talker sends, from how often each sentence came in so many seconds. */
const recordedSends = (counts: Readonly<Record<string, number>>, spanS: number) =>
  Object.entries(counts).map(([sentence, count]) => ({ sentence, everyMs: (1000 * spanS) / count }));

test('86,833 characters of position and AIS in 163 s overflow 4800 baud by a tenth, as the table of sentences foresees within a twentieth (MS-107, own script over a recording)', () => {
  const charsPerS = 86_833 / 163;
  expect(charsPerS).toBeCloseTo(532.7, 1);
  expect(lineLoad({ charsPerS, baud: 4800 }).sharePct).toBeCloseTo(111, 1);
  expect(lineLoad({ charsPerS, baud: 38_400 }).sharePct).toBeCloseTo(13.9, 1);
  const counts = { VDM: 183, GGA: 164, GLL: 164, GSA: 165, GSV: 492, RMC: 164, VTG: 164 };
  const foreseen = charsPerSecond(recordedSends(counts, 163));
  expect(Math.abs(foreseen / charsPerS - 1)).toBeLessThan(0.05);
});

test('206.7 characters a second of sailing instruments fill 43 % of 4800 baud, and the table never foresees less (MS-109, own script over a recording)', () => {
  const charsPerS = 206.7;
  expect(lineLoad({ charsPerS, baud: 4800 }).sharePct).toBeCloseTo(43.1, 1);
  const often = ['GLL', 'GSV', 'WCV', 'XTE', 'ZDA', 'DBT', 'MWV', 'VHW', 'VPW', 'VTG', 'VWT'];
  const counts = Object.fromEntries([
    ...often.map((sentence) => [sentence, 1655]),
    ...['HDM', 'MWD', 'VDR'].map((sentence) => [sentence, 1654]),
    ['HDT', 3309],
  ]);
  const foreseen = charsPerSecond(recordedSends(counts, 3387));
  expect(foreseen).toBeGreaterThan(charsPerS);
  expect(foreseen).toBeLessThan(charsPerS * 1.3);
});

test('heading ten times a second alone takes half of a 4800 line or more', () => {
  const charsPerS = charsPerSecond([{ sentence: 'HDG', everyMs: 100 }]);
  expect(lineLoad({ charsPerS, baud: 4800 }).sharePct).toBeGreaterThan(50);
});

test('a sentence on event, or a bare reading, adds nothing; one nobody measured counts as the longest', () => {
  expect(charsPerSecond([{ sentence: 'VDM' }, { reading: 'depth', everyMs: 1000 }])).toBe(0);
  expect(charsPerSecond([{ sentence: 'ZZZ', everyMs: 1000 }])).toBe(82);
});

test('more sentences never make a line emptier, and twice the speed makes it half as full', () => {
  const sentence = fc.constantFrom('RMC', 'GGA', 'HDG', 'MWV', 'DPT', 'ZZZ');
  const list = fc.array(fc.record({ sentence, everyMs: fc.integer({ min: 50, max: 5000 }) }), { maxLength: 8 });
  fc.assert(
    fc.property(list, list, (some, more) => {
      const few = charsPerSecond(some);
      expect(charsPerSecond([...some, ...more])).toBeGreaterThanOrEqual(few - 1e-9);
      expect(lineLoad({ charsPerS: few, baud: 9600 }).sharePct * 2).toBeCloseTo(
        lineLoad({ charsPerS: few, baud: 4800 }).sharePct,
        9,
      );
    }),
  );
});
