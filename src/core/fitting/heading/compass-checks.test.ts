import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compassLimits } from '../../facts/compass-figures.ts';
import { compassDeviation } from '../../power/compass-deviation.ts';
import { standInDistanceM } from '../../power/stand-in-distance.ts';
import { standardFromSteering, steeringFromStandard } from '../../power/standard-from-steering.ts';
import { unknownItem } from '../../power/unknown-item.ts';
import { wireFieldUt } from '../../power/wire-field.ts';
import { cardVerdict, deviationOf } from './deviation.ts';
import { probeVerdict } from './probe-verdict.ts';

describe('what may turn a compass', () => {
  it('CM-02 (ISO 25862, formerly ISO 694, second-hand): 0.216° on a standard, 0.72° on a steering compass at 25 µT', () => {
    expect(compassLimits.standard.value / 25).toBeCloseTo(0.216, 9);
    expect(compassLimits.steering.value / 25).toBeCloseTo(0.72, 9);
  });

  it.each([
    ['CM-03', { currentA: 10, distanceM: 1 }, 2, 6.3402],
    ['CM-04', { currentA: 10, distanceM: 5 }, 0.4, 1.273],
    ['CM-05', { currentA: 10, distanceM: 0.3, pairSpacingM: 0.005 }, 0.11111, 0.35367],
  ])('%s (B = 0.2 I/r, pair 0.2 I s/r²; δ = atan(B/H), computed): at 18 µT', (_id, wire, fieldUt, deg) => {
    const found = wireFieldUt(wire);
    expect(found).toBeCloseTo(fieldUt, 3);
    expect(compassDeviation({ fieldUt: found, horizontalUt: 18 }).squareDeg).toBeCloseTo(deg, 3);
  });

  it('CM-06 (a dipole’s field falls as 1/r³, computed): a standard compass wants 1.494 times the distance', () => {
    expect(standardFromSteering(1)).toBeCloseTo(1.4938, 4);
    expect(standardFromSteering(0.5)).toBeCloseTo(0.7469, 4);
    expect(steeringFromStandard(standardFromSteering(0.5))).toBeCloseTo(0.5, 12);
  });

  it('CM-11 (ISO/DIS 25862 E.5.3 and several installation books, second-hand): an unknown item at 0.6, 2 and 5.5 m', () => {
    expect([0.6, 2, 5.5].map(unknownItem)).toEqual(['warn', 'advice', 'ok']);
  });

  it('by kind, until a plate is read: what is printed for a steering compass comes first', () => {
    expect(standInDistanceM('heading-sensor')).toBe(0.76);
    expect(standInDistanceM('loudspeaker')).toBe(2);
    expect(standInDistanceM('vhf-handset')).toBeCloseTo(0.669, 3);
    expect(standInDistanceM('kettle')).toBeUndefined();
  });
});

describe('deviation', () => {
  it('CM-07 and CM-08 (navigation textbooks; modulo 360, computed): 92° magnetic less 89° is 3° E, 2° less 358° is 4° E', () => {
    expect(deviationOf({ magneticDeg: 92, compassDeg: 89 })).toEqual({ deviationDeg: 3, name: 'E' });
    expect(deviationOf({ magneticDeg: 2, compassDeg: 358 })).toEqual({ deviationDeg: 4, name: 'E' });
    expect(deviationOf({ magneticDeg: 350, compassDeg: 355 })).toEqual({ deviationDeg: -5, name: 'W' });
    expect(deviationOf({ magneticDeg: 90, compassDeg: 450 })).toEqual({ deviationDeg: 0 });
  });

  it('CM-09 (navigation textbooks): a largest deviation of 2.5° is left alone, 4° noted, 6° adjusted', () => {
    expect([2.5, 4, 6, -6].map(cardVerdict)).toEqual(['ignore', 'note', 'adjust', 'adjust']);
  });

  it('CM-12 (several public installation books): a change of 4° is good, 8° doubtful, 12° another place', () => {
    expect([4, 8, 12].map(probeVerdict)).toEqual(['good', 'doubtful', 'move']);
  });

  it('whatever the headings: added to what the compass shows it gives the magnetic heading, and is never over half a turn', () => {
    const deg = fc.integer({ min: 0, max: 359 });
    fc.assert(
      fc.property(deg, deg, (magneticDeg, compassDeg) => {
        const { deviationDeg, name } = deviationOf({ magneticDeg, compassDeg });
        expect((compassDeg + deviationDeg + 360) % 360).toBe(magneticDeg);
        expect(deviationDeg > -180 && deviationDeg <= 180).toBe(true);
        expect(name).toBe(deviationDeg === 0 ? undefined : deviationDeg > 0 ? 'E' : 'W');
      }),
    );
  });
});
