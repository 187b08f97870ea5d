import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import { metalKinds } from './facts/isolation-figures.ts';
import { lineBonds } from './isolation/line-bonds.ts';
import { type Metal, metalOf } from './isolation/metal.ts';
import { shieldBonds, shieldEntries } from './isolation/shields.ts';
import { partingJoints, type SearchAsk, strayBonds } from './isolation/stray-bonds.ts';
import { unitBonds } from './isolation/unit-bonds.ts';
import { wayCure } from './isolation/way-cure.ts';
import type { BondEntry, IsolationEntry, StrayWay } from './isolation-shape.ts';
import type { StandingJoin } from './plan-shape.ts';
import type { LoadEntry } from './power-shape.ts';

/** What the isolation of a boat is planned from. */
export interface IsolationInput {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  readonly loads: readonly LoadEntry[];
  readonly buses: readonly { readonly id: string; readonly feedPlace?: string }[];
}

type Meets = Pick<StrayWay, 'meets' | 'to'> & Pick<SearchAsk<BondEntry>, 'from' | 'avoid'>;

const otherEnd = ({ ends: [a, b] }: BondEntry, node: string): string => (a === node ? b : a);

const waysTo = (metal: Metal, joints: readonly BondEntry[], { meets, to, from, avoid }: Meets): StrayWay[] => {
  const ask = { joints, to, from, ...(avoid === undefined ? {} : { avoid }) };
  return strayBonds(ask).map((bonds): StrayWay => {
    const start = [...bonds].reverse().reduce((node, bond) => otherEnd(bond, node), to);
    const cure = wayCure(metal.index, partingJoints(ask, bonds));
    return {
      id: `${meets}:${bonds.map(({ id }) => id).join('+')}`,
      meets,
      from: start,
      to,
      bonds: [...bonds],
      sure: bonds.every(({ sure }) => sure),
      ...(cure === undefined ? {} : { cure }),
    };
  });
};

/** An engine that stands at the named point may be joined to the hull there, and its block to the minus. */
const isNamed = ({ index }: Metal, { kind, about }: BondEntry): boolean => {
  const unit = index.kit.get(about[0] ?? '');
  const isEngine = index.sheetOf.get(about[0] ?? '')?.kind === 'engine';
  return isEngine && (kind === 'poles' || kind === 'mount') && unit?.place === index.boat.supply.negativeAt;
};

/** What no negative may meet elsewhere than at the named point: the hull or the water, an engine that is isolated, another negative. */
const meetings = (metal: Metal): Meets[] => {
  const all = metal.negatives.entries.map(({ id }) => id);
  const negatives = new Set(all);
  const hull = metal.isMetalHull ? 'hull' : 'water';
  const engines = metal.aboard.filter(({ id }) => metal.earthingOf(id).poles === 'isolated');
  const avoid = new Set([hull]);
  return [
    { meets: hull, to: hull, from: negatives },
    ...engines.map(({ id }): Meets => ({ meets: 'engine', to: `body:${id}`, from: negatives, avoid })),
    ...all.flatMap((from, at) =>
      all.slice(at + 1).map((to): Meets => {
        const others = all.filter((id) => id !== from && id !== to);
        return { meets: 'supply', to, from: new Set([from]), avoid: new Set([hull, ...others]) };
      }),
    ),
  ];
};

/** Whether nobody has looked at the metal of a unit that usually meets the metal it stands on. */
const isUnknown = ({ index, earthingOf }: Metal, { id, mount }: { id: string; mount?: string }): boolean => {
  const kind = index.sheetOf.get(id)?.kind ?? '';
  const { body, bodyTo, poles } = earthingOf(id);
  if (!metalKinds.has(kind) || mount === 'isolated' || body === 'plastic') return false;
  return kind === 'engine' ? poles === undefined : body === undefined || bodyTo === undefined || mount === undefined;
};

/**
 * Where the negatives of a boat meet her hull, her engines or each other elsewhere than at the one named point, each way
 * with its joints and what parts it cheapest; her shields and where each is earthed; what nobody has looked at.
 */
export const planIsolation = ({ index, joins, loads, buses }: IsolationInput): IsolationEntry => {
  const metal = metalOf(index, loads);
  const units = unitBonds(metal);
  const shields = { metal, joins, unitBonds: units, buses };
  const joints = [...units, ...lineBonds(metal, joins), ...shieldBonds(shields)]
    .filter((bond) => !isNamed(metal, bond))
    .sort((one, other) => byCodeUnit(one.id, other.id));
  const point = index.boat.supply.negativeAt;
  return {
    hull: metal.isMetalHull ? 'metal' : 'other',
    ...(point === undefined ? {} : { point }),
    negatives: [...metal.negatives.entries],
    ways: meetings(metal)
      .flatMap((meeting) => waysTo(metal, joints, meeting))
      .sort((one, other) => byCodeUnit(one.id, other.id)),
    shields: shieldEntries(shields),
    unknown: metal.isMetalHull
      ? metal.aboard
          .filter((unit) => isUnknown(metal, unit))
          .map(({ id }) => id)
          .sort(byCodeUnit)
      : [],
  };
};
