import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { PhaseItem, PhaseMissing, Provide } from '../../phases-shape.ts';
import type { ReadingEntry } from '../../plan-shape.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { phasesRules } from './index.ts';
import { twoPhases } from './phase-case.test-helper.ts';

const of = (rule: string, given: RuleCase) => told(phasesRules, `phases/${rule}`, given);

const idsOf = (id: string, given: RuleCase): string[] =>
  phasesRules.filter((rule) => rule.id === `phases/${id}`).flatMap((rule) => findingsOf(rule, given).map((f) => f.id));

const item = (id: string, count: number, own: Partial<PhaseItem> = {}): PhaseItem => ({
  id,
  item: id,
  kind: 'drop',
  count,
  by: 'piece',
  each: 100,
  ...own,
});

test('what is bought twice is told by the dearest of what is bought, not of what is saved', () => {
  const said = (cost: number, more: PhaseItem[], between: string[] = []) =>
    of('bought-twice', { plan: { phases: twoPhases({ costs: { cost, unpriced: 0, more, cures: [] }, between }) } });
  const dear = item('wire', 20, { each: 50 });
  expect(
    said(6200, [
      item('a', 0),
      item('b', -3, { each: 9000 }),
      item('c', 3, { each: 300 }),
      dear,
      item('d', 9, { each: undefined } as object),
    ]),
  ).toEqual([
    'advice wire: The phases of the refit buy for 62.00 EUR more than the work done at once would. The dearest is wire, with 2 more. [62 EUR / ] Look at what each phase buys, in phases.txt: buy the longer piece or the larger wire now, or bring a unit forward.',
  ]);
  expect(said(6200, [item('one', 1)])).toEqual([
    'advice one: The phases of the refit buy for 62.00 EUR more than the work done at once would. The dearest is one. [62 EUR / ] Look at what each phase buys, in phases.txt: buy the longer piece or the larger wire now, or bring a unit forward.',
  ]);
  expect(said(6200, [item('z', 4), item('y', 4), item('x', 4, { each: 99 })])[0]).toContain('advice y:');
  expect(said(6200, [dear], ['converter'])).toEqual([
    'advice converter: The phases of the refit buy for 62.00 EUR more than the work done at once would. Bought for the time between: Converter for the old radio; in the end no reading that is needed passes it. [62 EUR / ] Look at what each phase buys, in phases.txt: buy the longer piece or the larger wire now, or bring a unit forward.',
  ]);
  expect(said(6200, [dear], ['converter', 'radio'])).toEqual([
    'advice converter radio: The phases of the refit buy for 62.00 EUR more than the work done at once would. Bought for the time between: Converter for the old radio and Old radio; in the end no reading that is needed passes them. [62 EUR / ] Look at what each phase buys, in phases.txt: buy the longer piece or the larger wire now, or bring a unit forward.',
  ]);
  expect([said(0, [dear]), said(-1, [dear]), said(6200, [item('a', 0)])]).toEqual([[], [], []]);
  const [rule] = phasesRules.filter(({ id }) => id === 'phases/bought-twice');
  const bare = { plan: { phases: twoPhases({ costs: { cost: 1, unpriced: 0, more: [dear], cures: [] } }) } };
  expect(rule === undefined ? [] : findingsOf(rule, bare).map(({ cures }) => cures)).toEqual([undefined]);
});

const waits = (own: Partial<PhaseMissing> = {}): PhaseMissing => ({
  reading: 'engine',
  at: 'display',
  must: true,
  seenBefore: true,
  from: 2,
  ...own,
});
const arrives = (own: Partial<ReadingEntry>): ReadingEntry => ({
  reading: 'engine',
  at: 'display',
  must: true,
  arrives: true,
  by: ['display.n2k'],
  backups: [],
  ...own,
});

test('what waits is told with every reading by number, and with the units that come for it in that phase', () => {
  const { boat } = aBoat()
    .unit('compass', { phase: 2 })
    .unit('gnss', { phase: 2 })
    .unit('radio', { fate: 'stays' })
    .unit('converter', { fate: 'goes', phase: 2 });
  const given = (...missing: PhaseMissing[]): RuleCase => {
    const { phases, ...part } = twoPhases();
    const readings = [
      arrives({ instance: 1, by: ['compass.n2k', 'nothing.n2k', 'radio.wires', 'converter.n2k', 'display.n2k'] }),
      arrives({ instance: 0, by: ['gnss.n2k', 'display.n2k'] }),
      arrives({ instance: 1, at: 'radio', by: ['gnss.n2k', 'radio.n2k'] }),
      arrives({ reading: 'depth', instance: 1, by: ['gnss.n2k', 'display.n2k'] }),
    ];
    return {
      boat,
      plan: {
        phases: { ...part, phases: phases.map((entry) => (entry.phase === 1 ? { ...entry, missing } : entry)) },
        readings,
      },
    };
  };
  expect(of('must-waits-for-later', given(waits({ instance: 1 })))).toEqual([
    'doubt display: Helm display is aboard from phase 1 on and must show engine 1, which she had before and which arrives again in phase 2 only. [ / ] Fit Heading sensor at the mast in phase 1 already, or write down what serves until phase 2.',
  ]);
  expect(
    of(
      'must-waits-for-later',
      given(waits({ instance: 1 }), waits({ instance: 2 }), waits({ instance: 0 }), waits({ instance: 0 })),
    ),
  ).toEqual([
    'doubt display: Helm display is aboard from phase 1 on and must show engine 1 and engine 2 and engine 0, which she had before and which arrives again in phase 2 only. [ / ] Fit Heading sensor at the mast and GNSS on the stern rail in phase 1 already, or write down what serves until phase 2.',
  ]);
  expect(of('must-waits-for-later', given(waits({ instance: 5 })))).toEqual([
    'doubt display: Helm display is aboard from phase 1 on and must show engine 5, which she had before and which arrives again in phase 2 only. [ / ] Fit what brings it in phase 1 already, or write down what serves until phase 2.',
  ]);
  expect(idsOf('must-waits-for-later', given(waits({ instance: 1 }), waits({ instance: 0, from: 3 })))).toEqual([
    'phases/must-waits-for-later:display:2',
    'phases/must-waits-for-later:display:3',
  ]);
});

const tee = (own: Partial<Provide> = {}): Provide => ({
  id: 'tee',
  does: 'tee',
  at: 'mast-base',
  phase: 1,
  until: 2,
  for: ['compass'],
  bus: 'nav',
  now: 2500,
  later: 4450,
  ...own,
});
const messenger = (at: string, own: Partial<Provide> = {}): Provide => ({
  id: at,
  does: 'messenger',
  at,
  phase: 1,
  until: 2,
  for: [],
  closed: true,
  ...own,
});
const provided = (provide: Provide[], plan: RuleCase['plan'] = {}): RuleCase => ({
  plan: { phases: twoPhases({ provide }), ...plan },
});

test('tees are counted and told by their buses, with the trunks of those as the cure', () => {
  expect(of('nothing-provided', provided([tee(), tee({ count: 2, later: undefined } as object)]))).toEqual([
    'advice nav: 3 tees on Navigation bus will stand where none is left free before, and the trunk is opened again for each. [ / ] Lay the trunk of Navigation bus from the start as it will be in the end, each later tee capped.',
  ]);
  expect(of('nothing-provided', provided([tee({ bus: 'other' })]))).toEqual([
    'advice other: One tee on other will stand where none is left free before, and the trunk is opened again for each. [ / ] It costs 25.00 EUR now, about 44.50 EUR in parts and hours later.',
  ]);
  const [rule] = phasesRules.filter(({ id }) => id === 'phases/nothing-provided');
  const cured = (given: RuleCase) =>
    rule === undefined ? [] : findingsOf(rule, given).map(({ cures }) => cures?.map(({ says }) => says));
  expect(cured(provided([tee(), tee({ bus: 'other' })]))).toEqual([
    ['Lay the trunk of Navigation bus from the start as it will be in the end, each later tee capped.'],
  ]);
  expect(cured(provided([tee({ bus: 'other' }), messenger('locker-helm')]))).toEqual([undefined]);
});

test('ways are told by their ends, with what a messenger line costs where all of it is known', () => {
  const money = { now: 300, later: 1200 };
  expect(of('nothing-provided', provided([messenger('locker-helm', money)]))).toEqual([
    'advice locker-helm: Lines of phase 2 will go through the way from electrical locker to helm dash, closed up again after an earlier phase. [ / ] Leave a messenger line in each closed way, tied off at both ends and labelled. It costs 3.00 EUR now, about 12.00 EUR in parts and hours later.',
  ]);
  expect(
    of('nothing-provided', provided([messenger('locker-helm', money), messenger('locker-stern', { now: 300 })])),
  ).toEqual([
    'advice locker-helm locker-stern: Lines of phase 2 will go through ways from electrical locker to helm dash; from electrical locker to stern rail, closed up again after an earlier phase. [ / ] Leave a messenger line in each closed way, tied off at both ends and labelled.',
  ]);
  expect(of('nothing-provided', provided([messenger('locker-helm', { later: 1200 })]))[0]).not.toContain('It costs');
});

test('a finding a phase that names five things at most', () => {
  const ways = ['battery-locker', 'helm-mast', 'locker-helm', 'locker-mast', 'locker-stern'].map((id) => messenger(id));
  const given = provided([
    messenger('locker-helm', { until: 10 }),
    messenger('locker-mast', { until: 9 }),
    ...ways,
    tee(),
    { ...tee({ until: 12 }), does: 'plug', closed: true },
  ]);
  expect(idsOf('nothing-provided', given)).toEqual([
    'phases/nothing-provided:battery-locker,helm-mast,locker-helm,locker-mast,locker-stern:2',
    'phases/nothing-provided:locker-helm:10',
    'phases/nothing-provided:locker-mast:9',
  ]);
  expect(of('nothing-provided', given).map((said) => said.slice(0, 200))).toEqual([
    'advice battery-locker helm-mast locker-helm locker-mast locker-stern: Lines of phase 2 will go through ways from battery box to electrical locker; from helm dash to mast base; from electrical locker t',
    'advice locker-helm: Lines of phase 10 will go through the way from electrical locker to helm dash, closed up again after an earlier phase. [ / ] Leave a messenger line in each closed way, tied off at ',
    'advice locker-mast: Lines of phase 9 will go through the way from electrical locker to mast base, closed up again after an earlier phase. [ / ] Leave a messenger line in each closed way, tied off at b',
  ]);
});
