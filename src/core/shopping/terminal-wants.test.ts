import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Plug } from '../boat/sheet.ts';
import type { LineEntry } from '../plan-shape.ts';
import { priceList } from '../prices/price-list.ts';
import { terminalWants } from './terminal-wants.ts';

const line: LineEntry = {
  id: 'feed:display.supply~main-panel',
  kind: 'feed',
  from: 'display.supply',
  to: 'main-panel',
  places: [],
  ways: [],
  lengthM: 3,
  longestM: 3.2,
  guessed: false,
};

const wanted = (plug: Partial<Plug>, areaMm2?: number) => {
  const { boat } = aBoat().sheet('small-display', (sheet) => {
    for (const entry of sheet.plugs) if (entry.id === 'supply') Object.assign(entry, plug);
  });
  const feeds = new Map(areaMm2 === undefined ? [] : [[line.id, { wire: 'picked', areaMm2 } as const]]);
  const input = { index: indexBoat(boat), prices: priceList(boat), buses: new Map(), feeds };
  return terminalWants(input, line);
};
const counts = (plug: Partial<Plug>, areaMm2?: number) => wanted(plug, areaMm2).map(({ id, count }) => [id, count]);

test('each conductor ends in a terminal at the panel, and at a unit that takes bare leads', () => {
  expect(counts({ connector: 'leads' }, 2)).toEqual([['crimp-terminal-2', 4]]);
});

test('a lead of the unit is joined', () => {
  const fixedLead = { valueM: 1, how: 'papers' } as const;
  expect(counts({ connector: 'leads', fixedLead }, 4)).toEqual([
    ['crimp-terminal-4', 2],
    ['crimp-joint-4', 2],
  ]);
});

test('the pull a crimp stands is that of the gauge not thinner (14 AWG 223 N, as a component maker specifies it)', () => {
  expect(wanted({ connector: 'leads' }, 2)[0]?.why).toContain('223 N for a minute');
});

test('a feed nobody sized takes none yet', () => {
  expect(counts({ connector: 'leads' })).toEqual([]);
});
