import { expect, test } from 'vitest';
import { anEye, aSwitch, type NetUnit } from '../../joins/network-boat.test-helper.ts';
import { findsOnNetwork } from './network-case.test-helper.ts';
import { socketsOverloaded } from './sockets-overloaded.ts';

const found = findsOnNetwork(socketsOverloaded);

/** A switch with sockets by 802.3at whose supply leaves them `budgetW`. */
const fed = (budgetW: number): NetUnit => ({
  ...aSwitch('locker', 3, { poe: 'at' }),
  power: [{ port: 'p1', typical: 5, max: 5 + budgetW, unit: 'W', behaves: 'power', minV: 10, maxV: 32 }],
});
const lamps = { one: anEye('helm', 20), two: anEye('helm', 20) };
const cables = ['hub.p2 one.eth', 'hub.p3 two.eth'];

test('two lamps of class 4 reserve 60 W, which a supply of 60 W gives', () => {
  expect(found({ hub: fed(60), ...lamps }, cables)).toEqual([]);
});

test('a supply of 45 W does not', () => {
  const [finding] = found({ hub: fed(45), ...lamps }, cables);
  expect(finding).toMatchObject({
    about: ['hub'],
    measured: { value: 60, unit: 'W' },
    limit: { value: 45, unit: 'W' },
  });
});
