import { expect, test } from 'vitest';
import { anEye, aSwitch } from '../../joins/network-boat.test-helper.ts';
import { findsOnNetwork } from './network-case.test-helper.ts';
import { twoCablesInOneSocket } from './two-cables-in-one-socket.ts';

const found = findsOnNetwork(twoCablesInOneSocket);

test('a socket of its own for each cable passes', () => {
  const units = { hub: aSwitch('locker'), one: anEye('helm'), two: anEye('helm') };
  expect(found(units, ['hub.p1 one.eth', 'hub.p2 two.eth'])).toEqual([]);
});

test('two cables in one socket of a switch with two others free are a fault that says so', () => {
  const units = { hub: aSwitch('locker'), one: anEye('helm'), two: anEye('helm') };
  const [finding, ...others] = found(units, ['hub.p1 one.eth', 'hub.p1 two.eth']);
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ level: 'fault', about: ['cable-0', 'cable-1', 'hub.p1'] });
  expect(finding?.cure).toContain('2 are free');
});

test('where every socket is taken a larger switch is the cure', () => {
  const units = { hub: aSwitch('locker', 3), a: anEye('helm'), b: anEye('helm'), c: anEye('helm'), d: anEye('helm') };
  const [finding] = found(units, ['hub.p1 a.eth', 'hub.p2 b.eth', 'hub.p3 c.eth', 'hub.p3 d.eth']);
  expect(finding?.cure).toContain('more sockets');
});
