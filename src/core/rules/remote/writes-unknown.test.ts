import { expect, test } from 'vitest';
import { gatewayAndPilot, remoteBoat } from '../../remote/remote-boat.test-helper.ts';
import { findsRemote } from './remote-case.test-helper.ts';
import { writesUnknown } from './writes-unknown.ts';

const found = (gate: object, pilot: object = {}) =>
  findsRemote(writesUnknown, remoteBoat(gatewayAndPilot, { gate: { kind: 'gateway', ...gate }, pilot }));

test('a gateway nobody has looked at is a doubt, once', () => {
  expect(found({})).toMatchObject([{ level: 'doubt', about: ['gate'] }]);
});

test('one that is known passes either way', () => {
  expect(found({ owner: { writes: 'listen-only' } })).toEqual([]);
  expect(found({ owner: { writes: 'may-write' } })).toEqual([]);
});

test('one that reaches a pilot is spoken of as that', () => {
  expect(found({}, { steers: true })).toEqual([]);
});
