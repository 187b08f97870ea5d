import { expect, test } from 'vitest';
import { gatewayAndPilot, remoteBoat } from '../../remote/remote-boat.test-helper.ts';
import { findsRemote } from './remote-case.test-helper.ts';
import { writesWithoutNeed } from './writes-without-need.ts';

const found = (owner: object, pilot: object = {}) =>
  findsRemote(writesWithoutNeed, remoteBoat(gatewayAndPilot, { gate: { kind: 'gateway', owner }, pilot }));

test('SC-02 (no authentication on the bus, common practice): a wireless gateway that writes without need is to be set to listen only', () => {
  const [finding] = found({ writes: 'may-write', mustWrite: false });
  expect(finding).toMatchObject({ level: 'doubt', about: ['gate'] });
  expect(finding?.cure).toContain('Set it to listen only');
});

test('where nobody has said who needs it, it is advice', () => {
  expect(found({ writes: 'may-write' })).toMatchObject([{ level: 'advice', about: ['gate'] }]);
});

test('one that must write, one that only listens and one that reaches a pilot are not spoken of here', () => {
  expect(found({ writes: 'may-write', mustWrite: true })).toEqual([]);
  expect(found({ writes: 'listen-only' })).toEqual([]);
  expect(found({ writes: 'may-write', mustWrite: false }, { kind: 'pilot-computer', steers: true })).toEqual([]);
});
