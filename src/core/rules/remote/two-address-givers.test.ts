import { expect, test } from 'vitest';
import type { RemoteSaid } from '../../remote/remote-boat.test-helper.ts';
import { remoteBoat } from '../../remote/remote-boat.test-helper.ts';
import { findsRemote } from './remote-case.test-helper.ts';
import { twoAddressGivers } from './two-address-givers.ts';

const eth = { protocol: 'ethernet', role: 'both' } as const;

const found = (from: string, said: Readonly<Record<string, RemoteSaid>>) =>
  findsRemote(
    twoAddressGivers,
    remoteBoat(
      {
        units: {
          router: { ports: { 'lan-1': eth, 'lan-2': eth, wan: eth }, together: [['lan-1', 'lan-2']] },
          radar: { ports: { eth } },
        },
        joins: { cable: [from, 'radar.eth'] },
      },
      said,
    ),
  );
const gives = { sheet: { givesAddresses: true } } as const;

test('two givers on one network are a fault about both', () => {
  expect(found('router.lan-1', { router: gives, radar: { owner: { givesAddresses: true } } })).toMatchObject([
    { level: 'fault', about: ['radar', 'router'], measured: { value: 2 } },
  ]);
});

test('one giver passes, also where the owner has switched the other off', () => {
  expect(found('router.lan-1', { router: gives })).toEqual([]);
  expect(found('router.lan-1', { router: gives, radar: { ...gives, owner: { givesAddresses: false } } })).toEqual([]);
});

test('a router gives none on its outer socket', () => {
  expect(found('router.wan', { router: gives, radar: gives })).toEqual([]);
});
