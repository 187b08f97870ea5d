import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import type { BusEntry } from '../../plan-shape.ts';
import type { RuleCase } from '../rule-case.test-helper.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { busRules } from './index.ts';

const told = (id: string, given: RuleCase): readonly string[] => toldBy(busRules, `bus/${id}`, given);

const cable = (
  id: string,
  kind: 'trunk' | 'drop',
  ends: readonly [string, string],
  own: Partial<Cable> = {},
): Cable => ({
  id,
  kind,
  from: { place: ends[0] },
  to: { place: ends[1] },
  serves: 'nav',
  ways: [],
  length: { valueM: 3, how: 'taped' },
  diameterMm: 6.5,
  condition: 'good',
  fate: 'stays',
  ...own,
});

test('a kept trunk of which one way is off the trunk is none of it, and is told by its name', () => {
  const cables = [
    cable('old', 'trunk', ['helm', 'mast-base'], { ways: ['locker-helm', 'helm-mast'], name: 'the old run' }),
  ];
  expect(told('cable-left-on-the-bus', { boat: aBoat().with({ cables }).boat })).toEqual([
    'doubt nav old: The cable the old run is to stay and serve Navigation bus, but starts and ends on its trunk and closes a ring: a ring has no ends for the terminators, and a cut in it is never found. [ / ] Fix the layout so that the bus uses it, or enter it as going.',
  ]);
  const thrice = ['a', 'b', 'c'].map((id) => cable(id, 'trunk', ['locker', 'helm'], { ways: ['locker-helm'] }));
  const left = told('cable-left-on-the-bus', { boat: aBoat().with({ cables: thrice }).boat });
  expect(left.map((one) => one.slice(0, 12))).toEqual(['doubt b nav:', 'doubt c nav:']);
});

test('a terminator in a drop is told by the name of its cable', () => {
  const drop = (own: Partial<Cable>) =>
    told('terminator-on-a-drop', {
      boat: aBoat().with({ cables: [cable('old', 'drop', ['locker', 'stern-rail'], { terminator: true, ...own })] })
        .boat,
    })[0];
  expect(drop({})).toMatch(/^fault nav old: The cable old has a terminator and lies on a drop of Navigation bus/);
  expect(drop({ name: 'stern lead' })).toMatch(/^fault nav old: The cable stern lead has a terminator and lies/);
});

/** Her trunk from the helm by the locker to the mast, fitted or only planned, with these cables and units that end it. */
const terminators = (
  cables: readonly Cable[],
  {
    ended = [],
    isFitted = false,
    bus = {},
  }: { ended?: readonly string[]; isFitted?: boolean; bus?: Partial<BusEntry> } = {},
) =>
  told('terminators-too-many-or-few', {
    boat: aBoat().change((draft) => {
      draft.cables.push(...cables);
      for (const sheet of draft.sheets) if (ended.includes(sheet.id)) sheet.terminator = true;
      if (isFitted)
        draft.pins = { layouts: { nav: { grade: 'light', walk: [{ place: 'helm', tees: [] }], state: 'fitted' } } };
    }).boat,
    bus,
  });
const takeOut = 'Keep one at each end of the trunk and take out the others.';
const fitIt = 'Fit the one that is missing.';
const right = 'ohm is read between the data wires; right is 60, from one at each end.';
const trunk = (id: string, ends: readonly [string, string], terminator?: boolean): Cable =>
  cable(id, 'trunk', ends, terminator === undefined ? {} : { terminator });

test('too many terminators are told by what holds them and where', () => {
  const atMast = trunk('fore', ['locker', 'mast-base'], true);
  expect(terminators([atMast], { ended: ['gnss-receiver'] })).toEqual([
    `fault fore gnss.n2k nav: Navigation bus has 3 terminators: GNSS on the stern rail and the cable fore each hold one at mast base. With the power off about 40 ${right} [3 terminators / 2] ${takeOut}`,
  ]);
  const between: Partial<BusEntry> = { walk: [{ place: 'helm', tees: [] }], ends: ['helm', 'mast-base'] };
  expect(terminators([trunk('middle', ['locker', 'stern-rail'], true)], { bus: between })).toEqual([
    `fault middle nav: Navigation bus has 3 terminators: the cable middle holds one between the ends. With the power off about 40 ${right} [3 terminators / 2] ${takeOut}`,
  ]);
});

test('of two units that end the bus one at each end is right, and both at the helm are one too many there', () => {
  expect(terminators([], { ended: ['small-display', 'gnss-receiver'] })).toEqual([]);
  const walk = [
    { place: 'helm', tees: ['display.n2k', 'gnss.n2k', 'feed'] },
    { place: 'mast-base', via: 'helm-mast', tees: [] },
  ];
  expect(terminators([], { ended: ['small-display', 'gnss-receiver'], bus: { walk } })).toEqual([
    `fault display.n2k gnss.n2k nav: Navigation bus has 3 terminators: Helm display and GNSS on the stern rail each hold one at helm dash. With the power off about 40 ${right} [3 terminators / 2] ${takeOut}`,
  ]);
});

test('a unit between the ends and a drop count where the ends are already wrong', () => {
  const walk = [
    { place: 'helm', tees: ['display.n2k'] },
    { place: 'locker', via: 'locker-helm', tees: ['gnss.n2k'] },
    { place: 'mast-base', via: 'locker-mast', tees: [] },
  ];
  const cables = [
    trunk('fore', ['locker', 'mast-base'], true),
    trunk('more', ['locker', 'mast-base'], true),
    cable('stub', 'drop', ['locker', 'stern-rail'], { terminator: true }),
  ];
  const said = terminators(cables, { ended: ['gnss-receiver'], bus: { walk } });
  expect(said).toEqual([
    `fault fore more nav: Navigation bus has 5 terminators: the cable fore and the cable more each hold one at mast base. With the power off about 24 ${right} [5 terminators / 2] ${takeOut}`,
  ]);
  expect(terminators([], { ended: ['gnss-receiver'], bus: { walk } })).toEqual([]);
});

test('a trunk with both ends at one place has two terminators there, not three', () => {
  const walk = [
    { place: 'helm', tees: ['display.n2k'] },
    { place: 'locker', via: 'locker-helm', tees: [] },
    { place: 'helm', via: 'locker-helm', tees: ['gnss.n2k'] },
  ];
  const bus: Partial<BusEntry> = { walk, ends: ['helm', 'helm'] };
  const ended = ['small-display', 'gnss-receiver'];
  expect(terminators([], { ended, bus })).toEqual([]);
  expect(terminators([trunk('aft', ['helm', 'locker'], true)], { ended, bus })[0]).toMatch(/has 3 terminators/);
});

test('a cable along the whole trunk ends it where nothing else does', () => {
  const whole = trunk('whole', ['helm', 'mast-base'], true);
  expect(terminators([whole], { ended: ['small-display'] })).toEqual([]);
  expect(terminators([whole], { ended: ['gnss-receiver'] })).toEqual([]);
  expect(terminators([whole, { ...whole, id: 'other' }])).toEqual([]);
});

test('a fitted trunk bare at an end is told by that end, at both by both; what is not known is not bare', () => {
  const fore = trunk('fore', ['locker', 'mast-base'], false);
  expect(terminators([fore], { isFitted: true })).toEqual([
    `fault mast-base nav: Navigation bus has 1 terminator: its end at mast base is bare. With the power off about 120 ${right} [1 terminators / 2] ${fitIt}`,
  ]);
  expect(terminators([trunk('whole', ['helm', 'mast-base'], false)], { isFitted: true })).toEqual([
    `fault helm mast-base nav: Navigation bus has 0 terminators: its end at helm dash is bare; its end at mast base is bare. With the power off nothing is read between the data wires; right is 60, from one at each end. [0 terminators / 2] ${fitIt}`,
  ]);
  expect(terminators([fore, trunk('more', ['locker', 'mast-base'])], { isFitted: true })).toEqual([]);
  expect(terminators([fore])).toEqual([]);
});

test('one too many at an end and none at the other are told together', () => {
  const cables = [
    trunk('aft', ['helm', 'locker'], false),
    trunk('fore', ['locker', 'mast-base'], true),
    trunk('more', ['locker', 'mast-base'], true),
  ];
  expect(terminators(cables, { isFitted: true })).toEqual([
    `fault fore helm more nav: Navigation bus has 2 terminators: the cable fore and the cable more each hold one at mast base; its end at helm dash is bare. With the power off about 60 ${right} [2 terminators / 2] ${takeOut}`,
  ]);
});
