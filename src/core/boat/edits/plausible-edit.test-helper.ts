import fc from 'fast-check';
import * as z from 'zod';
import { typicalSheets } from '../../facts/sheets/index.ts';
import type { Boat } from '../boat-schema.ts';
import type { EditCall } from '../history.ts';
import { type EditId, edits } from './index.ts';
import { plausibleWorkEdits } from './plausible-work-edit.test-helper.ts';
import { idsOf, portsOf, type Shape, type Sketch, sketcher, some } from './sketcher.test-helper.ts';

/** Stand-ins where a boat has none of a kind left: an edit of them is refused. */
const noNeed = { reading: 'depth', at: 'none', must: true } as const;
const noJoin = { kind: 'usb' as const, members: [] };

/** The circuits aboard, each with its panel. */
const circuitsIn = ({ supply }: Boat): object[] =>
  supply.panels.flatMap(({ id: panel, circuits }) => circuits.map(({ id }) => ({ panel, circuit: id })));

const partsOf = (of: unknown): object => (typeof of === 'object' && of !== null ? of : {});

/** What the shape alone does not tell: how the parts of one edit hang together. */
const known: { readonly [Id in EditId]?: (boat: Boat) => Sketch } = {
  ...plausibleWorkEdits,
  'forbid-join': (boat) =>
    fc
      .constantFrom<Pick<Boat['joins'][number], 'kind' | 'bus' | 'members'>>(...boat.joins, noJoin)
      .map(({ kind, bus, members }) =>
        bus === undefined ? { kind, members } : { kind, bus, members: members.slice(0, 1) },
      ),
  'change-need': (boat) =>
    fc
      .record({ need: fc.constantFrom(...boat.needs, noNeed), must: fc.boolean() })
      .map(({ need, must }) => ({ ...need, must })),
  'remove-need': (boat) =>
    fc.constantFrom<Boat['needs'][number]>(...boat.needs, noNeed).map(({ reading, instance, at }) => ({
      reading,
      at,
      ...(instance === undefined ? {} : { instance }),
    })),
  'change-sheet': (boat) =>
    fc.record({
      unit: some(idsOf(boat.kit)),
      path: some(['ports.n2k.len', 'ports.bus.len', 'body']),
      value: fc.integer({ min: 1, max: 9 }),
      how: some(['manual', 'seen', 'recording']),
    }),
  'join-ports': (boat) => {
    const ports = boat.kit.flatMap((unit) =>
      (boat.sheets.find(({ id }) => id === unit.sheet)?.ports ?? []).map((port) => ({
        at: `${unit.id}.${port.id}`,
        port,
      })),
    );
    const pairs = ports.flatMap((one) =>
      ports
        .filter(({ port }) => port.protocol === one.port.protocol && port.role !== 'talk' && one.port.role !== 'listen')
        .map((other) => ({ from: one.at, to: other.at })),
    );
    return some(pairs.filter(({ from, to }) => from !== to));
  },
  'add-unit': (boat) =>
    fc.record({
      id: some(['a-new-one', 'another', 'third', 'fourth', 'fifth']),
      name: some(['A new one', 'Another']),
      sheet: some([...idsOf(boat.sheets), ...idsOf(typicalSheets)]),
      fate: some(['stays', 'comes']),
      place: some(idsOf(boat.places)),
    }),
  'add-cable': (boat) =>
    fc.record({
      id: some(['old-lead', 'old-coax', 'third']),
      kind: some(['pair', 'coax', 'ethernet']),
      from: fc.record({ place: some(idsOf(boat.places)) }),
      to: fc.record({ place: some(idsOf(boat.places)) }),
      ways: fc.constant([]),
      length: fc.record({ valueM: fc.integer({ min: 1, max: 20 }), how: some(['taped', 'guessed']) }),
      diameterMm: fc.integer({ min: 3, max: 12 }),
      condition: some(['good', 'untested']),
      fate: some(['stays', 'goes']),
    }),
  'add-heard': (boat) =>
    fc.record({
      bus: some(idsOf(boat.buses)),
      port: fc.constant('n2k'),
      sheets: fc.constant([]),
      units: fc.constantFrom('heard', 'heard-too').map((id) => [
        {
          id,
          name: 'Heard',
          sheet: boat.sheets.find(({ ports }) => ports.some((port) => port.id === 'n2k'))?.id ?? 'none',
          fate: 'stays',
          place: boat.places[0]?.id ?? 'none',
        },
      ]),
    }),
  'add-circuit': (boat) =>
    fc.record({
      panel: some(idsOf(boat.supply.panels)),
      circuit: fc.record({
        id: some(['one-circuit-more', 'another-circuit']),
        ratingA: fc.constantFrom(3, 10),
        kind: some(['breaker', 'fuse']),
        feeds: fc.constant([]),
      }),
    }),
  'change-circuit': (boat) =>
    fc
      .record({ of: some(circuitsIn(boat)), ratingA: fc.constantFrom(3, 7.5, 10) })
      .map(({ of, ratingA }) => ({ ...partsOf(of), ratingA })),
  'remove-circuit': (boat) => some(circuitsIn(boat)).map(partsOf),
  'add-panel': (boat) =>
    fc.record({
      id: some(['one-panel-more', 'another-panel']),
      place: some(idsOf(boat.places)),
      from: some(idsOf(boat.supply.banks)),
      circuits: fc.constant([]),
    }),
  'change-panel': (boat) =>
    fc.record({ panel: some(idsOf(boat.supply.panels)), freeWays: fc.nat(6), mainA: fc.constantFrom(20, 40) }),
  'copy-sheet': (boat) =>
    fc.record({ units: some(idsOf(boat.kit)).map((id) => [id]), as: some(['own-sheet', 'another-sheet']) }),
  'see-plug': (boat) =>
    fc
      .record({
        of: fc.constantFrom(...boat.kit, undefined),
        connector: some(['micro-c', 'leads']),
        gender: some(['male', 'female']),
      })
      .map(({ of, ...seen }) => ({
        unit: of?.id ?? 'none',
        plug: boat.sheets.find(({ id }) => id === of?.sheet)?.plugs[0]?.id ?? 'none',
        ...seen,
      })),
  'remove-photo': (boat) =>
    some((boat.photos ?? []).map(({ of, shows, picture }) => ({ of, shows, hash: picture.hash }))),
  'add-sheet': () => fc.constantFrom(...typicalSheets).map((sheet) => ({ sheet })),
  'set-sheet': (boat) =>
    fc
      .constantFrom(...boat.sheets)
      .map((sheet) => ({ sheet: { ...sheet, name: `${sheet.name.slice(0, 60)}, once more` } })),
  'let-source-go': (boat) =>
    some((boat.sources ?? [{ reading: 'depth', primary: '' }]).map(({ primary: _, ...chosen }) => chosen)),
  'pin-coax': () =>
    fc.record({
      line: some(['coax:a~b', 'coax:c~d']),
      as: fc.record({ kind: some(['rg-8x', 'low-loss-foam-10-mm']), state: some(['fixed', 'fitted']) }),
    }),
  'pin-wire': () =>
    fc.record({
      line: some(['feed:a~b', 'feed:c~d']),
      areaMm2: fc.constantFrom(1.5, 2.5),
      state: some(['fixed', 'fitted']),
    }),
  'pin-fuse': (boat) =>
    fc.record({
      circuit: some(boat.supply.panels.flatMap(({ id, circuits }) => circuits.map((circuit) => `${id}.${circuit.id}`))),
      ratingA: fc.constantFrom(3, 10),
      state: some(['fixed', 'fitted']),
    }),
  'pin-pieces': () =>
    fc.record({
      line: some(['drop:a~b', 'drop:c~d']),
      pieces: fc.integer({ min: 500, max: 9000 }).map((mm) => [{ mm }]),
      state: some(['bought', 'fitted']),
    }),
  'issue-revision': () =>
    fc.record({
      mark: some(['C', 'D', 'E', 'AA']),
      standing: some(['planned', 'fitted']),
      on: some(['2027-03-31', '2027-06-01']),
      says: some(['For the yard.', 'As she went back in.']),
    }),
  'note-proved': (boat) =>
    fc
      .record({ unit: fc.constantFrom(...boat.kit, undefined), on: some(['2027-05-05', '2027-06-01']) })
      .map(({ unit, on }) => {
        const port = boat.sheets.find(({ id }) => id === unit?.sheet)?.ports[0]?.id ?? 'none';
        return { proved: [{ reading: 'depth', from: `${unit?.id ?? 'none'}.${port}`, on }] };
      }),
  'take-identities': (boat) =>
    fc
      .record({ unit: some(idsOf(boat.kit)), identity: some(['c0789100fa01e240', 'c0789100fa01e241']) })
      .map((unit) => ({
        units: [{ ...unit, changes: [{ path: 'ports.n2k.len', value: 2, how: 'recording' }] }],
      })),
  'take-back-fitted': (boat) => some(idsOf(boat.fitted ?? [])).map((id) => ({ id })),
  'note-fitted': (boat) =>
    fc.record({
      about: some(idsOf(boat.kit)),
      what: some(['place', 'other']),
      is: some(['one locker further aft', 'turned round']),
      on: some(['2027-03-31', '2027-06-01']),
    }),
  'pin-layout': (boat) =>
    fc.record({
      bus: some(idsOf(boat.buses)),
      grade: some(['light', 'mid', 'heavy']),
      walk: some(boat.places.map(({ id }) => [{ place: id, tees: [] }])),
      state: some(['fixed', 'bought']),
    }),
  'set-papers': () =>
    fc.record(
      { flag: some(['GB', 'US']), workBy: some(['owner', 'radio-installer']), callSign: some(['ZZ9', 'ZZ88']) },
      { requiredKeys: ['flag'] },
    ),
  'note-at-sea': (boat) =>
    fc.record({ unit: some(idsOf(boat.kit)), id: some(['trial', 'another-trial']), leadM: fc.nat(9) }).map((lead) => ({
      lead: { ...lead, on: '2027-06-01', shownM: 3, offsetM: 0 },
    })),
  'take-back-at-sea': (boat) =>
    some(
      (['logs', 'winds', 'leads', 'swings', 'bridges'] as const).flatMap((kind) =>
        (boat.sea?.[kind] ?? []).map(({ id }) => ({ kind, id })),
      ),
    ),
  'restore-boat': (boat) => fc.constantFrom('Renamed', 'As before').map((name) => ({ boat: { ...boat, name } })),
  'set-changes': (boat) =>
    fc.record({
      unit: some(idsOf(boat.kit)),
      changes: fc
        .record({ path: some(['ports.n2k.len', 'ports.bus.len', 'ipCode']), how: some(['manual', 'seen']) })
        .map((change) => [{ ...change, value: change.path === 'ipCode' ? 'IP67' : 3 }]),
    }),
  'set-instance': (boat) =>
    fc.record({ port: some(portsOf(boat)), reading: some(['depth', 'engine', 'position']), instance: fc.nat(3) }),
  'set-opening': (boat) =>
    fc.record({
      id: some([...idsOf(boat.openings ?? []), 'one-hole-more', 'another-hole']),
      name: some(['old hole', 'round hole']),
      place: some(idsOf(boat.places)),
      hole: fc
        .record({ widthMm: fc.integer({ min: 40, max: 300 }), isRound: fc.boolean() })
        .map(({ widthMm, isRound }) => ({
          shape: isRound ? 'round' : 'rectangle',
          widthMm,
          heightMm: isRound ? widthMm : Math.ceil(widthMm / 2),
        })),
      panel: fc.record({ material: some(['grp', 'plywood']), thicknessMm: fc.integer({ min: 3, max: 20 }) }),
      how: some(['taped', 'guessed']),
    }),
  'set-rate': (boat) => {
    const sent = boat.kit.flatMap((unit) =>
      (boat.sheets.find(({ id }) => id === unit.sheet)?.ports ?? []).flatMap((port) =>
        (port.sends ?? []).map((one) => ({ port: `${unit.id}.${port.id}`, message: one.pgn ?? one.sentence })),
      ),
    );
    return fc
      .record({ of: some(sent), everyMs: fc.constantFrom(100, 200, 1000) })
      .map(({ of, everyMs }) => (typeof of === 'object' ? { ...of, everyMs } : { everyMs }));
  },
};

const shapes = new Map(
  Object.entries(edits).map(([id, { params }]) => [id, z.toJSONSchema(params, { unrepresentable: 'any' })]),
);

/**
 * One edit as a person might make it on this boat: any of them, or the one named, with parameters made from the boat’s
 * own things. What the schema of its parameters says is enough for most; where a test finds that an edit never fits,
 * it wants a line in `known`. Some edits made so are refused, as some of a person’s are.
 */
export const plausibleEdit = (boat: Boat, only?: EditId): fc.Arbitrary<EditCall> => {
  // reason: the keys of the record of every edit are the ids of edits
  const ids = only === undefined ? (Object.keys(edits) as EditId[]) : [only];
  return fc.constantFrom(...ids).chain((edit) => {
    // reason: JSON Schema made from zod; only the parts named in Shape are looked at
    const shape = (shapes.get(edit) ?? {}) as Shape & { readonly $defs?: Readonly<Record<string, Shape>> };
    const params = known[edit]?.(boat) ?? sketcher(boat, shape.$defs ?? {})(shape);
    // reason: parameters made at random are for the edit itself to check
    return params.map((given) => ({ edit, params: given }) as EditCall);
  });
};
