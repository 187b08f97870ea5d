import { expect, test } from 'vitest';
import { gatewayAndPilot, remoteBoat } from '../../remote/remote-boat.test-helper.ts';
import { defaultPassword } from './default-password.ts';
import { findsRemote } from './remote-case.test-helper.ts';

const found = (password: 'changed' | 'default' | 'none' | 'unknown') =>
  findsRemote(defaultPassword, remoteBoat(gatewayAndPilot, { gate: { owner: { password } } }));

test('the password of the maker is a fault, and so is none', () => {
  expect(found('default')).toMatchObject([{ level: 'fault', about: ['gate'] }]);
  expect(found('none')[0]?.says).toContain('has no password');
});

test('a changed one passes, and one nobody knows of is not blamed', () => {
  expect(found('changed')).toEqual([]);
  expect(found('unknown')).toEqual([]);
});
