import fc from 'fast-check';
import * as z from 'zod';
import { typicalSheets } from '../../facts/sheets/index.ts';
import type { Boat } from '../boat-schema.ts';
import type { EditCall } from '../history.ts';
import { type EditId, edits } from './index.ts';

type Sketch = fc.Arbitrary<unknown>;
/** What stands in the schema of parameters, as JSON Schema says it. */
interface Shape {
  readonly $ref?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly items?: Shape;
  readonly prefixItems?: readonly Shape[];
  readonly minItems?: number;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
}

const some = (values: readonly unknown[]): Sketch => fc.constantFrom(...(values.length === 0 ? ['none'] : values));
const someOf = (ids: readonly string[], least: number): Sketch =>
  ids.length < least
    ? fc.constant([])
    : fc
        .shuffledSubarray([...ids], { minLength: least, maxLength: Math.min(ids.length, Math.max(least, 3)) })
        .map((few) => (least === 2 ? few.slice(0, 2) : few));
const idsOf = (list: readonly { readonly id: string }[]): string[] => list.map(({ id }) => id);

/** Every interface aboard as `unit.port`. */
const portsOf = (boat: Boat): string[] =>
  boat.kit.flatMap((unit) =>
    (boat.sheets.find(({ id }) => id === unit.sheet)?.ports ?? []).map(({ id }) => `${unit.id}.${id}`),
  );

const circuitsOf = ({ supply }: Boat): string[] =>
  supply.panels.flatMap((panel) => panel.circuits.map(({ id }) => `${panel.id}.${id}`));

/** Lines as the plan would name them, enough to settle and let go. */
const linesOf = (boat: Boat): string[] => [
  ...Object.keys(boat.pins?.routes ?? {}),
  ...boat.joins.flatMap(({ members: [one, other], kind }) =>
    one === undefined || other === undefined ? [] : [`${kind}:${one.kit}.${one.port}~${other.kit}.${other.port}`],
  ),
];

const messagesOf = (boat: Boat): unknown[] =>
  boat.sheets.flatMap(({ ports }) => ports.flatMap(({ sends = [] }) => sends.map((one) => one.pgn ?? one.sentence)));

const findings = ['needs/missing depth', 'ways/assumed helm-mast', 'power/drop display'];

/** What a name in the parameters of an edit means, whichever edit it is. */
const meaningsIn = (boat: Boat): Readonly<Record<string, () => Sketch>> => ({
  unit: () => some(idsOf(boat.kit)),
  kit: () => some(idsOf(boat.kit)),
  at: () => some(idsOf(boat.kit)),
  place: () => some(idsOf(boat.places)),
  way: () => some(idsOf(boat.ways)),
  ways: () => someOf(idsOf(boat.ways), 1),
  ends: () => someOf(idsOf(boat.places), 2),
  cable: () => some(idsOf(boat.cables)),
  bus: () => some(idsOf(boat.buses)),
  join: () => some(idsOf(boat.joins)),
  sheet: () => some([...idsOf(boat.sheets), ...idsOf(typicalSheets)]),
  day: () => some(idsOf(boat.days ?? [])),
  circuit: () => some(circuitsOf(boat)),
  port: () => some(portsOf(boat)),
  primary: () => some(portsOf(boat)),
  from: () => some(portsOf(boat)),
  to: () => some(portsOf(boat)),
  line: () => some(linesOf(boat)),
  message: () => some(messagesOf(boat)),
  value: () => some([1, 2, 'a word']),
  changes: () => fc.constant([]),
  finding: () => some([...findings, ...(boat.accepted ?? []).map((entry) => entry.finding)]),
  item: () => some(['micro-tee', 'light-drop-2000mm', ...(boat.orders ?? []).map((entry) => entry.item)]),
});

const anyIdOf = (boat: Boat): Sketch =>
  fc.oneof(
    some(['a-new-one', 'another', 'third']),
    some([...idsOf(boat.places), ...idsOf(boat.ways), ...idsOf(boat.kit), ...idsOf(boat.buses), ...idsOf(boat.sheets)]),
  );

const ofText = (boat: Boat, { pattern }: Shape): Sketch => {
  if (pattern === undefined) return some(['A word', 'Something else']);
  if (pattern === '^[a-z][a-z0-9-]*$') return anyIdOf(boat);
  return fc.stringMatching(new RegExp(pattern));
};

const ofNumber = ({ type, minimum = 0, maximum = 20 }: Shape): Sketch => {
  const [min, max] = [Math.ceil(minimum), Math.floor(Math.min(maximum, Math.max(minimum + 40, 20)))];
  if (min > max) return fc.constant((minimum + maximum) / 2);
  const whole = fc.integer({ min, max });
  return type === 'integer' ? whole : whole.map((value) => Math.min(max, value + 0.5));
};

type Sketcher = (shape: Shape, name?: string, depth?: number) => Sketch;

/** A shape that holds itself is not followed further down than this. */
const deepest = 8;

const ofFields = (shape: Shape, sketch: (inner: Shape, name?: string) => Sketch): Sketch => {
  const { properties = {}, required = [] } = shape;
  const model = Object.fromEntries(Object.entries(properties).map(([name, inner]) => [name, sketch(inner, name)]));
  return fc.record(model, { requiredKeys: required.filter((name) => name in model) });
};

/** Makes values that fit a shape, with the boat's own things where a name says which are meant. */
const sketcher = (boat: Boat, definitions: Readonly<Record<string, Shape>>): Sketcher => {
  const meanings = meaningsIn(boat);
  const sketch: Sketcher = (shape, name = '', depth = 0) => {
    const below = (inner: Shape, ownName?: string): Sketch => sketch(inner, ownName, depth + 1);
    if (depth > deepest) return fc.constant('deep');
    if (shape.$ref !== undefined) return below(definitions[shape.$ref.replace(/^.*\//, '')] ?? {}, name);
    const meant = shape.type === 'object' || shape.enum !== undefined ? undefined : meanings[name];
    if (meant !== undefined) return meant();
    if (shape.const !== undefined) return fc.constant(shape.const);
    if (shape.enum !== undefined) return some(shape.enum);
    const ways = shape.anyOf ?? shape.oneOf;
    if (ways !== undefined) return fc.oneof(...ways.map((one) => below(one, name)));
    if (shape.prefixItems !== undefined) return fc.tuple(...shape.prefixItems.map((one) => below(one)));
    switch (shape.type) {
      case 'object':
        return shape.properties === undefined ? fc.constant({}) : ofFields(shape, below);
      case 'array':
        return fc.array(below(shape.items ?? {}), { minLength: shape.minItems ?? 0, maxLength: 3 });
      case 'boolean':
        return fc.boolean();
      case 'number':
      case 'integer':
        return ofNumber(shape);
      default:
        return ofText(boat, shape);
    }
  };
  return sketch;
};

/** Stand-ins where a boat has none of a kind left: an edit of them is refused. */
const noNeed = { reading: 'depth', at: 'none', must: true } as const;
const noJoin = { kind: 'usb' as const, members: [] };

/** What the shape alone does not tell: how the parts of one edit hang together. */
const known: { readonly [Id in EditId]?: (boat: Boat) => Sketch } = {
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
  'add-sheet': () => fc.constantFrom(...typicalSheets).map((sheet) => ({ sheet })),
  'set-sheet': (boat) =>
    fc
      .constantFrom(...boat.sheets)
      .map((sheet) => ({ sheet: { ...sheet, name: `${sheet.name.slice(0, 60)}, once more` } })),
  'let-source-go': (boat) =>
    some((boat.sources ?? [{ reading: 'depth', primary: '' }]).map(({ primary: _, ...chosen }) => chosen)),
  'pin-layout': (boat) =>
    fc.record({
      bus: some(idsOf(boat.buses)),
      grade: some(['light', 'mid', 'heavy']),
      walk: some(boat.places.map(({ id }) => [{ place: id, tees: [] }])),
      state: some(['fixed', 'bought']),
    }),
  'restore-boat': (boat) => fc.constantFrom('Renamed', 'As before').map((name) => ({ boat: { ...boat, name } })),
  'set-instance': (boat) =>
    fc.record({ port: some(portsOf(boat)), reading: some(['depth', 'engine', 'position']), instance: fc.nat(3) }),
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
