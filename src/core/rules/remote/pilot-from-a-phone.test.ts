import { expect, test } from 'vitest';
import { isOpen, withReasons } from '../../accepted-findings.ts';
import { gatewayAndPilot, remoteBoat } from '../../remote/remote-boat.test-helper.ts';
import { pilotFromAPhone } from './pilot-from-a-phone.ts';
import { findsRemote } from './remote-case.test-helper.ts';

const steering = { kind: 'pilot-computer', steers: true } as const;
const found = (gate: object, sketch = gatewayAndPilot) =>
  findsRemote(pilotFromAPhone, remoteBoat(sketch, { gate, pilot: steering }));

test('a gateway that is said to write is a danger, one nobody has looked at a fault', () => {
  expect(found({ kind: 'gateway', owner: { writes: 'may-write' } })).toMatchObject([
    { level: 'danger', about: ['gate', 'pilot'] },
  ]);
  const [finding] = found({ kind: 'gateway' });
  expect(finding).toMatchObject({ level: 'fault', about: ['gate', 'pilot'] });
  expect(finding?.says).toContain('given a course by the wifi of gate: gate is a converter');
});

test('SC-03 (common practice): a pilot worked from a phone, not signed by the owner, is to be turned off or only looked at', () => {
  const [unsigned] = found({ kind: 'gateway' });
  expect(unsigned?.cure).toContain('set it to listen only');
  const signed = [
    { finding: unsigned?.id ?? '', reason: 'Worked from the foredeck; wheel and standby key always win.' },
  ];
  const open = (accepted: typeof signed) => withReasons(found({ kind: 'gateway' }), accepted).filter(isOpen);
  expect([open([]).length, open(signed).length]).toEqual([1, 0]);
});

test('a screen that sends a route is a doubt', () => {
  const { units, joins } = gatewayAndPilot;
  const gate = {
    ports: {
      air: { protocol: 'wifi', role: 'both' },
      n2k: { protocol: 'nmea2000', role: 'both', sends: [129283], hears: [127250] },
    },
  } as const;
  expect(found({ kind: 'display' }, { units: { ...units, gate }, joins })).toMatchObject([{ level: 'doubt' }]);
});

test('a gateway that only listens passes, and so does a boat whose pilot is on another bus', () => {
  expect(found({ kind: 'gateway', owner: { writes: 'listen-only' } })).toEqual([]);
  const apart = { units: gatewayAndPilot.units, joins: { nav: ['gate.n2k'], ship: ['pilot.n2k'] } };
  expect(found({ kind: 'gateway', owner: { writes: 'may-write' } }, apart)).toEqual([]);
});
