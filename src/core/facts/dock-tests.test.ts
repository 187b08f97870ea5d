import { describe, expect, it } from 'vitest';
import { bendFactors, leastBend } from './bends.ts';
import { busLimits } from './bus-limits.ts';
import { cableGrades } from './cable-grades.ts';
import { canLevels, meterAlarms } from './can-levels.ts';
import { busOhm, dockTests, faultSignatures } from './dock-tests.ts';

const passes = (n: number, value: number): boolean => {
  const test = dockTests.find((row) => row.n === n);
  return value >= (test?.least ?? Number.NEGATIVE_INFINITY) && value <= (test?.most ?? Number.POSITIVE_INFINITY);
};

/** R = 1 / (t/120 + n/Rd) */
const ohm = ({ terminators, nodes }: { terminators: number; nodes: number }): number =>
  1 / (terminators / busOhm.terminator.value + nodes / busOhm.nodeUsual.value);

describe('the tests at the dock', () => {
  it('50, 60 and 70 ohm pass, 49 and 71 do not (BB-42, CAN troubleshooting guide of esd)', () => {
    expect([49, 50, 60, 70, 71].map((value) => passes(1, value))).toEqual([false, true, true, true, false]);
  });

  it('an idle wire at 2.5 V passes, at 1.9 and 4.1 V it does not (BB-43, CAN troubleshooting guide of esd)', () => {
    expect([1.9, 2.5, 4.1].map((value) => passes(5, value))).toEqual([false, true, false]);
    expect(canLevels.idle).toMatchObject({ leastV: 2, mostV: 4 });
  });

  it('a shield at 200 kohm with its lead lifted is earthed twice, at 2 Mohm it is not (BB-44, CAN troubleshooting guide of esd)', () => {
    expect([200_000, 2_000_000].map((value) => passes(3, value))).toEqual([false, true]);
  });

  it('let the far end lie no further under the feed than the 1.5 V at which the plan warns (practice)', () => {
    const belowFeed = dockTests.flatMap(({ n, belowFeedMostV }) =>
      belowFeedMostV === undefined ? [] : [[n, belowFeedMostV]],
    );
    expect(belowFeed).toEqual([[4, busLimits['nmea2000-lost-volts-warn'].value]]);
  });

  it('come in their order, first with the power off', () => {
    expect(dockTests.map(({ n }) => n)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(dockTests[0]?.power).toBe('off');
  });
});

describe('the resistance between the data wires', () => {
  it('is 57.69 ohm with two terminators and 20 nodes (BB-37, computed)', () => {
    expect(ohm({ terminators: 2, nodes: 20 })).toBeCloseTo(57.69, 2);
  });

  it('is 107.1 ohm with one terminator and 30 nodes (BB-39, computed)', () => {
    expect(ohm({ terminators: 1, nodes: 30 })).toBeCloseTo(107.1, 1);
  });

  it.each([
    ['ok', 2],
    ['term-1', 1],
    ['term-3', 3],
  ])('the sign "%s" is what %i terminators give without nodes (BB-38, 120 / n)', (id, terminators) => {
    const sign = faultSignatures.find((row) => row.id === id);
    expect(sign?.ohm).toBeCloseTo(ohm({ terminators, nodes: 0 }), 9);
  });
});

describe('the resistance of the data pair itself', () => {
  const term = busOhm.terminator.value;
  const perM = cableGrades.light.dataOhmPerM.value;

  it('makes it 64.27 ohm at the end of 100 m of light cable (BB-35, 120 parallel to 120 + 2 r L)', () => {
    expect(1 / (1 / term + 1 / (term + 2 * perM * 100))).toBeCloseTo(64.27, 1);
  });

  it('makes it 61.38 ohm in the middle of 30 m of light cable (BB-36, (120 + r L) / 2)', () => {
    expect((term + perM * 30) / 2).toBeCloseTo(61.38, 1);
  });

  it('puts a dead short that reads 1 ohm 5.44 m away on light cable (BB-41, R / 2r)', () => {
    expect(1 / (2 * perM)).toBeCloseTo(5.44, 2);
  });

  it('matters no more than two resistors of 5 %: 57 to 63 ohm, which pass (BB-40, computed)', () => {
    const ends = [0.95, 1.05].map((share) => (share * term) / 2);
    expect(ends).toEqual([57, 63]);
    expect(ends.every((value) => passes(1, value))).toBe(true);
  });
});

describe('the levels of the data wires', () => {
  it('lie one above the other: dominant low, recessive, dominant high', () => {
    const { dominantLow, recessive, dominantHigh } = canLevels;
    expect(dominantLow.leastV).toBeLessThan(recessive.leastV);
    expect(recessive.mostV).toBeLessThan(dominantHigh.mostV);
    expect(canLevels.recessiveDifference.mostV).toBeLessThan(canLevels.dominantDifference.leastV);
  });
});

describe('the alarms of a meter', () => {
  it('warn before they alarm, and only beyond what a transceiver makes', () => {
    const { recessive, dominantHigh, dominantLow } = meterAlarms;
    for (const { warnV, faultV } of [recessive, dominantHigh, dominantLow]) {
      expect(faultV[0]).toBeLessThan(warnV[0]);
      expect(faultV[1]).toBeGreaterThan(warnV[1]);
    }
    expect(recessive.warnV[0]).toBeLessThan(canLevels.recessive.leastV);
    expect(dominantHigh.warnV[1]).toBeGreaterThan(canLevels.dominantHigh.mostV);
  });
});

describe('the bend of a cable', () => {
  it('6.9 mm bus cable bends to 55.2 mm at 8 x its diameter (BB-58, AIPU cable data page), less than the careful 100 mm', () => {
    const radius = bendFactors.bus.value * 6.9;
    expect(radius).toBeCloseTo(55.2, 6);
    expect(radius).toBeLessThan(leastBend.value);
  });
});
