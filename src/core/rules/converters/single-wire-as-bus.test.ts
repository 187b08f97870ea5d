import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Kit } from '../../boat/boat-schema.ts';
import type { Protocol } from '../../boat/sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { singleWireAsBus } from './single-wire-as-bus.ts';

const wind = { id: 'wind', name: 'Wind unit', sheet: 'wind-sheet', fate: 'comes', place: 'helm' } as const;
const ear = { id: 'ear', name: 'Repeater', sheet: 'wind-sheet', fate: 'stays', place: 'helm' } as const;

const found = ({
  protocols = ['dc', 'single-wire'],
  fate = 'comes',
  joined = false,
  buses = true,
}: {
  protocols?: Protocol[];
  fate?: Kit['fate'];
  joined?: boolean;
  buses?: boolean;
}) => {
  const builder = aBoat().add({
    sheets: [
      {
        id: 'wind-sheet',
        name: 'Wind unit',
        kind: 'wind-sensor',
        source: 'typical',
        plugs: [],
        ports: protocols.map((protocol) => ({ id: protocol, protocol, role: 'both' })),
      },
    ],
    kit: [{ ...wind, fate }, ear],
    joins: joined
      ? [
          {
            id: 'wire',
            kind: 'single-wire',
            members: [
              { kit: 'wind', port: 'single-wire', as: 'talk' },
              { kit: 'ear', port: 'single-wire', as: 'listen' },
            ],
            hold: 'fixed',
          },
        ]
      : [],
  });
  const boat = buses ? builder.boat : builder.with({ buses: [], joins: [] }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(singleWireAsBus, { boat, plan: { joins } });
};

test('a unit on an old wire that is joined to another passes, and so does one that has been aboard all along', () => {
  expect(found({ joined: true })).toEqual([]);
  expect(found({ fate: 'stays' })).toEqual([]);
  expect(found({ fate: 'goes' })).toEqual([]);
});

test('a unit with a port for the bus beside its old wire passes, and so does a boat without a bus', () => {
  expect(found({ protocols: ['dc', 'single-wire', 'nmea2000'] })).toEqual([]);
  expect(found({ buses: false })).toEqual([]);
});

test('a unit bought for the bus that has only a single wire, joined to nothing, is a doubt about it', () => {
  expect(found({})).toMatchObject([{ level: 'doubt', about: ['wind'] }]);
});
