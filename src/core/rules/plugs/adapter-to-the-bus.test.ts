import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { adapterToTheBus } from './adapter-to-the-bus.ts';

const withPlug = (connector: string) => {
  const boat = aBoat().sheet('gnss-receiver', (sheet) => {
    for (const plug of sheet.plugs) plug.connector = connector;
  }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(adapterToTheBus, { boat, plan: { joins } });
};

test('the plugs of the bus and bare leads need no adapter', () => {
  for (const connector of ['n2k-micro', 'n2k-mini', 'leads']) expect(withPlug(connector)).toEqual([]);
});

test('a plug of its own is advice that names the unit, its plug and the bus', () => {
  expect(withPlug('maker-a-5')).toMatchObject([
    {
      level: 'advice',
      about: ['gnss.n2k', 'nav'],
      says: expect.stringMatching(/by a plug of its own \(maker-a-5\).*counts as drop/),
    },
  ]);
});

test('a plug of its own that is joined to no bus passes', () => {
  expect(findingsOf(adapterToTheBus, { plan: { joins: [] } })).toEqual([]);
});
