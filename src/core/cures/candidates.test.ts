import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { edits } from '../boat/edits/index.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { Cure } from '../plan-shape.ts';
import { arrivals, needKey } from '../readings/arrivals.ts';
import { refitOf } from '../readings/refit.ts';
import { need, wired } from '../readings/wired.test-helper.ts';
import { withCures } from './with-cures.ts';

const curesFor = (boat: Boat, key: string): readonly Cure[] => {
  const index = indexBoat(boat);
  const refit = refitOf(index, (phase) => joinsOf(index, phase));
  const readings = withCures({ refit, phase: 1, joins: joinsOf(index, 1), readings: arrivals(refit, 1) });
  return readings.find((entry) => needKey(entry) === key)?.whyNot?.cures ?? [];
};

/** The Tern with a display that takes a few more messages, and one more wish. */
const wanting = (pgn: number, reading: 'depth' | 'wind-apparent'): BoatBuilder =>
  aBoat()
    .sheet('small-display', (sheet) => {
      sheet.ports.find(({ id }) => id === 'n2k')?.hears?.push({ pgn });
    })
    .with({ needs: [need(reading, 'display')] });

const placesOf = (cures: readonly Cure[]): unknown[] => cures.map(({ edits: [add] }) => add?.params.place);

test('what must reach the water goes to the lowest place, and what must stand in the wind to the highest outside', () => {
  expect(placesOf(curesFor(wanting(128_267, 'depth').boat, 'depth  display'))[0]).toBe('battery-box');
  expect(placesOf(curesFor(wanting(130_306, 'wind-apparent').boat, 'wind-apparent  display'))[0]).toBe('stern-rail');
});

test('nothing is offered that costs many times what the cheapest does', () => {
  const boat = edits['remove-unit'].apply(aBoat().boat, { unit: 'gnss' });
  const costs = curesFor(boat, 'position  display').map(({ cost }) => cost ?? 0);
  expect(costs.length).toBeGreaterThan(0);
  expect(Math.max(...costs)).toBeLessThanOrEqual(4 * (costs[0] ?? 0) + 10_000);
  // a screen with an antenna of its own would bring the position as well, at many times the price
  expect(JSON.stringify(curesFor(boat, 'position  display'))).not.toContain('new-display');
});

test('a temperature probe is not put on the input of an echo sounder', () => {
  const boat = wired({
    units: {
      probe: { ports: { out: { protocol: 'analog', sends: ['water-temperature'] } } },
      sounder: {
        ports: {
          echo: { protocol: 'analog', hears: ['sonar-picture', 'depth', 'water-temperature'] },
          n2k: { protocol: 'nmea2000', sends: [130_312] },
        },
        turns: [{ fromPort: 'echo', toPort: 'n2k', carries: [{ reading: 'water-temperature' }] }],
      },
      screen: { ports: { n2k: { protocol: 'nmea2000', hears: [130_312] } } },
    },
    joins: { nav: ['sounder.n2k', 'screen.n2k'] },
    needs: [need('water-temperature', 'screen')],
  });
  const wires = curesFor(boat, 'water-temperature  screen').flatMap((cure) => cure.edits);
  expect(wires.filter(({ params }) => params.from === 'probe.out' && params.to === 'sounder.echo')).toEqual([]);
});

test('of the free sockets of a switch one is offered, and one that is taken is not', () => {
  const port = { protocol: 'ethernet', role: 'both' } as const;
  const boat = wired({
    units: {
      radar: { ports: { eth: { ...port, sends: ['radar-picture'], hears: [] } } },
      hub: { ports: { p1: { ...port }, p2: { ...port }, p3: { ...port } }, together: [['p1', 'p2', 'p3']] },
      screen: { ports: { eth: { ...port, sends: [], hears: ['radar-picture'] } } },
    },
    joins: { link: ['hub.p1', 'screen.eth'] },
    needs: [need('radar-picture', 'screen')],
  });
  const joined = curesFor(boat, 'radar-picture  screen').map(({ edits: [first] }) => first?.params);
  expect(joined).toEqual([{ from: 'radar.eth', to: 'hub.p2' }]);
});
