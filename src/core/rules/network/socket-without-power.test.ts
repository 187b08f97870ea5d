import { expect, test } from 'vitest';
import { anEye, aSwitch } from '../../joins/network-boat.test-helper.ts';
import { findsOnNetwork } from './network-case.test-helper.ts';
import { socketWithoutPower } from './socket-without-power.ts';

const found = findsOnNetwork(socketWithoutPower);

test('a camera of 4.8 W on a socket by 802.3af passes, and so does one with a lead of its own on a plain socket', () => {
  expect(found({ hub: aSwitch('locker', 3, { poe: 'af' }), eye: anEye('helm', 4.8) }, ['hub.p1 eye.eth'])).toEqual([]);
  expect(found({ hub: aSwitch('locker'), eye: anEye('helm') }, ['hub.p1 eye.eth'])).toEqual([]);
});

test('on a plain socket it stays dark', () => {
  const [finding] = found({ hub: aSwitch('locker'), eye: anEye('helm', 4.8) }, ['hub.p1 eye.eth']);
  expect(finding).toMatchObject({ level: 'fault', about: ['eye.eth', 'hub.p1'], measured: { value: 4.8, unit: 'W' } });
  expect(finding?.says).toContain('gives no power');
});

test('a lamp of 20 W wants more than 802.3af gives, and has it by 802.3at', () => {
  const lamp = anEye('helm', 20);
  expect(found({ hub: aSwitch('locker', 3, { poe: 'af' }), lamp }, ['hub.p1 lamp.eth'])[0]?.says).toContain(
    'gives 15.4 W',
  );
  expect(found({ hub: aSwitch('locker', 3, { poe: 'at' }), lamp }, ['hub.p1 lamp.eth'])).toEqual([]);
});
