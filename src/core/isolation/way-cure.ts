import type { BoatIndex } from '../boat/boat-index.ts';
import { isolationCuts, throughHullKinds } from '../facts/isolation-figures.ts';
import type { BondEntry, StrayWay } from '../isolation-shape.ts';

interface Means {
  readonly says: string;
  readonly cost: number;
}

/** What parts a joint; nothing where it is inside a unit, or is the mast on the hull. */
const meansFor = (index: BoatIndex, { id, kind, about }: BondEntry): Means | undefined => {
  const unitKind = index.sheetOf.get(about[0] ?? '')?.kind ?? '';
  switch (kind) {
    case 'mount':
      if (unitKind === 'engine') return isolationCuts.engineFeet;
      return throughHullKinds.has(unitKind) ? isolationCuts.throughHull : isolationCuts.mount;
    case 'water':
      return isolationCuts.throughHull;
    case 'poles':
      return isolationCuts.poles;
    case 'signal':
      return isolationCuts.signal;
    case 'braid':
      return isolationCuts.braid;
    case 'shield':
      return id.startsWith('earth:') ? isolationCuts.earth : isolationCuts.shield;
    case 'case':
    case 'mast':
      return undefined;
  }
};

/** The cheapest joint to part among those that are enough; among equals the one nearest to what is met. */
export const wayCure = (index: BoatIndex, parting: readonly BondEntry[]): StrayWay['cure'] => {
  let best: { readonly bond: BondEntry; readonly means: Means } | undefined;
  for (const bond of parting) {
    const means = meansFor(index, bond);
    if (means !== undefined && (best === undefined || means.cost <= best.means.cost)) best = { bond, means };
  }
  if (best === undefined) return undefined;
  const { bond, means } = best;
  const unit = bond.about.flatMap((id) => index.kit.get(id)?.name ?? []).at(-1);
  return { bond: bond.id, says: `${unit === undefined ? '' : `At ${unit}: `}${means.says}.`, cost: means.cost };
};
