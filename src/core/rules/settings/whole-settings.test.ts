import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { type Boat, hullSchema } from '../../boat/boat-schema.ts';
import type { Measures } from '../../boat/measures.ts';
import type { ShipPapers } from '../../boat/ship-papers.ts';
import type { PlanDraft } from '../../plan-shape.ts';
import type { TypedEntry } from '../../settings-sheet-shape.ts';
import type { SettingEntry } from '../../sources-shape.ts';
import { boatPatterns } from '../../starting/patterns/index.ts';
import { told } from '../told.test-helper.ts';
import { settingsRules } from './index.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const tern = ternWithAis();
const of = (id: string, boat: Boat, plan: Partial<PlanDraft> = {}) =>
  told(settingsRules, `settings/${id}`, { boat, plan });

type Typed = NonNullable<Measures['typed']>[number];
const read = (unit: string, figure: number, own: Partial<Typed> = {}): Typed => ({
  ...{ unit, what: 'depth-offset', figure, in: 'm', ...own },
});
const entry = (kit: string, own: Partial<TypedEntry> = {}): TypedEntry => ({
  ...{ id: `${kit}:depth-offset`, kit, what: 'depth-offset', is: -1.1, reference: 'keel', ...own },
});
const standing = (agrees = false): Pick<TypedEntry, 'stands'> => ({
  stands: { shown: { figure: '', in: 'm' }, agrees },
});
const withTyped = (id: string, typed: Typed[], plan: Partial<PlanDraft>) =>
  of(id, { ...tern, measures: { typed } }, plan);

test('a bridge without its level is told by name and charted height, each by itself; without bridges none', () => {
  const bridge = (id: string, chartedM: number) => ({ id, on: '2027-06-01', name: `${id} bridge`, chartedM });
  const boat = ternWithAis({ sea: { bridges: [bridge('rail', 9.5), bridge('road', 17)] } });
  const said = (name: string, height: string) =>
    `fault : ${name} bridge is charted at ${height} m, and nobody said over which level: charts count from highest tide, mean high water, springs or a fixed level, metres apart. How high a tide she passes at is not computed.`;
  expect(of('bridge-without-datum', boat).map((one) => one.replace(/ \[.*/, ''))).toEqual([
    said('Rail', '9.50'),
    said('Road', '17.00'),
  ]);
  expect(of('bridge-without-datum', tern)).toEqual([]);
});

test('an AIS that comes is told to its owner under the flag that forbids it; one aboard already is not', () => {
  const papers: ShipPapers = { flag: 'US', workBy: 'owner' };
  const found = (own: Partial<Boat['kit'][number]> = {}, said = papers) =>
    of(
      'class-b-by-owner',
      aBoat()
        .with(ternWithAis({ papers: said }))
        .unit('ais', own).boat,
    );
  expect(found()).toEqual([
    'fault ais: AIS comes, and its owner sets it up: under the flag US number, name and size of an AIS class B are entered by its vendor or by one who installs marine radios for a living, in no event by the user. [ / ] Let the vendor enter them when it is bought: the settings sheet has every figure ready. Or say that an installer does it.',
  ]);
  expect(found({ fate: 'stays' })).toEqual([]);
  expect(found({}, { flag: 'US' })).toEqual([]);
  expect([...found({}, { workBy: 'owner' }), ...of('class-b-by-owner', tern)]).toEqual([]);
});

test('a figure typed in the wrong unit is told beside the one that is set there, where both are lengths', () => {
  const alarm = (figure: number, own: Partial<Typed> = {}) => read('display', figure, { what: 'depth-alarm', ...own });
  const others = [
    entry('radio', { what: 'depth-alarm', is: 1, ...standing() }),
    entry('display', { what: 'safety-depth', is: 1, ...standing() }),
    entry('display', { what: 'depth-alarm', is: 1 }),
  ];
  const found = (typed: Typed, own: Partial<TypedEntry> = {}) =>
    withTyped('feet-for-metres', [typed], {
      typed: [...others, entry('display', { what: 'depth-alarm', is: 4, ...standing(), ...own })],
    });
  const said = (figure: string, slip: string, isM: number) => [
    `doubt display: ${figure} stands in Helm display as depth alarm; by her measures it is 4.00 m. It is ${slip} [${isM} m / ] Look what unit that screen counts in, and type it anew.`,
  ];
  expect(found(alarm(13.1))).toEqual(said('13.1 m', 'about 3.28 times that: feet typed as metres?', 13.1));
  const third = 'about a third of that: metres typed as feet?';
  expect(found(alarm(4, { in: 'ft' }))).toEqual(said('4 ft', third, 1.2191999999999998));
  expect(found(alarm(0.667, { in: 'fm' }))[0]).toMatch(/^doubt display: 0\.667 fm .* metres typed as feet\? \[1\.2/);
  expect(found(alarm(13.1, { in: '°' as never }))).toEqual([]);
  expect(found(alarm(13.1), standing(true))).toEqual([]);
  const unknown = entry('display', { what: 'depth-alarm', ...standing() });
  const { is: _is, ...noFigure } = unknown;
  expect(withTyped('feet-for-metres', [alarm(13.1)], { typed: [noFigure] })).toEqual([]);
  expect(withTyped('feet-for-metres', [alarm(13.1)], { typed: others })).toEqual([]);
  expect(of('feet-for-metres', tern, { typed: [unknown] })).toEqual([]);
});

test('new gear is told by how high it reaches with its body over its place', () => {
  const found = (mostM: number) =>
    of(
      'higher-than-air-draft',
      aBoat().sheet('gnss-receiver', (sheet) => {
        sheet.body = { widthMm: 80, heightMm: 125, depthMm: 80 };
      }).boat,
      { airDraft: { valueM: mostM, mostM, how: 'taped', parts: [] } },
    );
  expect(found(1.7)).toEqual([
    'fault gnss: GNSS on the stern rail reaches 1.73 m over the water, the air draft is 1.70 m at its most: she becomes taller by it, and no chart and no bridge knows. [1.725 m / 1.7] Measure it when it stands, and enter it among the parts of the air draft.',
  ]);
  expect(found(1.725)).toEqual([]);
});

test('draft and air draft taken in feet are told beside the deepest and the highest of such boats', () => {
  const found = (hull: Partial<Boat['hull']>) =>
    of('measure-in-feet', { ...tern, hull: { ...tern.hull, lengthM: 10, ...hull } });
  const cure = 'Measure it, and enter it in metres or with its unit, such as 6 ft 5.';
  expect(found({ draftM: 5.8, airDraft: { valueM: 49, how: 'papers' } })).toEqual([
    `doubt : The air draft is 49.00 m on a boat of 10.00 m, where such boats have about 15.00 m: feet taken for metres? [49 m / ] ${cure}`,
    `doubt : The draft is 5.80 m on a boat of 10.00 m, where such boats have about 1.75 m: feet taken for metres? [5.8 m / ] ${cure}`,
  ]);
  expect(found({ kind: 'ketch', draftM: 4.9 })[0]).toContain('about 1.50 m:');
  expect(found({ kind: 'rigid-inflatable', draftM: 1.75, airDraft: { valueM: 3.8, how: 'papers' } })).toEqual([]);
  const kinds: ReadonlySet<string> = new Set(boatPatterns.map(({ kind }) => kind));
  expect(hullSchema.shape.kind.options.filter((kind) => !kinds.has(kind))).toEqual([]);
});

test('a number holds where nobody gave one', () => {
  expect(of('number-not-abroad', ternWithAis({ papers: { goesAbroad: true } }))).toEqual([]);
  expect(of('number-not-abroad', tern)).toEqual([]);
  const number = { digits: '000123456', from: 'private-registrar' } as const;
  expect(of('number-not-abroad', ternWithAis({ papers: { number } }))).toEqual([]);
});

const setting = (kit: string, does: SettingEntry['does'], source?: string): SettingEntry => ({
  ...{ id: `${kit}-${does}-${source}`, kit, does, readings: ['depth'], at: ['display'], ...(source && { source }) },
});

test('an offset set twice is told by both units, the second by how wrong it makes the depth', () => {
  const typed = [read('display', -9, { what: 'depth-alarm' }), read('compass', -1.1), read('display', -0.4)];
  const found = (...settings: SettingEntry[]) => withTyped('offset-in-two', [...typed, read('gnss', -2)], { settings });
  const behind = setting('display', 'no-offset', 'compass.n2k');
  const said = (owner: string, ownerName: string, there: string) => [
    `fault ${owner === 'gnss' ? 'display gnss' : `${owner} display`}: -0.40 m stands in Helm display and ${there} m in ${ownerName}: each adds its own, and the depth is wrong by 0.40 m. [-0.4 m / ] Set Helm display to 0, and prove every screen with a lead line.`,
  ];
  const compass = said('compass', 'Heading sensor at the mast', '-1.10');
  expect(found(behind)).toEqual(compass);
  const gnss = [setting('gnss', 'choose', 'compass.n2k'), setting('gnss', 'offset', 'gnss.n2k')];
  expect(found(...gnss, setting('compass', 'offset', 'compass.n2k'), behind)).toEqual(compass);
  expect(found(setting('gnss', 'offset', 'compass.n2k'), behind)).toEqual(
    said('gnss', 'GNSS on the stern rail', '-2.00'),
  );
  expect(found(setting('display', 'choose', 'compass.n2k'))).toEqual([]);
  expect(found(setting('display', 'offset', 'display.n2k'), behind)).toEqual([]);
  expect(of('offset-in-two', tern, { settings: [behind] })).toEqual([]);
});

test('an offset to the keel with a plus is told with what it should be, of the unit in which it is set', () => {
  const found = (typed: Typed[], ...entries: TypedEntry[]) => withTyped('offset-sign', typed, { typed: entries });
  const plus = [read('compass', 1.1)];
  const said = (wanted: string) => [
    `danger compass: +1.10 m stands in Heading sensor at the mast as the offset to the keel, which is ${wanted}: it shows more water than there is. [1.1 m / ] To the keel the offset has a minus, to the surface a plus. Type it anew and prove it with a lead line.`,
  ];
  const surface = { reference: 'surface' } as const;
  const around = [entry('radio', surface), entry('compass', { what: 'depth-alarm', ...surface })];
  expect(found(plus, ...around, entry('compass', { setElsewhere: true, ...surface }), entry('compass'))).toEqual(
    said('-1.10 m'),
  );
  const { is: _is, ...open } = entry('compass');
  expect(found(plus, open)).toEqual(said('a minus'));
  expect(found(plus, entry('compass'), entry('compass', surface))).toEqual([]);
  expect(found(plus, ...around)).toEqual([]);
  expect(found([read('compass', 1.1, { what: 'depth-alarm' })], entry('compass'))).toEqual([]);
  expect(of('offset-sign', tern, { typed: [entry('compass')] })).toEqual([]);
});

test('papers not asked for are told with their wait, from the office or from memory', () => {
  const paper = { for: ['ais', 'radio'], state: 'to-start' } as const;
  const shipPapers: PlanDraft['shipPapers'] = [
    { ...paper, for: [...paper.for], paper: 'ship-number', waitDays: 14, waitFrom: 'office' },
    { ...paper, for: ['ais'], paper: 'ship-radio-licence', waitDays: 28, waitFrom: 'memory' },
  ];
  expect(of('papers-not-started', tern, { shipPapers })).toEqual([
    'doubt ais: Not asked for yet: ship’s number (MMSI) (14 days), ship radio licence (some 28 days, from memory). What comes cannot be set up without. [ / ] Start them before you order, ask each office how long it takes, and note it at the step Fit.',
  ]);
});

test('each AIS whose size is wrong is told with its own figures', () => {
  const size = (kit: string, what: TypedEntry['what'], figure: string): TypedEntry =>
    entry(kit, { what, shown: { figure: '8', in: 'm' }, stands: { shown: { figure, in: 'm' }, agrees: false } });
  const typed = [size('ais', 'ais-bow', '2'), size('display', 'ais-port', '3'), size('ais', 'ais-stern', '6')];
  const said = (unit: string, words: string) =>
    `${unit} sends ${words}: other ships see her shifted from where she is. [ / ] Move the figures with the antenna: whole metres from the one it reckons from. Who may enter them stands on the settings sheet.`;
  expect(of('size-block-not-moved', tern, { typed })).toEqual([
    `fault ais: ${said('AIS', 'A, antenna to bow 2 m where it is 8 m, B, antenna to stern 6 m where it is 8 m')}`,
    `fault display: ${said('Helm display', 'C, antenna to port side 3 m where it is 8 m')}`,
  ]);
});

test('two numbers are told by set, against her papers or the first set that has one', () => {
  const found = (numbers: { radio?: string; ais?: string; second?: string }, papers?: ShipPapers, goes?: string) => {
    const second = { id: 'second', name: 'Second radio', sheet: 'fixed-radio', fate: 'stays', place: 'helm' } as const;
    const { boat } = aBoat()
      .with(ternWithAis(papers && { papers }))
      .add({ kit: [second] })
      .change((draft) => {
        for (const unit of draft.kit) {
          if (unit.id === goes) unit.fate = 'goes';
          const value = numbers[unit.id as keyof typeof numbers];
          if (value === undefined) continue;
          unit.aboard = {
            settings: [
              { name: 'Call sign', value: '999999999' },
              { name: 'MMSI', value },
            ],
          };
        }
      });
    return of('two-ship-numbers', boat);
  };
  const [mine, other] = ['000123456', '000654321'];
  const tail =
    ': one vessel has one number in all her own sets, and who searches for her looks for two. [ / ] Find out which is hers; most sets take a number once, so the other goes to its maker or a dealer.';
  expect(found({ radio: mine, ais: other, second: mine })).toEqual([
    `fault ais radio second: AIS has •••••••21, Old radio •••••••56${tail}`,
  ]);
  expect(found({ ais: mine, radio: other }, { number: { digits: mine, from: 'state' } })).toEqual([
    `fault radio: Old radio has •••••••21, her papers •••••••56${tail}`,
  ]);
  expect(found({ ais: mine, radio: other }, undefined, 'radio')).toEqual([]);
  expect([...found({ ais: mine, radio: '12 34' }), ...found({ radio: 'not noted' }), ...found({})]).toEqual([]);
});
