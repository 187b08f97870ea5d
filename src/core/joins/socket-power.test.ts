import { expect, test } from 'vitest';
import { poeClasses } from '../facts/ethernet.ts';
import { anEye, aSwitch, netBoat } from './network-boat.test-helper.ts';
import { reservedW, socketGivesW, socketLoads } from './socket-power.ts';

test.each([
  [3.84, 4],
  [4.8, 7],
  [6.49, 7],
  [12.95, 15.4],
  [25.5, 30],
  [51, 60],
  [71.3, 90],
])(
  'a unit of %d W reserves %d W at its socket (IEEE 802.3af, at and bt class figures, second-hand)',
  (deviceW, sourceW) => {
    expect(reservedW(deviceW)).toBe(sourceW);
  },
);

test('no class gives a unit of 80 W what it needs', () => {
  expect(reservedW(80)).toBeUndefined();
});

test('what is reserved always leaves the unit what it draws', () => {
  for (let deviceW = 0.5; deviceW <= 71; deviceW += 0.5) {
    const row = poeClasses.find(({ sourceW }) => sourceW === reservedW(deviceW));
    expect(row?.deviceW).toBeGreaterThanOrEqual(deviceW);
  }
});

test('a unit that lives on its cable is found at either end of it, with the socket it hangs on', () => {
  for (const cable of ['hub.p1 eye.eth', 'eye.eth hub.p1']) {
    const { index, networks } = netBoat(
      { hub: aSwitch('locker', 3, { poe: 'af' }), eye: anEye('helm', 4.8), plain: anEye('helm') },
      [cable, 'hub.p2 plain.eth'],
    );
    const loads = networks.flatMap((network) => socketLoads(index, network));
    expect(loads).toMatchObject([{ port: 'eye.eth', deviceW: 4.8, sourceW: 7, socket: { id: 'hub.p1' } }]);
    expect(loads.map(({ socket }) => socketGivesW(socket))).toEqual([15.4]);
  }
});
