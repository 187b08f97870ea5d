import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Finding } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { sameInstanceTwice } from './same-instance-twice.ts';

/** A boat with two battery monitors on the bus, numbered as given. */
const withMonitors = (port: number, starboard: number): Boat =>
  aBoat()
    .add({
      sheets: [
        {
          id: 'monitor',
          name: 'Battery monitor',
          kind: 'battery-monitor',
          source: 'typical',
          plugs: [{ id: 'bus', connector: 'n2k-micro', gender: 'male' }],
          ports: [
            {
              id: 'n2k',
              onPlug: 'bus',
              protocol: 'nmea2000',
              role: 'talk',
              len: 1,
              sends: [{ pgn: 127508, everyMs: 1500 }],
            },
          ],
        },
      ],
      kit: [
        {
          id: 'monitor-a',
          name: 'House monitor',
          sheet: 'monitor',
          fate: 'comes',
          place: 'locker',
          instances: [{ port: 'n2k', reading: 'battery', instance: port }],
        },
        {
          id: 'monitor-b',
          name: 'Start monitor',
          sheet: 'monitor',
          fate: 'comes',
          place: 'locker',
          instances: [{ port: 'n2k', reading: 'battery', instance: starboard }],
        },
      ],
    })
    .change((boat) => {
      const join = boat.joins.find((one) => one.id === 'nav-join');
      for (const kit of ['monitor-a', 'monitor-b']) join?.members.push({ kit, port: 'n2k', as: 'both' });
    }).boat;

const found = (boat: Boat, phase = 1): Finding[] => findingsOf(sameInstanceTwice, { boat, plan: { phase } });

test('two batteries with numbers of their own pass', () => {
  expect(found(withMonitors(0, 1))).toEqual([]);
});

test('two batteries with one number are a fault about both units', () => {
  expect(found(withMonitors(1, 1))).toMatchObject([
    { level: 'fault', about: ['monitor-a', 'monitor-b', 'nav'], id: expect.stringMatching(/:battery:1$/) },
  ]);
});

test('a small boat without doubled numbers passes', () => {
  expect(found(aBoat().boat)).toEqual([]);
});
