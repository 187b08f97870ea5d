import type { HeadingNear } from '../../core/heading-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';

const kinds: Readonly<Record<HeadingNear['is'], string>> = {
  engine: 'engine',
  radar: 'radar',
  motor: 'motor or pump',
  'radio-antenna': 'VHF or HF antenna',
  'high-current': 'high current',
  loudspeaker: 'loudspeaker',
  compass: 'compass',
  radio: 'radio or sounder',
  steel: 'steel',
  unit: 'by its own sheet',
};

/** What kind of neighbour it is, in a word or two. */
export const neighbourKind = ({ is, by }: Pick<HeadingNear, 'is' | 'by'>): string =>
  by === 'taken' && is === 'unit' ? 'its distance not known' : kinds[is];

/** The name of what is near a heading sensor: a unit, a battery, the feed of something, a place, the plating. */
export const neighbourName = (names: CardBoat, { id, is }: Pick<HeadingNear, 'id' | 'is'>): string => {
  if (is === 'steel') return 'plating of steel';
  const [, fed] = /^feed:([^.~]+)/.exec(id) ?? [];
  if (fed !== undefined) return `feed of ${names.buses.get(fed)?.name ?? names.kit.get(fed)?.name ?? fed}`;
  return names.kit.get(id)?.name ?? names.places.get(id)?.name ?? `battery ${id}`;
};

const metres = (lengthM: number): string => `${lengthM.toFixed(2)} m`;

/** "2.21 m from the engine; 2.00 m asked for (engine)". */
export const nearWords = (names: CardBoat, near: HeadingNear): string =>
  near.distanceM === 0
    ? `in one place with ${neighbourName(names, near)}; ${metres(near.leastM)} asked for (${neighbourKind(near)})`
    : `${metres(near.distanceM)} from ${neighbourName(names, near)}; ${metres(near.leastM)} asked for (${neighbourKind(near)})`;
