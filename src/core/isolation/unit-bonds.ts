import type { Kit } from '../boat/boat-schema.ts';
import { throughHullKinds } from '../facts/isolation-figures.ts';
import type { BondEntry } from '../isolation-shape.ts';
import { type Metal, mastFoot } from './metal.ts';

type UnitBond = Pick<BondEntry, 'kind' | 'says' | 'sure'> & { readonly to: string | undefined };

const bond = (unit: string, body: string, { to, kind, says, sure }: UnitBond): BondEntry[] =>
  to === undefined || to === body ? [] : [{ id: `${kind}:${unit}`, ends: [body, to], kind, about: [unit], says, sure }];

/** What the metal of a unit stands on: the mast, the engine at its place, else the hull where that is of metal. */
const standsOn = (
  { index, isMetalHull, aboard, bodyOf }: Metal,
  unit: Kit,
): readonly [node: string, words: string] | undefined => {
  const foot = mastFoot(index, unit.place);
  if (foot !== undefined) return [`mast:${foot}`, 'the mast'];
  const engine = aboard.find(
    ({ id, place }) => id !== unit.id && place === unit.place && index.sheetOf.get(id)?.kind === 'engine',
  );
  const isEngine = index.sheetOf.get(unit.id)?.kind === 'engine';
  if (engine !== undefined && !isEngine) return [bodyOf(engine.id) ?? '', engine.name];
  return isMetalHull ? ['hull', 'the hull'] : undefined;
};

const ownBonds = (metal: Metal, unit: Kit, body: string): BondEntry[] => {
  const { index, isMetalHull, earthingOf, negativeOf } = metal;
  const { bodyTo, poles } = earthingOf(unit.id);
  const kind = index.sheetOf.get(unit.id)?.kind ?? '';
  const isEngine = kind === 'engine';
  const on = standsOn(metal, unit);
  // an engine stands on its feet and its shaft wherever nobody says that they are insulated
  const isOnMetal = unit.mount === 'metal' || (isEngine && unit.mount === undefined && isMetalHull);
  const minus = negativeOf(unit.id);
  return [
    ...(bodyTo === 'negative'
      ? bond(unit.id, body, { to: minus, kind: 'case', says: `${unit.name}: its case is its minus`, sure: true })
      : []),
    ...(poles === 'block'
      ? bond(unit.id, body, { to: minus, kind: 'poles', says: `${unit.name}: its block is its minus`, sure: true })
      : []),
    ...(isOnMetal && on !== undefined
      ? bond(unit.id, body, {
          to: on[0],
          kind: 'mount',
          says: `${unit.name} stands bare on ${on[1]}`,
          sure: unit.mount === 'metal',
        })
      : []),
    ...(!isMetalHull && throughHullKinds.has(kind)
      ? bond(unit.id, body, { to: 'water', kind: 'water', says: `${unit.name} is in the water`, sure: true })
      : []),
  ];
};

/** Masts stand on a metal hull, and whatever is on them with them. */
const mastBonds = ({ index, isMetalHull }: Metal): BondEntry[] => {
  if (!isMetalHull) return [];
  const feet = new Set(index.boat.places.flatMap(({ id }) => mastFoot(index, id) ?? []));
  return [...feet].map((foot) => ({
    id: `mast:${foot}`,
    ends: [`mast:${foot}`, 'hull'],
    kind: 'mast',
    about: [foot],
    says: `the mast at ${index.places.get(foot)?.name ?? foot} stands on the hull`,
    sure: true,
  }));
};

/** What the metal of each unit meets by itself: its own minus, what it stands on, the water. */
export const unitBonds = (metal: Metal): BondEntry[] => [
  ...metal.aboard.flatMap((unit) => {
    const body = metal.bodyOf(unit.id);
    return body === undefined ? [] : ownBonds(metal, unit, body);
  }),
  ...mastBonds(metal),
];
