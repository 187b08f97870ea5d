import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { messagesGoRound } from './messages-go-round.ts';

const back = (reading: 'position' | 'depth'): Sheet => ({
  id: 'gateway-back',
  name: 'Gateway back to the bus',
  kind: 'converter',
  source: 'typical',
  plugs: [
    { id: 'bus', connector: 'n2k-micro', gender: 'male' },
    { id: 'wires', connector: 'leads', gender: 'none' },
  ],
  ports: [
    { id: 'n2k', onPlug: 'bus', protocol: 'nmea2000', role: 'both', len: 1 },
    { id: 'in', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'listen' },
  ],
  turns: [{ fromPort: 'in', toPort: 'n2k', carries: [{ reading }] }],
});

const found = (reading: 'position' | 'depth') => {
  const boat = aBoat()
    .add({
      sheets: [back(reading)],
      kit: [{ id: 'second', name: 'Second gateway', sheet: 'gateway-back', fate: 'comes', place: 'helm' }],
    })
    .change((draft) => {
      draft.joins.find(({ id }) => id === 'nav-join')?.members.push({ kit: 'second', port: 'n2k', as: 'both' });
      draft.joins.find(({ id }) => id === 'radio-position')?.members.push({ kit: 'second', port: 'in', as: 'listen' });
    }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(messagesGoRound, { boat, plan: { joins } });
};

test('a converter and a gateway that carry different readings pass', () => {
  expect(found('depth')).toEqual([]);
});

test('a position carried out by one and back in by the other is a fault about bus and both', () => {
  expect(found('position')).toMatchObject([{ level: 'fault', about: ['converter', 'nav', 'second'] }]);
});
