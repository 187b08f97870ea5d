import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../../boat/a-boat.test-helper.ts';
import type { Boat, Cable } from '../../boat/boat-schema.ts';
import type { LineEntry, MastEntry, PlanDraft, WayEntry } from '../../plan-shape.ts';
import { told } from '../told.test-helper.ts';
import { waysRules } from './index.ts';

const of = (id: string, plan: Partial<PlanDraft>, boat: Boat = aBoat().boat) =>
  told(waysRules, `ways/${id}`, { boat, plan });
const ofBoat = (id: string, boat: Boat) => of(id, {}, boat);

const line = (own: Partial<LineEntry> = {}): LineEntry => ({
  id: 'pair:a.x~b.y',
  kind: 'pair',
  from: 'a.x',
  to: 'b.y',
  places: ['locker', 'helm'],
  ways: ['locker-helm'],
  lengthM: 3,
  longestM: 3.2,
  guessed: false,
  ...own,
});
type Way = Parameters<Parameters<BoatBuilder['change']>[0]>[0]['ways'][number];
const withWays = (own: Readonly<Record<string, Partial<Way>>>, boat = aBoat()): BoatBuilder =>
  boat.change((draft) => {
    for (const way of draft.ways) Object.assign(way, own[way.id]);
  });

test('what disturbs is told by itself, with the ways beside it and the angle of a crossing where there is one', () => {
  const { boat } = withWays({
    'locker-helm': { near: ['hf-coax', 'starter-cable'] },
    'helm-mast': { near: ['hf-coax'] },
    'locker-mast': { near: ['hf-coax'] },
  });
  const lines = [line(), line({ id: 'drop:c.x~nav', kind: 'drop', ways: ['helm-mast', 'locker-stern'] })];
  expect(of('beside-what-disturbs', { lines }, boat)).toEqual([
    'advice helm-mast locker-helm: New data cable runs beside the lead of an HF set: helm dash to mast base; electrical locker to helm dash. [ / 2] Keep the two 2 m apart, on opposite sides if need be.',
    'advice locker-helm: New data cable runs beside the starter cable: electrical locker to helm dash. [ / 0.15] Keep the two 0.15 m apart, on opposite sides if need be. Where they must cross, cross at 90 degrees.',
  ]);
  const both = withWays({ 'locker-helm': { near: ['hf-coax', 'starter-cable'] } }).boat;
  expect(of('beside-what-disturbs', { lines }, both)).toHaveLength(2);
});

const cable = (id: string, own: Partial<Cable> = {}): Cable => ({
  ...{ id, kind: 'coax', ways: ['locker-helm'], diameterMm: 6, condition: 'good', fate: 'goes' },
  ...{ from: { place: 'locker' }, to: { place: 'helm' }, length: { valueM: 3, how: 'taped' } },
  ...own,
});

test('dead cable is told as one or as many, by name where it has one', () => {
  const found = (...cables: Cable[]) =>
    ofBoat('dead-cable', aBoat().with({ cables }).boat).map((one) => one.replace(/ \[ .*/, ''));
  expect(found(cable('old-coax', { name: 'Coax of the old radio' }))).toEqual([
    'advice old-coax: One cable goes: Coax of the old radio (electrical locker to helm dash). The plan counts on the room it leaves.',
  ]);
  expect(found(cable('old-coax'), cable('old-lamp'))[0]).toMatch(
    /: 2 cables go: .*; old-lamp .* the room they leave\.$/,
  );
});

test('a way nobody has seen is told by its ends, with one cable or several', () => {
  const { boat } = withWays({ 'locker-stern': { known: 'assumed' } });
  const found = (...lines: LineEntry[]) => of('led-through-unseen-way', { lines }, boat);
  const said = (count: string) => [
    `doubt locker-stern: ${count} led from electrical locker to stern rail by a way nobody has seen. It is entered as 4.50 m and could be 4.60 m, or shut. [ / ] Open it, pull a messenger line through and tape it before the cable is ordered.`,
  ];
  const there = line({ ways: ['locker-stern', 'locker-stern'] });
  expect(found(there)).toEqual(said('One new cable is'));
  expect(found(there, there)).toEqual(said('2 new cables are'));
});

test('a mast parted in the wet is told by its foot and how many cables go up', () => {
  const mast = (...lines: string[]): MastEntry => ({
    ...{ foot: 'mast-base', top: 'stern-rail', stepped: 'deck', stepKnown: false, heightM: 12, weightKg: 1, holds: 6 },
    lines: lines.map((one) => ({ line: one, aloftM: 12, weightKg: 0.7 })),
  });
  const found = (...lines: string[]) => of('mast-parted-in-the-wet', { masts: [mast(...lines)] })[0];
  const where =
    'up the mast at mast base, and no dry place within reach is at its foot, where they could be parted when the mast is taken down. [ / ] Enter a dry box';
  expect(found('coax:a~b')).toContain(`fault mast-base: One new cable goes ${where}`);
  expect(found('coax:a~b', 'coax:c~d')).toContain(`fault mast-base: 2 new cables go ${where}`);
});

test('a cable without a route is told by unit, panel or bus, where ways lead to both its ends', () => {
  const gap = (from: string, to: string, kind: LineEntry['kind'] = 'pair') =>
    of(
      'no-route-for-line',
      { gaps: [{ kind, from, to, serves: ['radio-position'] }] },
      withWays({}).change((draft) => {
        draft.ways = draft.ways.filter(({ id }) => id !== 'locker-stern');
      }).boat,
    );
  const said = (kind: string, from: string, to: string) => [
    `fault radio-position: No way is found for the ${kind} cable from ${from} to ${to}: every road between them has a way that does not take it. [ / ] Add a way between the two, or allow this kind of cable on one that is there.`,
  ];
  expect(gap('converter.wires', 'radio.wires')).toEqual(said('pair', 'Converter for the old radio', 'Old radio'));
  expect(gap('main-panel/1', 'radio.dc', 'single-wire')).toEqual(said('single wire', 'main-panel', 'Old radio'));
  expect(gap('display.n2k', 'nav')).toEqual(said('pair', 'Helm display', 'Navigation bus'));
  expect([...gap('gnss.n2k', 'nav'), ...gap('nav', 'gnss.n2k'), ...gap('radio.dc', 'gnss.n2k')]).toEqual([]);
});

test('a place joined to nothing names what cannot be reached there', () => {
  const { boat } = aBoat()
    .unit('radio', { place: 'stern-rail' })
    .change((draft) => {
      draft.ways = draft.ways.filter(({ id }) => id !== 'locker-stern');
    });
  expect(ofBoat('place-joined-to-nothing', boat)).toEqual([
    'fault stern-rail: No way leads to stern rail, so no cable can reach GNSS on the stern rail, Old radio. [ / ] Add the way a cable can take to this place, or move the unit.',
  ]);
});

test('rated bulkheads are told together, each by its ends, its rating and the cables through it', () => {
  const found = (own: Parameters<typeof withWays>[0], ...lines: LineEntry[]) =>
    of('rated-bulkhead', { lines }, withWays(own).boat).map((one) => one.replace(/ \[ .*/, ''));
  const there = line({ ways: ['locker-helm', 'helm-mast'] });
  expect(found({ 'locker-helm': { through: 'fire' } }, there)).toEqual([
    'advice locker-helm: New cables pass a bulkhead that must stay tight: electrical locker to helm dash (fire, 1 new).',
  ]);
  expect(found({ 'locker-helm': { through: 'watertight' }, 'helm-mast': { through: 'fire' } }, there, line())).toEqual([
    'advice helm-mast locker-helm: New cables pass 2 bulkheads that must stay tight: helm dash to mast base (fire, 1 new); electrical locker to helm dash (watertight, 2 new).',
  ]);
});

test('a settled route is told by what is wrong with it, each route by itself', () => {
  const id = 'pair:converter.wires~radio.wires';
  const found = (ways: string[], own: Partial<LineEntry> = {}, at = id) =>
    of(
      'settled-route',
      { lines: [line({ id: at, from: 'converter.wires', to: 'radio.wires', ...own })] },
      aBoat().with({ pins: { routes: { [at]: { ways, state: 'fixed' } } } }).boat,
    );
  const said = (words: string) => [
    `doubt converter radio: The route settled for ${id} ${words} [ / ] Let the route go and settle it anew, or put right what it runs through.`,
  ];
  const long = { places: ['locker', 'mast-base', 'helm'], ways: ['locker-mast', 'helm-mast'] };
  const stray = said('does not lead from electrical locker to helm dash, so the plan leads it another way.');
  expect(found(['locker-mast'], long)).toEqual(stray);
  expect(found(['locker-mast', 'battery-locker'], { ...long, from: 'nav' })).toEqual(stray);
  const goesOn = said(
    'does not lead to where its tee stands, so the cable goes on from there: electrical locker to helm dash in all.',
  );
  expect([
    ...found(['locker-mast'], { ...long, from: 'nav' }),
    ...found(['helm-mast'], { ...long, to: 'nav' }),
  ]).toEqual([...goesOn, ...goesOn]);
  expect(found(['locker-mast'], { ...long, kept: ['old'] })).toEqual([]);
  const route = { ways: [], state: 'fixed' } as { ways: string[]; state: 'fixed' };
  const routes = { [id]: route, 'pair:converter.other~radio.other': route };
  expect(ofBoat('settled-route', aBoat().with({ pins: { routes } }).boat)).toHaveLength(2);
});

test('a way shorter than the straight line is told with both; a centimetre is not told', () => {
  const found = (valueM: number, toM: number) =>
    ofBoat(
      'shorter-than-straight',
      withWays({ 'locker-helm': { length: { valueM, how: 'taped' } } }).change((draft) => {
        for (const place of draft.places) if (place.id === 'helm') Object.assign(place, { xM: 4, yM: toM, zM: 0.9 });
      }).boat,
    ).filter((one) => one.includes('locker-helm'));
  expect(found(1.4, 1)).toEqual([
    'fault locker-helm: The way from electrical locker to helm dash is entered as 1.40 m, but the straight line between them is 1.80 m. It is counted as the straight line until one of the three is mended. [1.4 m / 1.8] Tape the way again, or correct where one of the two places is.',
  ]);
  expect([found(0.99, 0.2), found(0.989, 0.2)].map(({ length }) => length)).toEqual([0, 1]);
});

const full = (own: Partial<WayEntry>, boat = aBoat().boat) =>
  of(
    'way-too-full',
    {
      ways: [
        {
          ...{ id: 'locker-stern', boreMm: 25, kept: ['old'], lines: ['coax:a.x~b.y'], fillPct: 45, sharePct: 40 },
          ...{ leastBoreMm: 20, largestMm: 10.3, verdict: 'fits', reasons: [], ...own },
        },
      ],
    },
    boat,
  );

test('a full way is told with what it holds, how full it is and how it will be', () => {
  const said = (holds: string, says: string, cure: string, bore = '25 mm wide') =>
    `doubt locker-stern: The way from electrical locker to stern rail, ${bore}, is to hold ${holds}: 45 % of its bore. ${says} [45 % / 40] ${cure}`;
  const pull = 'Pull a messenger line first, draw all cables together, and reckon with hours for it.';
  const one = '1 cable that stays and 1 new cable';
  expect(full({})).toEqual([said(one, 'It will be a long, hard pull.', pull)]);
  const wider = `${pull} A bore of 32 mm would take all of it.`;
  expect(full({ sharePct: 45, fitsAtMm: 32 })).toEqual([said(one, 'It will be a tight fit.', wider)]);
  const still = 'Leave it as it is, and draw nothing more into it.';
  const nothing = 'Nothing new is led through it.';
  expect(full({ kept: ['a', 'b'], lines: [] })).toEqual([said('2 cables that stay', nothing, still)]);
  expect(full({ kept: [], lines: ['a', 'b'] })).toEqual([said('2 new cables', 'It will be a long, hard pull.', pull)]);
  const { boat } = withWays({ 'locker-stern': { bore: { mm: 25, how: 'guessed' } } });
  expect(full({}, boat)).toEqual([said(one, 'It will be a long, hard pull.', pull, '25 mm wide (a guess)')]);
});

test('a way that takes all is advice for two cables or three that jam, and none where nothing new goes in', () => {
  const found = (...reasons: WayEntry['reasons']) => full({ fillPct: 33.96, reasons });
  expect(found('jam', 'two-cables')[0]).toMatch(
    /^advice .*: 34 % of its bore. Two cables side by side .* \[34 % \/ 31\]/,
  );
  expect(found('jam')[0]).toMatch(/Three cables of one size may roll into a row there and jam\. \[34 % \/ 40\]/);
  expect([...found('plug'), ...full({ fillPct: 33, lines: [], reasons: ['jam', 'two-cables'] })]).toEqual([]);
});
