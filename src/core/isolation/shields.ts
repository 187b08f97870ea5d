import { byCodeUnit } from '../boat/ids.ts';
import type { BondEntry, ShieldEntry } from '../isolation-shape.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { Groups } from './groups.ts';
import type { Metal } from './metal.ts';

export interface ShieldAsk {
  readonly metal: Metal;
  readonly joins: readonly StandingJoin[];
  /** what the units’ own metal meets */
  readonly unitBonds: readonly BondEntry[];
  readonly buses: readonly { readonly id: string; readonly feedPlace?: string }[];
}

/** One cable, or one bus, whose shield is one piece: the units it reaches and where the file earths it. */
interface Shielded {
  readonly id: string;
  readonly kind: ShieldEntry['kind'];
  readonly units: readonly string[];
  readonly negative?: string;
  readonly statedAt?: readonly string[];
}

const shieldedOf = ({ metal, joins }: ShieldAsk): Shielded[] => {
  const { index } = metal;
  const buses = index.boat.buses.map(({ id, shieldAt }): Shielded => {
    const negative = metal.negativeOfBus(id);
    return {
      id,
      kind: 'bus',
      units: joins.filter(({ bus }) => bus === id).flatMap(({ members }) => members.map(({ kit }) => kit)),
      ...(negative === undefined ? {} : { negative }),
      ...(shieldAt === undefined ? {} : { statedAt: shieldAt }),
    };
  });
  const cables = joins
    .filter(({ kind }) => kind !== 'nmea2000' && kind !== 'coax' && kind !== 'wifi')
    .map(({ id, kind, members }): Shielded => {
      const statedAt = index.joins.get(id)?.shieldAt;
      return {
        id,
        kind: kind === 'ethernet' ? 'ethernet' : 'cable',
        units: members.map(({ kit }) => kit),
        ...(statedAt === undefined ? {} : { statedAt }),
      };
    });
  return [...buses, ...cables];
};

/** The conductor a unit’s sockets lay a shield on. */
const landing = ({ earthingOf, bodyOf, negativeOf }: Metal, unit: string): string | undefined => {
  const { shieldTo } = earthingOf(unit);
  return shieldTo === 'body' ? bodyOf(unit) : shieldTo === 'negative' ? negativeOf(unit) : undefined;
};

const isEarthed = (node: string, bonds: readonly BondEntry[]): boolean =>
  node.startsWith('negative:') || bonds.some(({ ends }) => ends.includes(node));

/** Shields that units carry on from one cable to the next, by their sockets or over a metal case that touches nothing else. */
const tied = (shielded: readonly Shielded[], { metal, unitBonds }: ShieldAsk): Groups => {
  const groups = new Groups();
  for (const { id: unit } of metal.aboard) {
    const node = landing(metal, unit);
    const carries =
      metal.earthingOf(unit).shieldThrough === true || (node !== undefined && !isEarthed(node, unitBonds));
    const [first, ...others] = carries ? shielded.filter(({ units }) => units.includes(unit)) : [];
    for (const other of others) groups.tie(first?.id ?? other.id, other.id);
  }
  return groups;
};

type Earth = ShieldEntry['earths'][number];

const earthsOf = (own: readonly Shielded[], { metal, unitBonds }: ShieldAsk): Earth[] => {
  const placeName = (id: string): string => metal.index.places.get(id)?.name ?? id;
  const stated = own.flatMap(({ kind, statedAt = [] }) =>
    statedAt.map(
      (at): Earth => ({
        at,
        by: 'file',
        says: kind === 'bus' ? `at ${placeName(at)}` : `at ${metal.nameOf(at)}`,
      }),
    ),
  );
  const units = [...new Set(own.flatMap((shield) => shield.units))].sort(byCodeUnit);
  const landed = units.flatMap((unit): Earth[] => {
    const node = landing(metal, unit);
    if (node === undefined || !isEarthed(node, unitBonds) || stated.some(({ at }) => at === unit)) return [];
    return [
      {
        at: unit,
        by: 'unit',
        says: `on the ${node.startsWith('body:') ? 'earthed case' : 'minus'} of ${metal.nameOf(unit)}`,
      },
    ];
  });
  return [...new Map([...stated, ...landed].map((earth) => [earth.at, earth])).values()].sort((one, other) =>
    byCodeUnit(one.at, other.at),
  );
};

const entryOf = (id: string, own: readonly Shielded[], ask: ShieldAsk): ShieldEntry[] => {
  const earths = earthsOf(own, ask);
  const isStated = own.some(({ statedAt }) => statedAt !== undefined);
  const kind = own[0]?.kind ?? 'cable';
  const of = own.map((shield) => shield.id).sort(byCodeUnit);
  if (earths.length > 0) return [{ id, of, kind, earths, verdict: earths.length === 1 ? 'once' : 'twice' }];
  if (isStated) return [{ id, of, kind, earths, verdict: 'nowhere' }];
  const plannedAt = ask.buses.find((bus) => of.includes(bus.id) && bus.feedPlace !== undefined)?.feedPlace;
  return kind !== 'bus' || plannedAt === undefined ? [] : [{ id, of, kind, earths, verdict: 'planned', plannedAt }];
};

const groupsOf = (ask: ShieldAsk): { readonly id: string; readonly own: readonly Shielded[] }[] => {
  const shielded = shieldedOf(ask);
  const groups = tied(shielded, ask);
  const ids = [...new Set(shielded.map(({ id }) => groups.of(id)))].sort(byCodeUnit);
  return ids.map((id) => ({ id, own: shielded.filter((shield) => groups.of(shield.id) === id) }));
};

/**
 * Shields that are one piece of metal, and where each meets earth: where the file says so, or at a unit that lays it on its
 * minus or on a case that meets one. A bus of which nobody has said where is earthed at its feed by the plan. Cables of which
 * nothing is known are left out. Sorted by id.
 */
export const shieldEntries = (ask: ShieldAsk): ShieldEntry[] =>
  groupsOf(ask).flatMap(({ id, own }) => entryOf(id, own, ask));

const shieldBond = (
  id: string,
  bond: Pick<BondEntry, 'id' | 'about' | 'says'> & { readonly to: string | undefined },
) => {
  const { to, ...said } = bond;
  return to === undefined
    ? []
    : [{ ...said, ends: [`shield:${id}`, to], kind: 'shield', sure: true } satisfies BondEntry];
};

/** What shields join: where the file earths them (`earth:`), and the metal or minus of units they lie on (`shield:`). */
export const shieldBonds = (ask: ShieldAsk): BondEntry[] => {
  const { metal } = ask;
  const statedOf = (id: string, { id: of, kind, negative, statedAt = [] }: Shielded): BondEntry[] =>
    statedAt.flatMap((at) => {
      const place = metal.index.places.get(at)?.name ?? at;
      return kind === 'bus'
        ? shieldBond(id, {
            id: `earth:${of}:${at}`,
            about: [of, at],
            to: negative,
            says: `the shield of the bus is earthed at ${place}`,
          })
        : shieldBond(id, {
            id: `earth:${of}:${at}`,
            about: [of, at],
            to: metal.bodyOf(at) ?? metal.negativeOf(at),
            says: `the shield of the cable is earthed at ${metal.nameOf(at)}`,
          });
    });
  const landedOf = (id: string, { id: of, units, statedAt = [] }: Shielded): BondEntry[] =>
    units
      .filter((unit) => !statedAt.includes(unit))
      .flatMap((unit) =>
        shieldBond(id, {
          id: `shield:${of}:${unit}`,
          about: [of, unit],
          to: landing(metal, unit),
          says: `the shield lies on the socket of ${metal.nameOf(unit)}`,
        }),
      );
  return groupsOf(ask).flatMap(({ id, own }) =>
    own.flatMap((shielded) => [...statedOf(id, shielded), ...landedOf(id, shielded)]),
  );
};
