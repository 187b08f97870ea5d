import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { planLines } from '../../plan-lines.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { settledRoute } from './settled-route.ts';

const drop: LineEntry = {
  id: 'drop:display.bus~nav',
  kind: 'drop',
  from: 'display.bus',
  to: 'nav',
  places: ['helm'],
  ways: [],
  lengthM: 1,
  longestM: 1.2,
  guessed: false,
};

type Routes = NonNullable<NonNullable<Boat['pins']>['routes']>;

const radioLine = 'pair:converter.wires~radio.wires';
/** The findings on the small boat with settled routes, her lines as the plan really leads them. */
const found = (routes: Routes, ways: Boat['ways'] = aBoat().boat.ways) => {
  const { boat } = aBoat().with({ pins: { routes }, ways });
  const index = indexBoat(boat);
  const { lines } = planLines({ index, buses: [], joins: joinsOf(index, 1) });
  return findingsOf(settledRoute, { boat, plan: { lines: [...lines, drop] } });
};

test('a route round by the mast that leads from end to end is taken as it is', () => {
  expect(found({ [radioLine]: { ways: ['locker-mast', 'helm-mast'], state: 'fixed' } })).toEqual([]);
  expect(found({ [radioLine]: { ways: ['helm-mast', 'locker-mast'], state: 'fitted' } })).toEqual([]);
});

test('a route that stops half way, one for a line the boat does not have, and one for a drop are doubts', () => {
  const [half] = found({ [radioLine]: { ways: ['locker-mast'], state: 'fixed' } });
  expect(half).toMatchObject({ level: 'doubt', about: ['converter', 'radio'] });
  expect(half?.says).toContain('does not lead from electrical locker to helm dash');
  expect(found({ 'pair:nobody.a~nobody.b': { ways: [], state: 'fixed' } })[0]?.says).toContain('no such line');
  expect(found({ 'drop:display.bus~nav': { ways: [], state: 'fixed' } })[0]?.says).toContain('layout');
});

test('a route through a way that does not allow such a line stands, and is a doubt', () => {
  const ways = aBoat().boat.ways.map((way): Boat['ways'][number] =>
    way.id === 'helm-mast' ? { ...way, allows: ['coax'] } : way,
  );
  const [finding] = found({ [radioLine]: { ways: ['locker-mast', 'helm-mast'], state: 'fitted' } }, ways);
  expect(finding?.says).toContain('takes helm-mast, where no pair is allowed');
});
