import { expect, test } from 'vitest';
import { layoutProblems } from '../../backbone/layout-problems.ts';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { planBuses } from '../../plan-buses.ts';
import { planLines } from '../../plan-lines.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { settledRoute } from './settled-route.ts';

type Routes = NonNullable<NonNullable<Boat['pins']>['routes']>;

const radioLine = 'pair:converter.wires~radio.wires';
/** The small boat with settled routes, her lines as the plan really leads them. */
const planned = (routes: Routes, ways: Boat['ways'] = aBoat().boat.ways) => {
  const { boat } = aBoat().with({ pins: { routes }, ways });
  const index = indexBoat(boat);
  const joins = joinsOf(index, 1);
  const buses = planBuses({ index, problems: layoutProblems(boat), layouts: new Map(), joins });
  return { boat, lines: planLines({ index, buses, joins }).lines };
};
const found = (...asked: Parameters<typeof planned>) => {
  const { boat, lines } = planned(...asked);
  return findingsOf(settledRoute, { boat, plan: { lines } });
};

test('a route round by the mast that leads from end to end is taken as it is', () => {
  expect(found({ [radioLine]: { ways: ['locker-mast', 'helm-mast'], state: 'fixed' } })).toEqual([]);
  expect(found({ [radioLine]: { ways: ['helm-mast', 'locker-mast'], state: 'fitted' } })).toEqual([]);
});

test('a route that stops half way, one for a line the boat does not have, and one for a trunk are doubts', () => {
  const [half] = found({ [radioLine]: { ways: ['locker-mast'], state: 'fixed' } });
  expect(half).toMatchObject({ level: 'doubt', about: ['converter', 'radio'] });
  expect(half?.says).toContain('does not lead from electrical locker to helm dash');
  expect(found({ 'pair:nobody.a~nobody.b': { ways: [], state: 'fixed' } })[0]?.says).toContain('no such line');
  const { lines } = planned({});
  const trunk = lines.find(({ kind }) => kind === 'trunk')?.id ?? '';
  expect(found({ [trunk]: { ways: ['helm-mast'], state: 'fixed' } })[0]?.says).toContain('where its layout leads it');
});

test('a route through a way that does not allow such a line stands, and is a doubt', () => {
  const ways = aBoat().boat.ways.map((way): Boat['ways'][number] =>
    way.id === 'helm-mast' ? { ...way, allows: ['coax'] } : way,
  );
  const [finding] = found({ [radioLine]: { ways: ['locker-mast', 'helm-mast'], state: 'fitted' } }, ways);
  expect(finding?.says).toContain('takes helm-mast, where no pair is allowed');
});

test('a drop that is settled to where its tee stands is taken as it is; one that stops short of it goes on, and is a doubt', () => {
  const line = 'drop:gnss.bus~nav';
  expect(found({ [line]: { ways: ['locker-stern'], state: 'fitted' } })).toEqual([]);
  // At the battery box there can be no tee: the drop comes back to one.
  const [beyond] = found({ [line]: { ways: ['locker-stern', 'battery-locker'], state: 'fixed' } });
  expect(beyond).toMatchObject({ level: 'doubt', about: ['gnss', 'nav'] });
  expect(beyond?.says).toContain('does not lead to where its tee stands');
  const [elsewhere] = found({ [line]: { ways: ['helm-mast'], state: 'fixed' } });
  expect(elsewhere?.says).toContain('another way');
});
