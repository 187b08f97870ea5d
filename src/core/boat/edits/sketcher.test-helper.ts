import fc from 'fast-check';
import { typicalSheets } from '../../facts/sheets/index.ts';
import type { Boat } from '../boat-schema.ts';

/** Values made at random. */
export type Sketch = fc.Arbitrary<unknown>;
/** What stands in the schema of parameters, as JSON Schema says it. */
export interface Shape {
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

/** One of some values; a word that fits nothing where there are none. */
export const some = (values: readonly unknown[]): Sketch =>
  fc.constantFrom(...(values.length === 0 ? ['none'] : values));
const someOf = (ids: readonly string[], least: number): Sketch =>
  ids.length < least
    ? fc.constant([])
    : fc
        .shuffledSubarray([...ids], { minLength: least, maxLength: Math.min(ids.length, Math.max(least, 3)) })
        .map((few) => (least === 2 ? few.slice(0, 2) : few));
/** The ids of a list of things aboard. */
export const idsOf = (list: readonly { readonly id: string }[]): string[] => list.map(({ id }) => id);

/** Every interface aboard as `unit.port`. */
export const portsOf = (boat: Boat): string[] =>
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
  panel: () => some(idsOf(boat.supply.panels)),
  bank: () => some(idsOf(boat.supply.banks)),
  join: () => some(idsOf(boat.joins)),
  sheet: () => some([...idsOf(boat.sheets), ...idsOf(typicalSheets)]),
  day: () => some(idsOf(boat.days ?? [])),
  opening: () => some(idsOf(boat.openings ?? [])),
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
export const sketcher = (boat: Boat, definitions: Readonly<Record<string, Shape>>): Sketcher => {
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
