import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { IsolationEntry, ShieldEntry, StrayWay } from '../../core/isolation-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printMoney } from './order-words.ts';
import { printCount } from './print-figure.ts';

/** One thing there is to say of metal and shields. */
export interface IsolationRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

type Names = Pick<BoatIndex, 'kit' | 'buses' | 'places'>;
/** by id of a join: its units */
type Joined = ReadonlyMap<string, readonly { readonly kit: string }[]>;

/** Units that nobody has looked at are named up to this many. */
const namedUnits = 6;

const nameIn = (list: ReadonlyMap<string, { readonly name: string }>, id: string): string => list.get(id)?.name ?? id;

const metWords = {
  hull: 'The minus meets the hull',
  water: 'The minus meets the water',
  supply: 'Two supplies meet',
  engine: 'The minus meets an isolated engine',
} as const;

const wayRow = ({ id, meets, bonds, sure, cure }: StrayWay, currency: string | undefined): IsolationRow => {
  const joints = bonds.map(({ says }) => says).join('; ');
  const cost =
    cure?.cost === undefined || currency === undefined ? '' : ` (about ${printMoney(cure.cost)} ${currency})`;
  const parted =
    cure === undefined ? 'only another unit parts them' : `to part them: ${cure.says.replace(/\.$/, '')}${cost}`;
  return {
    key: id,
    what: `${metWords[meets]}${sure ? '' : ', if it is as usual'}`,
    fact: `${joints}; ${parted}`,
    lights: [...new Set(bonds.flatMap(({ about }) => about))],
  };
};

const shieldOf = (names: Names, joined: Joined, { kind, of }: ShieldEntry): string => {
  if (kind === 'bus') return `Shield of ${of.map((id) => nameIn(names.buses, id)).join(' and ')}`;
  const units = new Set(of.flatMap((id) => (joined.get(id) ?? []).map(({ kit }) => nameIn(names.kit, kit))));
  return `Shield of the cable of ${[...units].slice(0, 3).join(' and ')}`;
};

const shieldFact = (names: Names, { verdict, earths, plannedAt = '' }: ShieldEntry): string => {
  const at = earths.map(({ says }) => says).join(' and ');
  switch (verdict) {
    case 'once':
      return `earthed once, ${at}`;
    case 'twice':
      return `earthed ${earths.length} times, ${at}; keep one`;
    case 'nowhere':
      return 'earthed nowhere; earth it at one point';
    case 'planned':
      return `earth it once, at ${nameIn(names.places, plannedAt)} where the bus is fed, and nowhere else`;
  }
};

const headRow = (names: Names, { point, ways }: IsolationEntry): IsolationRow => ({
  key: 'hull',
  what: 'Hull of metal',
  fact: [
    point === undefined
      ? 'nobody has said where the minus meets it'
      : `the minus may meet it at ${nameIn(names.places, point)} only`,
    ways.length === 0 ? 'no other contact is known' : `${printCount(ways.length, 'other contact')} found`,
  ].join('; '),
  lights: point === undefined ? [] : [point],
});

const unknownRow = (names: Names, unknown: readonly string[]): IsolationRow => {
  const told = unknown.slice(0, namedUnits).map((id) => nameIn(names.kit, id));
  const rest = unknown.length > namedUnits ? ` and ${unknown.length - namedUnits} more` : '';
  return {
    key: 'unknown',
    what: 'Not looked at yet',
    fact: `${told.join(', ')}${rest}: measure from minus to case and from case to hull, plugs pulled; both open is well`,
    lights: unknown,
  };
};

/** Where the minus meets the hull, another supply or an isolated engine, each contact with its joints and cure; then shields. */
export const isolationRows = (
  names: Names,
  { isolation, joins }: Pick<Plan, 'isolation' | 'joins'>,
  currency?: string,
): IsolationRow[] => {
  const joined: Joined = new Map(joins.map(({ id, members }) => [id, members]));
  return [
    ...(isolation.hull === 'metal' ? [headRow(names, isolation)] : []),
    ...isolation.ways.map((way) => wayRow(way, currency)),
    ...(isolation.unknown.length === 0 ? [] : [unknownRow(names, isolation.unknown)]),
    ...isolation.shields.map((shield) => ({
      key: `shield ${shield.id}`,
      what: shieldOf(names, joined, shield),
      fact: shieldFact(names, shield),
      lights: [...shield.of, ...shield.earths.map(({ at }) => at)],
    })),
  ];
};
