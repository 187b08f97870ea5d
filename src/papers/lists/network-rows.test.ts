import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { NetworkEntry } from '../../core/plan-shape.ts';
import { networkRows } from './network-rows.ts';

const names = indexBoat(aBoat().boat);
const network = (hubs: NetworkEntry['hubs']): NetworkEntry => ({
  id: 'display',
  units: ['display', 'gnss'],
  hubs,
  radios: [],
});

test('a switch says its sockets, its cable and the place that takes less, and what it feeds', () => {
  const [row] = networkRows(names, {
    networks: [
      network([
        {
          kit: 'display',
          sockets: 5,
          free: 1,
          cableM: 20,
          best: { place: 'helm', cableM: 12 },
          reservedW: 7,
          budgetW: 30,
        },
      ]),
    ],
  });
  expect(row?.fact).toBe(
    '4 of 5 sockets used, 20.00 m of cable, 12.00 m from helm dash, feeds its sockets 7 W of 30 W',
  );
});

test('where no place takes less that is said, and two units joined straight are a row too', () => {
  const stands = { kit: 'display', sockets: 5, free: 1, cableM: 12, best: { place: 'helm', cableM: 12 } };
  expect(networkRows(names, { networks: [network([stands])] })[0]?.fact).toContain('least of all places');
  expect(networkRows(names, { networks: [network([])] })[0]?.fact).toBe('2 units joined without a switch');
});
