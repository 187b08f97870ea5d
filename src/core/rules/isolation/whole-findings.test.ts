import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { BondEntry, IsolationEntry, ShieldEntry, StrayWay } from '../../isolation-shape.ts';
import { aSteelBoat, withMetal } from '../../steel-boat.test-helper.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { isolationRules } from './index.ts';

const sound: IsolationEntry = { hull: 'metal', negatives: [], ways: [], shields: [], unknown: [] };
const joins = [
  {
    id: 'patch',
    kind: 'ethernet' as const,
    members: ['display', 'radio', 'display'].map((kit) => ({ kit, port: 'eth', as: 'both' as const })),
    from: 'file' as const,
    lines: [],
  },
  {
    id: 'trunk-line',
    kind: 'nmea0183' as const,
    members: ['display', 'radio', 'gnss', 'converter'].map((kit) => ({ kit, port: 'out', as: 'both' as const })),
    from: 'file' as const,
    lines: [],
  },
];
const told = (id: string, own: Partial<IsolationEntry>, { boat } = aBoat()) =>
  toldBy(isolationRules, `isolation/${id}`, { boat, plan: { isolation: { ...sound, ...own }, joins } });

const shield = (own: Partial<ShieldEntry>): ShieldEntry => ({
  id: 'shield',
  of: ['nav'],
  kind: 'bus',
  earths: [
    { at: 'helm', by: 'file', says: 'at the helm' },
    { at: 'locker', by: 'file', says: 'at the locker' },
  ],
  verdict: 'twice',
  ...own,
});
const round = 'A current goes round through it, and the lines inside hear it. [2 earths / ]';
const keepOne =
  'Keep one of the 2, lift the others and insulate their ends. With the one lifted too, more than 1 Mohm must be left between shield and ground.';

test('a shield earthed twice is told by what it is of and where, a bridge only where it joins buses', () => {
  const found = (own: Partial<ShieldEntry>) => told('shield-earthed-twice', { shields: [shield(own)] });
  const meets = 'meets earth at the helm and at the locker.';
  expect(found({})).toEqual([`fault helm locker nav: The shield of Navigation bus ${meets} ${round} ${keepOne}`]);
  expect(found({ of: ['aft', 'nav'] })).toEqual([
    `fault aft helm locker nav: The shield of aft and Navigation bus ${meets} A bridge carries it from one bus to the other. ${round} ${keepOne}`,
  ]);
  expect(found({ kind: 'ethernet', of: ['patch'] })).toEqual([
    `fault helm locker patch: The shield of the network cable of Helm display and Old radio ${meets} ${round} ${keepOne}`,
  ]);
  expect(found({ kind: 'cable', of: ['patch', 'gone'] })[0]).toContain(
    'The shield of the cable of Helm display and Old radio meets earth at the helm and at the locker. A current',
  );
  expect(found({ verdict: 'once' })).toEqual([]);
});

test('a shield of many units names three of them, of three all', () => {
  const named = (of: readonly string[]) =>
    told('shield-not-earthed', {
      shields: [shield({ kind: 'cable', of: [...of], verdict: 'nowhere', earths: [] })],
    })[0];
  expect(named(['trunk-line'])).toContain(
    ': The shield of the cables of Helm display, Old radio, GNSS on the stern rail and others is earthed nowhere',
  );
  const three = joins.map((join) => ({ ...join, members: join.members.slice(0, 3) }));
  expect(
    toldBy(isolationRules, 'isolation/shield-not-earthed', {
      plan: {
        joins: three,
        isolation: {
          ...sound,
          shields: [shield({ kind: 'cable', of: ['trunk-line'], verdict: 'nowhere', earths: [] })],
        },
      },
    })[0],
  ).toContain('of the cable of Helm display and Old radio and GNSS on the stern rail is earthed nowhere');
});

test('a shield earthed nowhere is cured at the feed of a bus, at the talker of a cable', () => {
  const nowhere = (own: Partial<ShieldEntry>) =>
    told('shield-not-earthed', { shields: [shield({ verdict: 'nowhere', earths: [], ...own })] });
  expect(nowhere({})).toEqual([
    'doubt nav: The shield of Navigation bus is earthed nowhere, so it keeps nothing out. [ / ] Earth it at one point, where the bus is fed, and carry it through insulated everywhere else.',
  ]);
  expect(nowhere({ kind: 'ethernet', of: ['patch'] })).toEqual([
    'doubt patch: The shield of the network cable of Helm display and Old radio is earthed nowhere, so it keeps nothing out. [ / ] Earth it at one end only, that of the unit that talks.',
  ]);
});

test('units nobody has looked at are named up to four, and counted beyond', () => {
  const cure =
    'With its plugs pulled, measure from the minus lead of each to its case, and from its case to the hull: both open is well. Enter `mount` and, from its manual, `earthing`.';
  const four = 'Helm display, Old radio, GNSS on the stern rail, Converter for the old radio';
  expect(told('not-looked-at', { unknown: ['display', 'radio', 'gnss', 'converter'] })).toEqual([
    `doubt display radio: Of 4 of the units that usually touch metal nobody has said whether they join the minus to the hull: ${four}. [4 units / ] ${cure}`,
  ]);
  expect(told('not-looked-at', { unknown: ['display', 'radio', 'gnss', 'converter', 'compass', 'x'] })).toEqual([
    `doubt display radio: Of 6 of the units that usually touch metal nobody has said whether they join the minus to the hull: ${four} and 2 more. [6 units / ] ${cure}`,
  ]);
});

const bond = (kind: BondEntry['kind'], unit: string): BondEntry => ({
  id: `${kind}:${unit}`,
  ends: ['a', 'b'],
  kind,
  about: [unit],
  says: `${unit} by its ${kind}`,
  sure: true,
});
const way = (bonds: readonly BondEntry[], own: Partial<StrayWay> = {}): StrayWay => ({
  id: 'way',
  meets: 'hull',
  from: 'negative:house',
  to: 'hull',
  bonds: [...bonds],
  sure: true,
  cure: { bond: 'x', says: 'Part it there.' },
  ...own,
});
/** The Tern with a unit of each kind that has a rule of its own. */
const kinds = ['transducer', 'radar', 'audio', 'hailer', 'loudspeaker', 'display'].reduce(
  (boat, kind) => withMetal(boat, { id: kind, kind, mount: 'metal' }),
  aSteelBoat(),
);
const topics = [
  'transducer-to-hull',
  'radar-base-to-hull',
  'speaker-to-hull',
  'braid-to-hull',
  'case-to-hull',
  'engine-not-isolated',
  'supplies-tied',
];
/** The rule that speaks of a way, and of all of them only one may. */
const spokenBy = (one: StrayWay): readonly string[] =>
  topics.filter((id) => told(id, { ways: [one] }, kinds).length > 0);

test('of a way the rule speaks whose thing stands on the metal last', () => {
  expect(spokenBy(way([bond('mount', 'transducer')]))).toEqual(['transducer-to-hull']);
  expect(spokenBy(way([bond('water', 'transducer')], { meets: 'water' }))).toEqual(['transducer-to-hull']);
  expect(spokenBy(way([bond('mount', 'radar')]))).toEqual(['radar-base-to-hull']);
  for (const kind of ['audio', 'hailer', 'loudspeaker'])
    expect(spokenBy(way([bond('mount', kind)]))).toEqual(['speaker-to-hull']);
  expect(spokenBy(way([bond('mount', 'display')]))).toEqual(['case-to-hull']);
  expect(spokenBy(way([bond('braid', 'display')]))).toEqual(['braid-to-hull']);
  // What merely lies on the way does not count, nor what stood before the last.
  expect(spokenBy(way([bond('case', 'radar')]))).toEqual(['case-to-hull']);
  expect(spokenBy(way([bond('mount', 'radar'), bond('mount', 'transducer')]))).toEqual(['transducer-to-hull']);
  expect(spokenBy(way([bond('mount', 'radar'), bond('braid', 'display')]))).toEqual(['radar-base-to-hull']);
});

test('an engine and another supply come before what stands there', () => {
  expect(spokenBy(way([bond('mount', 'radar')], { meets: 'engine' }))).toEqual(['engine-not-isolated']);
  expect(spokenBy(way([bond('poles', 'display'), bond('mount', 'radar')]))).toEqual(['engine-not-isolated']);
  expect(spokenBy(way([bond('mount', 'radar')], { meets: 'supply', to: 'negative:start' }))).toEqual(['supplies-tied']);
});

test('a way is told joint by joint, with what meets what and what parts it', () => {
  const [one] = told('case-to-hull', { ways: [way([bond('case', 'display'), bond('mount', 'display')])] }, kinds);
  expect(one).toMatch(
    /^fault display: Display by its case\. Display by its mount\. So the minus meets the hull away from the one named point: .*\. \[ \/ \] Part it there\.$/,
  );
  const { cure: _, ...uncured } = way([bond('mount', 'display')], { sure: false, meets: 'water' });
  expect(told('case-to-hull', { ways: [uncured] }, kinds)[0]).toMatch(
    /^doubt display: Display by its mount\. If that is so, the minus meets the water away .* Ask its maker for one whose metal is not its minus, or stand it where it meets no other metal\.$/,
  );
  const tied = way([bond('case', 'display')], { meets: 'supply', to: 'negative:start' });
  expect(told('supplies-tied', { ways: [tied] }, kinds)[0]).toContain(
    'So the minus of house and that of start meet away',
  );
  expect(
    told('engine-not-isolated', { ways: [way([bond('case', 'display')], { meets: 'engine' })] }, kinds)[0],
  ).toContain('So the minus meets the engine away');
});

test('two ways of one unit that end by different joints are two findings', () => {
  const ways = [
    way([bond('case', 'display'), bond('mount', 'display')]),
    way([{ ...bond('case', 'display'), id: 'case:other' }]),
  ];
  expect(told('case-to-hull', { ways }, kinds)).toHaveLength(2);
});

test('a housing of metal is told of the hull it goes through, and not one that goes', () => {
  const log = { id: 'log', kind: 'speed-sensor', mount: 'metal', earthing: { bodyTo: 'nothing' } } as const;
  const boat = withMetal(aSteelBoat(), log);
  expect(told('housing-on-metal-hull', {}, boat)).toHaveLength(1);
  expect(told('housing-on-metal-hull', {}, boat.unit('log', { fate: 'goes' }))).toEqual([]);
  expect(told('housing-on-metal-hull', { hull: 'other' }, boat)).toEqual([]);
  const bare = boat.sheet('log-sheet', (sheet) => void delete sheet.earthing);
  expect(told('housing-on-metal-hull', {}, bare)).toEqual([]);
});
