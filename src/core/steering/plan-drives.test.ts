import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { aPilotBoat } from '../boat/pilot-boat.test-helper.ts';
import type { DriveCheckId } from '../drives-shape.ts';
import { plan } from '../plan.ts';

const planned = (boat: Parameters<typeof plan>[0]) => plan(boat, new Map());
const verdict = (boat: Parameters<typeof plan>[0], id: DriveCheckId) =>
  planned(boat).drives[0]?.checks.find(({ check }) => check === id)?.verdict;

describe('what a plan says of a pilot', () => {
  test('a boat without one has nothing to say', () => {
    expect(planned(aBoat().boat)).toMatchObject({ drives: [], steering: [] });
  });

  test('computer and drive that fit stand together, found by their join', () => {
    const [entry] = planned(aPilotBoat().boat).drives;
    expect(entry).toMatchObject({ drive: 'pump.motor', computer: 'pilot.motor', join: 'pump-lead', verdict: 'fits' });
    expect(entry?.instead).toBeUndefined();
    expect(entry?.checks.map(({ check }) => check)).toContain('leads-run');
  });

  test('where the output does not do it, the one that would is named', () => {
    const [entry] = planned(aPilotBoat({ drive: { peakA: 34 } }).boat).drives;
    expect(entry).toMatchObject({ verdict: 'fails', instead: { works: 'reversing-motor', motorV: 12, peakA: 40 } });
  });

  test('a sensor that is not joined is missed, one in the drive itself is heard', () => {
    expect(verdict(aPilotBoat({ rudder: false }).boat, 'rudder-sensor')).toBe('fails');
    const built = aPilotBoat({ rudder: false }).sheet('hydraulic-pump-12', (sheet) => {
      sheet.rudderSensor = 'potentiometer';
    });
    expect(verdict(built.boat, 'rudder-kind')).toBe('fits');
  });

  test('a sheet that tells nothing of its output leaves the pair unknown, not wrong', () => {
    const silent = aPilotBoat().sheet('pilot-computer-0183', (sheet) => {
      delete sheet.driveOutput;
    });
    expect(planned(silent.boat).drives[0]?.verdict).toBe('unknown');
  });

  test('the volts of an output are those of the panel that feeds the computer', () => {
    const at24 = aPilotBoat().change((boat) => {
      for (const bank of boat.supply.banks) bank.nominalV = 24;
    });
    expect(verdict(at24.boat, 'motor-volts')).toBe('fails');
  });
});

type Steering = NonNullable<Parameters<typeof plan>[0]['steering']>;
const free = (letsGo: Steering[number]['letsGo'], drive: Parameters<typeof aPilotBoat>[0] = {}) => {
  const { boat } = aPilotBoat(drive).with({ steering: [{ place: 'helm', by: 'wheel', letsGo }] });
  return planned(boat).steering[0];
};

describe('what frees the helm', () => {
  test('a hard-wired switch, a lever or a breaker at hand; never a key that needs the network', () => {
    for (const how of ['hard-wired-switch', 'lever', 'breaker'] as const) expect(free([{ how }])?.free).toBe(true);
    for (const how of ['pilot-head', 'remote'] as const)
      expect(free([{ how }])).toMatchObject({ free: false, ways: [{ whyNot: 'needs-the-network' }] });
    expect(free([])?.free).toBe(false);
  });

  test('nothing farther than 1 m, and nothing behind a panel', () => {
    // locker: 1 m aft, 1.4 m to port and 0.5 m below the helm
    const far = free([{ how: 'hard-wired-switch', at: 'locker' }]);
    expect(far).toMatchObject({ free: false, ways: [{ whyNot: 'out-of-reach' }] });
    expect(far?.ways[0]?.awayM).toBeCloseTo(Math.hypot(1, 1.4, 0.5), 6);
    const hidden = aPilotBoat()
      .with({
        steering: [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'lever', at: 'mast-base' }] }],
        limits: { 'steering-reach': { value: 3, reason: 'Long arms.' } },
      })
      .change(() => undefined);
    expect(planned(hidden.boat).steering[0]?.ways[0]?.whyNot).toBe('behind-a-panel');
  });

  test('only the breaker that feeds the pilot', () => {
    const reach = { limits: { 'steering-reach': { value: 3, reason: 'One step.' } } };
    const whyNot = (circuit: string) =>
      planned(
        aPilotBoat().with({
          ...reach,
          steering: [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'breaker', circuit }] }],
        }).boat,
      ).steering[0]?.ways[0]?.whyNot;
    expect(whyNot('main-panel.pilot-circuit')).toBeUndefined();
    expect(whyNot('main-panel.helm-circuit')).toBe('feeds-no-pilot');
  });

  test('where the drive holds without power only a lever does', () => {
    const holds = { drive: { whenPowerIsLost: 'holds' as const } };
    expect(free([{ how: 'hard-wired-switch' }], holds)?.ways[0]?.whyNot).toBe('holds-without-power');
    expect(free([{ how: 'lever' }], holds)?.free).toBe(true);
  });
});
