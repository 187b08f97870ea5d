import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { Way } from '../../core/boat/boat-schema.ts';
import { labelFigures } from '../../core/facts/label-figures.ts';
import type { LabelSpot } from '../../core/ways/label-spots.ts';
import { endWords } from '../lists/end-words.ts';

const { fromEndLeast, fromEndMost } = labelFigures;

/** How far from an end a label sits. */
export const fromEndWords = `${fromEndLeast.value} to ${fromEndMost.value} mm`;

const barriers: Readonly<Record<NonNullable<Way['through']>, string>> = {
  deck: 'deck',
  watertight: 'watertight bulkhead',
  fire: 'fire bulkhead',
  plain: 'bulkhead',
};

/** Which label of its cable one is: an end, a side of a bulkhead, a half at a joint. */
export const spotSide = (spot: LabelSpot, isFirst: boolean): string => {
  if (spot.at === 'end') return isFirst ? 'first end' : 'second end';
  if (spot.at === 'barrier') return spot.side === 'between' ? 'between' : `${spot.side} side`;
  return `${spot.half} side`;
};

/**
 * Where a label goes, as one says it to whoever holds it.
 *
 * @example spotWhere(index, spot) // "30 to 50 mm from its end at radar (net), mast top"
 */
export const spotWhere = (index: BoatIndex, spot: LabelSpot): string => {
  const nameOf = (place: string): string => index.places.get(place)?.name ?? place;
  if (spot.at === 'end') {
    const at = endWords(index, spot.end);
    const place = spot.place === undefined || at.includes(nameOf(spot.place)) ? '' : `, ${nameOf(spot.place)}`;
    return `${fromEndWords} from its end at ${at}${place}`;
  }
  if (spot.at === 'break') {
    const half = spot.half === 'mast' ? 'the half that leaves with the mast' : 'the half that stays aboard';
    return `${nameOf(spot.place)}: ${fromEndWords} from the joint, on ${half}`;
  }
  const beyond = (id: string): string => {
    const way = index.ways.get(id);
    const other = way?.ends.find((end) => end !== spot.place);
    return `${barriers[way?.through ?? 'plain']}${other === undefined ? '' : ` towards ${nameOf(other)}`}`;
  };
  const side = spot.side === 'between' ? 'between the' : 'this side of the';
  return `${nameOf(spot.place)}: ${side} ${spot.ways.map(beyond).join(' and the ')}`;
};
