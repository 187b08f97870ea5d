import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { aBus } from './a-plan.test-helper.ts';
import { backboneFigures } from './backbone-figures.ts';

const figures = (over = {}, boat = aBoat().boat) =>
  Object.fromEntries(backboneFigures({ boat, bus: aBus(over) }).map((figure) => [figure.name, figure]));

test('each figure of a backbone stands beside its limit', () => {
  const { trunk, load, layout, price, ...rest } = figures();
  expect(rest['longest wait']?.value).toBe('4.5 ms to steer by, 47.4 ms to 60.8 ms for any message');
  expect(trunk?.value).toBe('12.95 m of 100');
  expect(rest['longest drop']?.value).toBe('3.40 m of 6');
  expect(rest['drops together']?.value).toBe('10.70 m of 78');
  expect(rest['lowest volts']?.value).toBe('11.20 V, least 9');
  expect(load?.value).toBe('26 LEN, 1.30 A');
  expect(price?.value).toBe('412.40 EUR');
  expect(layout?.value).toBe('proven, nothing cheaper');
  expect(Object.values(figures()).filter((figure) => figure.over)).toEqual([]);
});

test('a limit the owner set stands in place of the published one, with the owner’s reason', () => {
  const { boat } = aBoat().with({ limits: { 'nmea2000-one-drop': { value: 3, reason: 'old cable' } } });
  expect(figures({}, boat)['longest drop']).toMatchObject({ value: '3.40 m of 3', over: true });
  expect(figures({}, boat)['longest drop']?.source).toContain('old cable');
});

test('a trunk that may be too long with its doubts against it is marked, though its length as entered is not', () => {
  expect(figures({ lengthM: 99, longestM: 101 }).trunk).toMatchObject({ value: '99.00 m of 100', over: true });
});

test('a device below its least volts is marked', () => {
  const volts = [{ port: 'a.n2k', lowestV: 8.9, dropV: 2 }];
  expect(figures({ volts })['lowest volts']?.over).toBe(true);
});

test('a bus that is asked for more than it carries is marked, and steering keeps its wait', () => {
  const traffic = { averagePct: 90, worstPct: 102, wait: { steeringMs: 1.28 } };
  expect(figures({ traffic })['longest wait']).toMatchObject({
    value: '1.3 ms to steer by, no bound for the rest: more may be sent than the bus carries',
    over: true,
  });
});

test('a bus that draws more than its fuse lets through has one in each leg: 60 LEN are 3.00 A, 61 are 3.05 A', () => {
  const legs = [
    { towards: 'helm', amps: 1.6, ampMetres: 4 },
    { towards: 'mast-base', amps: 1.5, ampMetres: 4 },
  ];
  expect(figures({ legs, fuseA: 3, len: 60 })['fuse at the feed']?.value).toBe('at most 3 A');
  expect(figures({ legs, fuseA: 3, len: 61 })['fuse at the feed']?.value).toBe(
    'at most 3 A in each leg; one for both would not bear 3.05 A',
  );
});
