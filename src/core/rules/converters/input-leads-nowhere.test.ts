import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { inputLeadsNowhere } from './input-leads-nowhere.ts';

/** The small boat whose converter also has a 0183 input, wired to an old log, with the turns given. */
const found = (turnsBack: boolean) => {
  const boat = aBoat()
    .sheet('converter-0183', (sheet) => {
      sheet.ports.push({ id: 'in', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'listen' });
      if (turnsBack) sheet.turns?.push({ fromPort: 'in', toPort: 'n2k', carries: [{ reading: 'speed-water' }] });
    })
    .add({
      sheets: [
        {
          id: 'old-log',
          name: 'Old log',
          kind: 'log',
          source: 'typical',
          plugs: [{ id: 'wires', connector: 'leads', gender: 'none' }],
          ports: [
            {
              id: 'out',
              onPlug: 'wires',
              protocol: 'nmea0183',
              baud: 4800,
              role: 'talk',
              sends: [{ sentence: 'VHW' }],
            },
          ],
        },
      ],
      kit: [{ id: 'log', name: 'Old log', sheet: 'old-log', fate: 'stays', place: 'helm' }],
      joins: [
        {
          id: 'log-pair',
          kind: 'nmea0183',
          members: [
            { kit: 'log', port: 'out', as: 'talk' },
            { kit: 'converter', port: 'in', as: 'listen' },
          ],
          hold: 'fixed',
        },
      ],
    }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(inputLeadsNowhere, { boat, plan: { joins } });
};

test('an input that is carried on passes', () => {
  expect(found(true)).toEqual([]);
});

test('a wired input that leads nowhere is a fault about the join and the port', () => {
  expect(found(false)).toMatchObject([{ level: 'fault', about: ['converter.in', 'log-pair'] }]);
});
