import { expect, test } from 'vitest';
import type { UnitSketch } from '../../readings/wired.test-helper.ts';
import { gatewayAndPilot, remoteBoat } from '../../remote/remote-boat.test-helper.ts';
import { guestWifiNotApart } from './guest-wifi-not-apart.ts';
import { findsRemote } from './remote-case.test-helper.ts';

const wifi = { protocol: 'wifi', role: 'both' } as const;
const eth = { protocol: 'ethernet', role: 'both' } as const;
const router = (together: string[]): UnitSketch => ({ ports: { air: wifi, lan: eth }, together: [together] });

const found = (apart: boolean, kind: string, guests = true) =>
  findsRemote(
    guestWifiNotApart,
    remoteBoat(
      {
        units: {
          router: apart ? { ports: { air: wifi, lan: eth } } : router(['air', 'lan']),
          other: { ports: { eth } },
        },
        joins: { cable: ['router.lan', 'other.eth'] },
      },
      { router: { kind: 'router', owner: guests ? { guests: 'air' } : {} }, other: { kind } },
    ),
  );

test('guests who reach a unit of the boat are advice', () => {
  const [finding] = found(false, 'display');
  expect(finding).toMatchObject({ level: 'advice', about: ['router'] });
  expect(finding?.says).toContain('from there other is in reach');
});

test('guests apart pass, and so do guests who reach only what leads ashore, and a wifi without guests', () => {
  expect(found(true, 'display')).toEqual([]);
  expect(found(false, 'satellite-terminal')).toEqual([]);
  expect(found(false, 'display', false)).toEqual([]);
});

test('guests who could write to a bus are a fault', () => {
  const boat = (writes: 'listen-only' | 'may-write') =>
    remoteBoat(gatewayAndPilot, { gate: { kind: 'gateway', owner: { guests: 'air', writes } } });
  expect(findsRemote(guestWifiNotApart, boat('may-write'))).toMatchObject([{ level: 'fault', about: ['gate'] }]);
  expect(findsRemote(guestWifiNotApart, boat('listen-only'))).toMatchObject([{ level: 'advice' }]);
});
