import { expect, test } from 'vitest';
import type { ReadingEntry, SeenEntry } from '../../plan-shape.ts';
import { need, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import type { SourceEntry, SourceWay } from '../../sources-shape.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { readingsRules } from './index.ts';

const of = (rule: string, given: RuleCase) => told(readingsRules, `readings/${rule}`, given);

/** What tells the findings of a rule apart beside whom they are about. */
const idsOf = (id: string, given: RuleCase): string[] =>
  readingsRules
    .filter((rule) => rule.id === `readings/${id}`)
    .flatMap((rule) => findingsOf(rule, given).map((f) => f.id));

const arrived = (own: Partial<ReadingEntry> = {}): ReadingEntry => ({
  reading: 'ais-targets',
  at: 'screen',
  must: true,
  arrives: true,
  by: ['ais.n2k', 'screen.n2k'],
  backups: [],
  ...own,
});
const aisPgns = [129038, 129039, 129794, 129809, 129810];
const without = (...pgns: number[]): number[] => aisPgns.filter((pgn) => !pgns.includes(pgn));

test('names of AIS targets: what is missing of both lists, lowest first, between ports of a bus only', () => {
  const boat = (sends: (number | string)[], hears: (number | string)[]) =>
    wired({
      units: {
        ais: { ports: { n2k: { protocol: 'nmea2000', sends }, out: { protocol: 'nmea0183', sends: ['VDM'] } } },
        box: { ports: { in: { protocol: 'nmea0183', hears: ['VDM'] }, n2k: { protocol: 'nmea2000', sends: aisPgns } } },
        screen: { ports: { n2k: { protocol: 'nmea2000', hears }, in: { protocol: 'nmea0183', hears: ['VDM'] } } },
      },
      joins: { nav: ['ais.n2k', 'box.n2k', 'screen.n2k'] },
    });
  const said = (sends: (number | string)[], hears: (number | string)[], own?: Partial<ReadingEntry>) =>
    of('ais-names-missing', { boat: boat(sends, hears), plan: { readings: [arrived(own)] } });
  expect(said(without(129810), without(129794))).toEqual([
    'doubt ais.n2k screen screen.n2k: AIS targets reach screen, but not their names and sizes: message 129794, 129810 is missing from what is sent or what is heard. [ / ] Look the lists up in both manuals; a set that cannot send them wants an update or another place in the plan.',
  ]);
  expect(said(['position', 'ais-targets'], without(129809, 129810))).toEqual([
    'doubt ais.n2k screen screen.n2k: AIS targets reach screen, but not their names and sizes: message 129809, 129810 is missing from what is sent or what is heard. [ / ] Look the lists up in both manuals; a set that cannot send them wants an update or another place in the plan.',
  ]);
  expect(said(without(129794), [...aisPgns, 'ais-targets'])).toHaveLength(1);
  const none = without(129794);
  expect([
    said(none, none, { reading: 'position' }),
    said(none, none, { arrives: false }),
    said(none, none, { by: ['ais.out', 'screen.n2k'] }),
    said(none, none, { by: ['ais.n2k', 'screen.in'] }),
  ]).toEqual([[], [], [], []]);
  expect(said(aisPgns, none, { by: ['ais.n2k', 'box.in', 'box.n2k', 'screen.n2k'] })).toHaveLength(1);
});

const way = (from: string, own: Partial<SourceWay> = {}): SourceWay => ({
  from,
  by: [from],
  converters: 0,
  rests: 'typical',
  ...own,
});
const source = (own: Partial<SourceEntry> & Pick<SourceEntry, 'primary'>): SourceEntry => ({
  reading: 'heading',
  at: 'screen',
  chosen: 'better',
  backups: [],
  ...own,
});
const plain: UnitSketch = { ports: { n2k: { protocol: 'nmea2000' } } };
const three = wired({ units: { a: plain, b: plain, screen: plain }, joins: {} });

test('a second source that reads differently is told with both, how they differ, and the cure of that reading', () => {
  const said = (reading: 'heading' | 'depth' | 'speed-water', one: Partial<SourceWay>, other: Partial<SourceWay>) =>
    of('backup-reads-differently', {
      boat: three,
      plan: { sources: [source({ reading, primary: way('a.n2k', one), backups: [way('b.n2k', other)] })] },
    });
  const [magnetic, known] = [{ reference: 'magnetic' }, { reference: 'true' }] as const;
  expect(said('heading', magnetic, known)).toEqual([
    'doubt a b screen: Screen has heading from a and, should that fail, from b: as magnetic from the one and as true from the other, and no variation reaches it to make one from the other. When it changes over the figure jumps. [ / ] Set both to the same reference, or bring variation to the screen.',
  ]);
  expect([said('heading', known, known), said('heading', {}, known), said('heading', known, {})]).toEqual([[], [], []]);
  expect(said('heading', { reference: 'water' }, known)).toEqual([]);
  const [off, on] = [{ withOffset: false }, { withOffset: true }];
  expect(said('depth', on, off)).toEqual([
    'doubt a b screen: Screen has depth from a and, should that fail, from b: with its offset from the one and without from the other: below keel or surface here, below the transducer there. When it changes over the figure jumps. [ / ] Send DPT in place of DBT, or mark on the screen which of the two it shows.',
  ]);
  expect(said('depth', off, on)).toEqual([
    'doubt a b screen: Screen has depth from a and, should that fail, from b: without offset from the one and with it from the other: below the transducer here, below keel or surface there. When it changes over the figure jumps. [ / ] Send DPT in place of DBT, or mark on the screen which of the two it shows.',
  ]);
  expect([said('depth', on, on), said('depth', off, off), said('depth', {}, off), said('depth', off, {})]).toEqual([
    [],
    [],
    [],
    [],
  ]);
  expect([said('speed-water', on, off), said('depth', magnetic, known)]).toEqual([[], []]);
  const twice = [0, 1].map((instance) =>
    source({ reading: 'depth', instance, primary: way('a.n2k', on), backups: [way('b.n2k', off)] }),
  );
  expect(idsOf('backup-reads-differently', { boat: three, plan: { sources: twice } })).toEqual([
    'readings/backup-reads-differently:a,b,screen:depth:0',
    'readings/backup-reads-differently:a,b,screen:depth:1',
  ]);
});

test('two kinds of true wind are looked for in true wind alone', () => {
  const by = (reading: SourceEntry['reading'], at: string, reference: 'water' | 'ground') =>
    source({ reading, at, primary: way('a.n2k', { reference }) });
  const said = (...sources: SourceEntry[]) => of('true-wind-of-two-kinds', { boat: three, plan: { sources } });
  expect(said(by('wind-true', 'a', 'water'), by('course-speed-ground', 'b', 'ground'))).toEqual([]);
  expect(
    said(by('wind-true', 'a', 'water'), by('wind-true', 'b', 'ground'), by('wind-true', 'screen', 'ground')),
  ).toEqual([
    'doubt a b screen: True wind is reckoned with speed through the water for a, and with speed over ground for b and screen. In a stream of 2 kn the two differ by up to 2 kn. [ / ] Take true wind from one unit for all screens, or bring speed through the water to each that reckons it.',
  ]);
});

test('a chosen source is silent unless an entry has its reading, its number, its screen and its port', () => {
  const said = (own: object, ...sources: SourceEntry[]) =>
    of('chosen-source-silent', {
      boat: { ...three, sources: [{ reading: 'depth', primary: 'a.n2k', ...own }] },
      plan: { sources },
    });
  const entry = source({ reading: 'depth', instance: 1, primary: way('a.n2k') });
  expect(said({ instance: 1, at: 'screen' }, { ...entry, at: 'b' }, entry)).toEqual([]);
  expect(said({ instance: 1 }, { ...entry, reading: 'heading' }, entry)).toEqual([]);
  for (const other of [{ reading: 'heading' }, { instance: 2 }, { at: 'b' }, { primary: way('b.n2k') }] as const)
    expect(said({ instance: 1, at: 'screen' }, { ...entry, ...other })).toHaveLength(1);
  expect(said({ instance: 1, at: 'screen' })).toEqual([
    'doubt a.n2k screen: A was chosen to give depth 1 at screen, but it does not reach screen. The plan takes another where there is one. [ / ] Choose another source, or see why this one does not arrive.',
  ]);
  expect(said({})).toEqual([
    'doubt a.n2k: A was chosen to give depth, but it brings it to no screen. The plan takes another where there is one. [ / ] Choose another source, or see why this one does not arrive.',
  ]);
  const two = [0, 1].map((instance) => ({ reading: 'depth' as const, instance, primary: 'a.n2k' }));
  expect(idsOf('chosen-source-silent', { boat: { ...three, sources: two } })).toEqual([
    'readings/chosen-source-silent:a.n2k:depth:0',
    'readings/chosen-source-silent:a.n2k:depth:1',
  ]);
  expect(
    idsOf('chosen-source-silent', { boat: { ...three, sources: [{ reading: 'depth', primary: 'a.n2k' }] } }),
  ).toEqual(['readings/chosen-source-silent:a.n2k:depth']);
});

test('what is lost with the refit is gathered by reading and number, unless somebody asks for it', () => {
  const screens = { ...three, sheets: three.sheets.map((sheet) => ({ ...sheet, kind: 'display' })) };
  const seen = (own: Partial<SeenEntry>): SeenEntry => ({ reading: 'engine', at: 'a', by: [], after: false, ...own });
  const given = (before: SeenEntry[], ...needs: ReturnType<typeof need>[]): RuleCase => ({
    boat: { ...screens, needs },
    plan: { before },
  });
  const both = [seen({ instance: 0 }), seen({ instance: 1 }), seen({ instance: 1, at: 'b' })];
  expect(of('lost-with-the-refit', given(both))).toEqual([
    'doubt a b: Engine 1 was shown before on a and b, and no screen shows it after the refit. [ / ] Say at which screen it is still needed, or accept that it goes.',
    'doubt a: Engine 0 was shown before on a, and no screen shows it after the refit. [ / ] Say at which screen it is still needed, or accept that it goes.',
  ]);
  expect(idsOf('lost-with-the-refit', given([...both, seen({})]))).toEqual([
    'readings/lost-with-the-refit:a,b:engine:1',
    'readings/lost-with-the-refit:a:engine',
    'readings/lost-with-the-refit:a:engine:0',
  ]);
  expect(of('lost-with-the-refit', given(both, need('engine', 'screen', { instance: 1 })))).toEqual([
    expect.stringContaining('Engine 0 was shown before on a,'),
  ]);
  expect(of('lost-with-the-refit', given([seen({ instance: 1 }), seen({ instance: 2 })]))).toHaveLength(2);
  expect(of('lost-with-the-refit', given(both, need('engine', 'screen')))).toEqual([]);
  expect(of('lost-with-the-refit', given([seen({})], need('engine', 'screen', { instance: 1 })))).toEqual([]);
  expect(of('lost-with-the-refit', given(both, need('battery', 'screen')))).toHaveLength(2);
});

test('a reading that does not arrive is told about both ends of the broken link, with every cure that was tried', () => {
  const cures = [
    { says: 'Join them.', edits: [] },
    { says: 'Fit another.', edits: [] },
  ];
  const whyNot: ReadingEntry['whyNot'] = {
    link: { broken: 'not-joined', from: 'a.n2k', to: 'b.n2k' },
    says: 'Nothing joins them.',
    cures,
  };
  const given = { boat: three, plan: { readings: [arrived({ arrives: false, whyNot })] } };
  expect(of('needed-but-missing', given)).toEqual([
    'fault a.n2k b.n2k screen: AIS targets does not arrive at screen. Nothing joins them. [ / ] Join them.',
  ]);
  const [rule] = readingsRules.filter(({ id }) => id === 'readings/needed-but-missing');
  expect(rule === undefined ? [] : findingsOf(rule, given).map((finding) => finding.cures)).toEqual([cures]);
});
