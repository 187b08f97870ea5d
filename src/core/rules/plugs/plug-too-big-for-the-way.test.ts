import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { plan } from '../../plan.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { holeBoat, holeLine } from '../../shopping/hole-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { plugTooBigForTheWay } from './plug-too-big-for-the-way.ts';

const drop: LineEntry = {
  id: 'drop:gnss.bus~nav',
  kind: 'drop',
  from: 'gnss.bus',
  to: 'nav',
  places: ['stern-rail', 'locker'],
  ways: ['locker-stern'],
  lengthM: 4.8,
  longestM: 5,
  guessed: false,
};
const found = (boreMm: number, line: Partial<LineEntry> = {}) => {
  const boat = aBoat().change((draft) => {
    for (const way of draft.ways) if (way.id === 'locker-stern') way.bore = { mm: boreMm, how: 'taped' };
  }).boat;
  return findingsOf(plugTooBigForTheWay, { boat, plan: { lines: [{ ...drop, ...line }] } });
};

test('a moulded plug of 16 mm passes a 16 mm hole', () => {
  expect(found(16)).toEqual([]);
});

test('through a 12 mm gland it is a doubt about that way', () => {
  expect(found(12)).toMatchObject([
    { level: 'doubt', about: ['locker-stern'], measured: { value: 12 }, limit: { value: 16, unit: 'mm' } },
  ]);
});

test('cable that lies there already, and lines of other kinds, are not spoken of', () => {
  expect(found(12, { kept: ['old'] })).toEqual([]);
  expect(found(12, { kind: 'coax', to: 'radio.antenna' })).toEqual([]);
});

test('PW-88 and PW-87: beside one 6.1 mm cable a 16 mm plug does not pass 20 mm; beside 8 and 7 mm in 25 mm a trial tells', () => {
  const beside = (boreMm: number, diameters: readonly number[]) => {
    const { boat } = aBoat()
      .change((draft) => {
        for (const way of draft.ways) if (way.id === 'locker-stern') way.bore = { mm: boreMm, how: 'taped' };
      })
      .with({
        cables: diameters.map((diameterMm, n) => ({
          id: `old-${n}`,
          kind: 'coax',
          from: { place: 'locker' },
          to: { place: 'stern-rail' },
          ways: ['locker-stern'],
          length: { valueM: 5, how: 'taped' },
          diameterMm,
          condition: 'good',
          fate: 'stays',
        })),
      });
    return findingsOf(plugTooBigForTheWay, { boat, plan: { lines: [drop] } }).map(({ says }) => says);
  };
  expect(beside(20, [6.1])).toEqual([expect.stringContaining('does not pass beside the cable in it')]);
  expect(beside(25, [8, 7])).toEqual([expect.stringContaining('whether it passes beside the cables in it')]);
  expect(beside(32, [8, 7])).toEqual([]);
});

const told = (ask: Parameters<typeof holeBoat>[0]) =>
  plan(holeBoat(ask), new Map()).findings.filter(({ rule }) => rule === plugTooBigForTheWay.id);

test('what the plan counts on comes first, and the other two with their prices', () => {
  const [finding, ...others] = told({ roundM: 90 });
  expect(others).toEqual([]);
  expect(finding?.cure).toMatch(
    /^Cut its plug off at one end and fit one behind the hole \(about 26 EUR\); or widen the hole to 16 mm \(about 75 EUR\); or lead it another way \(about 162 EUR\)\.$/,
  );
  expect(finding?.cures?.map(({ edits }) => edits)).toEqual([
    [],
    [],
    [{ edit: 'pin-route', params: { line: holeLine, ways: ['round'], state: 'fixed' } }],
  ]);
});

test('a cable that is led round the hole is advice, which says what the hole would cost', () => {
  const [finding, ...others] = told({ roundM: 2.5 });
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ level: 'advice', about: ['hole'] });
  expect(finding?.says).toContain('is led another way');
  expect(finding?.cure).toContain('(about 4 EUR); or cut its plug off');
});

test('cable by the metre is advice: it is drawn before it has a plug', () => {
  expect(told({ shelf: {} })).toMatchObject([{ level: 'advice' }]);
  expect(told({ shelf: {} })[0]?.cure).toContain('Draw the cable before it gets its plugs (at no cost)');
});

test('a cable that lies in its way already has passed', () => {
  expect(told({ state: 'fitted' })).toEqual([]);
});
