import { expect, test } from 'vitest';
import { aBoat } from '../../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../../core/plan.ts';
import type { Finding, LineEntry, Plan } from '../../../core/plan-shape.ts';
import { aPhase, aWork } from '../../../core/work/a-work.test-helper.ts';
import { aBus, aPlan, aReading } from '../../../papers/lists/a-plan.test-helper.ts';
import { stepIds } from '../route.ts';
import { courseFacts } from './course-facts.ts';

const factOf = (step: string, of: Plan = aPlan(), boat = aBoat().boat) => {
  const waypoint = courseFacts({ boat, plan: of }).find((one) => one.step === step);
  return [waypoint?.fact, waypoint?.state];
};

test('the course has the ten steps in the order of the job', () => {
  expect(courseFacts({ boat: aBoat().boat, plan: aPlan() }).map((one) => one.step)).toEqual([...stepIds]);
});

test('the work step says what it will take, then how far it has come, or that no order fits', () => {
  const { boat } = aBoat();
  const factWith = (work: Plan['work'], done: readonly string[] = []) => {
    const plan = aPlan(work === undefined ? {} : { work });
    const all = courseFacts({ boat, plan, done: new Map(done.map((job) => [job, '2027-04-05'])) });
    const waypoint = all.find(({ step }) => step === 'work');
    return [waypoint?.fact, waypoint?.state];
  };
  const work = aWork();
  expect(factOf('work')).toEqual(['being counted', 'open']);
  expect(factWith({ phases: [], leaving: [] })).toEqual(['nothing to do yet', 'open']);
  expect(factWith(work)).toEqual(['8 jobs, 4 days, 22.5 h dark', 'open']);
  expect(factWith(work, ['survey'])).toEqual(['1 of 8 jobs done', 'open']);
  expect(
    factWith(
      work,
      work.phases[0]?.jobs.map(({ id }) => id),
    ),
  ).toEqual(['8 of 8 jobs done', 'done']);
  const { order: _, ...bare } = aPhase();
  const stuck = { why: 'too-few-days' as const, jobs: [], functions: [], relax: [] };
  expect(factWith({ phases: [{ ...bare, stuck }], leaving: [] })).toEqual(['8 jobs, no order that fits', 'open']);
});

test('the prove step says what came out wrong, else how far the tests have come', () => {
  const { boat } = aBoat();
  const tests = plan(boat, new Map()).tests.slice(0, 2);
  const factWith = (tested?: { tried: number; wrong: number }) => {
    const told = tested === undefined ? undefined : { total: 2, ...tested };
    const waypoint = courseFacts({ boat, plan: aPlan({ tests }), tested: told }).find(({ step }) => step === 'prove');
    return [waypoint?.fact, waypoint?.state];
  };
  expect(factOf('prove')).toEqual(['nothing to test yet', 'open']);
  expect(factWith()).toEqual(['2 tests', 'open']);
  expect(factWith({ tried: 1, wrong: 0 })).toEqual(['1 of 2 tests tried', 'open']);
  expect(factWith({ tried: 2, wrong: 1 })).toEqual(['1 test came out wrong', 'open']);
  expect(factWith({ tried: 2, wrong: 0 })).toEqual(['2 of 2 tests tried', 'done']);
});

test('the binder step says what was given out last, and when', () => {
  const { boat } = aBoat();
  const given = { standing: 'planned', says: 'For the yard.', boat: '00' } as const;
  expect(factOf('binder')).toEqual(['not given out yet', 'open']);
  const revisions = [
    { mark: 'A', on: '2027-03-01', ...given },
    { mark: 'B', on: '2027-05-02', ...given },
  ];
  expect(factOf('binder', aPlan(), { ...boat, revisions })).toEqual(['B given out 2027-05-02', 'done']);
});

test('the boat step counts the lengths that are only guessed', () => {
  const { boat } = aBoat().change((draft) => {
    for (const way of draft.ways) {
      way.length.how = 'taped';
      way.known = 'seen';
    }
    const [first] = draft.ways;
    if (first !== undefined) first.length.how = 'guessed';
  });
  expect(factOf('boat', aPlan(), boat)).toEqual([`${boat.places.length} places, 1 length to tape`, 'open']);
});

test('the kit step leaves out what there is none of', () => {
  const { boat } = aBoat().change((draft) => {
    for (const unit of draft.kit) unit.fate = 'stays';
  });
  expect(factOf('kit', aPlan(), boat)[0]).toBe(`${boat.kit.length} stay`);
});

test('the needs step says how many arrive and on what that rests', () => {
  const readings = [aReading(), aReading({ rests: 'manual' }), aReading({ arrives: false })];
  expect(factOf('needs', aPlan({ readings }))).toEqual(['2 of 3 arrive, by typical sheets', 'open']);
  expect(factOf('needs', aPlan({ readings: [aReading({ rests: 'proved' })] }))).toEqual([
    '1 of 1 arrive, proved',
    'done',
  ]);
});

test('the lines step is done only when the layout is proven or fixed and breaks no limit', () => {
  expect(factOf('lines')).toEqual(['proven cheapest', 'done']);
  const { layout } = aBus();
  const with_ = (over: Partial<typeof layout>) => aPlan({ buses: [aBus({ layout: { ...layout, ...over } })] });
  expect(factOf('lines', with_({ status: 'gap', bound: 40_000_000 }))).toEqual([
    'within 3.0 % of the cheapest',
    'open',
  ]);
  expect(factOf('lines', with_({ broken: ['a drop is 7 m'] }))).toEqual(['breaks a limit', 'open']);
  expect(factOf('lines', aPlan({ buses: [] }))).toEqual(['no backbone', 'open']);
});

test('a line that no way leads for comes before how cheap the layout is', () => {
  const gaps = [{ kind: 'coax' as const, from: 'whip.coax', to: 'radio.antenna', serves: ['j'] }];
  expect(factOf('lines', aPlan({ gaps }))).toEqual(['1 line has no way', 'open']);
});

test('the power step names what lacks a feed before what is to be looked at, and that before the volts', () => {
  const { boat } = aBoat();
  const known = plan(boat, new Map());
  const feeds = known.lines.filter(({ kind }) => kind === 'feed').length;
  const [fact, state] = factOf('power', known);
  expect(fact).toMatch(new RegExp(`^${feeds} feeds, 1[0-2]\\.\\d\\d V at the worst plug$`));
  expect(state).toBe('done');
  const thirsty = { ...known, feeds: known.feeds.map((feed) => ({ ...feed, leastV: 12 })) };
  expect(factOf('power', thirsty)).toEqual([`${feeds} feeds, ${feeds} to look at`, 'open']);
  expect(factOf('power', { ...known, feeds: [], loads: [] })).toEqual([`${feeds} feeds`, 'open']);
  const loads = known.loads.map((load) => (load.source.by === 'bus' ? { ...load, minV: 12 } : load));
  const short = loads.filter(({ source }) => source.by === 'bus').length;
  expect(factOf('power', { ...known, loads })).toEqual([`${feeds} feeds, ${short} to look at`, 'open']);
  const unfed = aBoat().change((draft) => {
    for (const panel of draft.supply.panels) panel.circuits = [];
  }).boat;
  expect(factOf('power', plan(unfed, new Map()), unfed)).toEqual(['3 without a feed', 'open']);
});

test('the fit step counts what is to be looked at, and without such what must stand in the right place', () => {
  const site = { unit: 'whip', is: 'radio-antenna', place: 'mast', aboveWaterM: 12 } as const;
  const finding: Finding = { id: 'f', rule: 'compass/unit-too-near', level: 'doubt', about: [], says: 'Too near.' };
  expect(factOf('fit')).toEqual(['nothing to place yet', 'open']);
  expect(factOf('fit', aPlan({ sites: [site] }))).toEqual(['1 unit placed', 'done']);
  expect(factOf('fit', aPlan({ sites: [site], findings: [finding] }))).toEqual(['1 to look at', 'open']);
  const accepted = { ...finding, accepted: 'swung with it there' };
  const advice: Finding = { ...finding, level: 'advice' };
  const other = { ...finding, rule: 'power/drop-too-big' };
  expect(factOf('fit', aPlan({ sites: [site], findings: [accepted, other, advice] }))).toEqual([
    '1 unit placed',
    'done',
  ]);
});

test('the buy step counts the cables, and those whose length is a guess', () => {
  const line = (id: string, over: Partial<LineEntry> = {}): LineEntry => ({
    id,
    kind: 'drop',
    from: 'a.bus',
    to: 'nav',
    places: [],
    ways: [],
    lengthM: 1,
    longestM: 1,
    guessed: false,
    ...over,
  });
  const lines = [line('one'), line('two', { guessed: true }), line('three', { kept: ['old'] })];
  expect(factOf('buy', aPlan({ lines }))).toEqual(['2 cables, 1 by guess', 'open']);
  expect(factOf('buy', aPlan({ lines: [line('one')] }))[0]).toBe('1 cable, no length guessed');
  expect(factOf('buy')[0]).toBe('no cable to buy');
});
