import fc from 'fast-check';
import { expect, it } from 'vitest';
import { horizonNm } from '../antennas/horizon.ts';
import { heeledBeam } from './heeled-beam.ts';
import { beamAt, blindM, nearZoneM } from './near-zone.ts';
import { radarFeedDropV } from './radar-feed.ts';

const near = (value: number | undefined, wanted: number, within: number): void =>
  expect(Math.abs((value ?? Number.NaN) - wanted)).toBeLessThanOrEqual(within);

it('the sea is first lit at height / tan of half the beam: RD-01, RD-02, RD-03 (geometry)', () => {
  near(nearZoneM({ heightM: 10, beamDeg: 25 }), 45.107, 0.1);
  near(nearZoneM({ heightM: 4, beamDeg: 20 }), 22.685, 0.1);
  for (const [beamDeg, factor] of [
    [20, 5.6713],
    [25, 4.5107],
    [30, 3.7321],
  ] as const)
    near(nearZoneM({ heightM: 1, beamDeg }), factor, 0.005);
});

it('RD-04: a least range of 25 m is farther than the near zone of 4 m at 25 degrees', () => {
  near(blindM(nearZoneM({ heightM: 4, beamDeg: 25 }), 25), 25, 0.01);
});

it('on a heel: RD-05 at 10 degrees the beam meets the sea at 229 m to windward, RD-06 at 20 degrees 37.5 to 142.5 are lost, RD-07 at 10 none', () => {
  const slight = heeledBeam({ heightM: 10, beamDeg: 25, heelDeg: 10 });
  near(slight.weatherM, 229.04, 1);
  near(slight.leeUpDeg, 2.5, 0.01);
  expect(slight.lost).toBeUndefined();
  const hard = heeledBeam({ heightM: 10, beamDeg: 25, heelDeg: 20 });
  near(hard.lost?.fromDeg, 37.525, 0.2);
  near(hard.lost?.toDeg, 142.47, 0.2);
});

it('RD-16: from 4 m to 10 m the horizon gains 58 % and the near zone grows 2.5 times (square-root law)', () => {
  near(100 * (horizonNm('radar', 10) / horizonNm('radar', 4) - 1), 58.114, 0.2);
  near(nearZoneM({ heightM: 10, beamDeg: 25 }) / nearZoneM({ heightM: 4, beamDeg: 25 }), 2.5, 1e-9);
});

it('RD-13: 10 m of 9.42 ohm/km at 5 A lose 1.15 V, the copper hot (a maker’s factor of 1.22)', () => {
  near(radarFeedDropV({ lengthM: 10, ohmPerKm: 9.42, currentA: 5 }), 1.1492, 0.005);
});

it('a beam is as high as it is wide above and below, and reaches the sea at its near zone', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 40, noNaN: true }),
      fc.double({ min: 5, max: 60, noNaN: true }),
      (heightM, beamDeg) => {
        const { fromM, toM } = beamAt({ heightM, beamDeg, distanceM: nearZoneM({ heightM, beamDeg }) });
        expect(fromM).toBeCloseTo(0, 6);
        expect(toM).toBeCloseTo(2 * heightM, 6);
      },
    ),
  );
});
