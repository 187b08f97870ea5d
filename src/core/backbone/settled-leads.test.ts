import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { planBuses } from '../plan-buses.ts';
import { planLines } from '../plan-lines.ts';
import { lineId } from '../ways/line-entry.ts';
import { layoutProblems } from './layout-problems.ts';

type Routes = NonNullable<NonNullable<Boat['pins']>['routes']>;

const planned = (routes: Routes, boat: Boat = aBoat().boat) => {
  const pinned: Boat = { ...boat, pins: { routes } };
  const index = indexBoat(pinned);
  const joins = joinsOf(index, 1);
  const problems = layoutProblems(pinned);
  const buses = planBuses({ index, problems, layouts: new Map(), joins });
  return { problem: problems[0], bus: buses[0]?.entry, ...planLines({ index, buses, joins }) };
};

const gnssDrop = 'drop:gnss.bus~nav';
const busFeed = 'feed:main-panel~nav';

test('a device whose drop is settled from the stern rail to the helm stands at the helm, with 4.5 and 2.2 m more tail', () => {
  const settled = planned({ [gnssDrop]: { ways: ['locker-helm', 'locker-stern'], state: 'fixed' } });
  expect(settled.problem?.devices.find(({ id }) => id === 'gnss.n2k')).toMatchObject({
    place: 'helm',
    tailMm: 300 + 4500 + 2200,
    maxTailMm: 300 + 4600 + 2300,
  });
  expect(settled.lines.find(({ id }) => id === gnssDrop)).toMatchObject({ lengthM: 7, pinned: 'fixed' });
});

test('a settled drop longer than 6 m stands, and the limit it breaks is told of', () => {
  const { bus, lines } = planned({ [gnssDrop]: { ways: ['locker-stern', 'locker-helm'], state: 'fitted' } });
  expect(lines.find(({ id }) => id === gnssDrop)?.ways).toEqual(['locker-stern', 'locker-helm']);
  expect(bus?.layout.broken.join()).toContain('gnss.n2k');
});

test('where a kept drop serves the unit, the cable says where it lies and not the settled route', () => {
  const boat = aBoat().change((draft) => {
    draft.cables.push({
      id: 'old-drop',
      kind: 'drop',
      from: { place: 'stern-rail', at: 'gnss.bus' },
      to: { place: 'locker' },
      serves: 'nav',
      ways: ['locker-stern'],
      length: { valueM: 5, how: 'taped' },
      diameterMm: 6,
      condition: 'good',
      fate: 'stays',
    });
  }).boat;
  const routes: Routes = { [gnssDrop]: { ways: ['locker-helm', 'locker-stern'], state: 'fixed' } };
  expect(planned(routes, boat).problem?.devices).toEqual(planned({}, boat).problem?.devices);
});

test('the feed of a bus takes its settled ways, and the lead to every place is counted by them', () => {
  const feedOf = ({ lines }: ReturnType<typeof planned>) => lines.find(({ id }) => id === busFeed);
  const free = planned({});
  const settled = planned({ [busFeed]: { ways: ['locker-mast', 'helm-mast'], state: 'fixed' } });
  expect(feedOf(free)).not.toHaveProperty('pinned');
  // From the locker by the mast to the helm: 2.7 and 1.9 m, and half a metre at the panel.
  expect(settled.problem?.feed.reach.find(({ place }) => place === 'helm')).toMatchObject({ mm: 2700 + 1900 + 500 });
  expect(feedOf(settled)?.lengthM).toBeGreaterThanOrEqual(5.1);
});

test('however a drop is settled, its line is as long as the figures of its bus say, and takes those ways first', () => {
  const { ways, kit } = aBoat().boat;
  const walk = (from: string, turns: readonly number[]): string[] => {
    const taken: string[] = [];
    let here = from;
    for (const turn of turns) {
      const next = ways.filter(({ id, ends }) => ends.includes(here) && !taken.includes(id));
      const way = next[turn % Math.max(1, next.length)];
      if (way === undefined) break;
      taken.push(way.id);
      here = way.ends[0] === here ? way.ends[1] : way.ends[0];
    }
    return taken;
  };
  fc.assert(
    fc.property(
      fc.constantFrom('gnss', 'compass', 'display', 'converter'),
      fc.array(fc.nat(3), { minLength: 1, maxLength: 4 }),
      (unit, turns) => {
        const taken = walk(kit.find(({ id }) => id === unit)?.place ?? '', turns);
        const line = lineId({ kind: 'drop', ends: [`${unit}.bus`, 'nav'] });
        const { bus, lines } = planned({ [line]: { ways: taken, state: 'fixed' } });
        const drop = lines.find(({ id }) => id === line);
        const order = drop?.from === 'nav' ? drop.ways.toReversed() : drop?.ways;
        expect(order?.slice(0, taken.length)).toEqual(taken);
        expect(drop?.lengthM).toBeCloseTo(bus?.drops.find(({ port }) => port === `${unit}.n2k`)?.lengthM ?? 0, 6);
      },
    ),
    { numRuns: 60 },
  );
});
