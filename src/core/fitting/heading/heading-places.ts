import type { Place } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { HeadingNear } from '../../heading-shape.ts';
import { headingAt } from './heading-at.ts';
import { type HeadingInput, headingField } from './heading-field.ts';
import { headingJudge } from './heading-judge.ts';

/** A place with whether a heading sensor may stand there, and what speaks against it most. */
export interface HeadingPlace {
  readonly place: string;
  readonly verdict: HeadingNear['verdict'];
  /** what limits it: a thing near, or how the place itself is */
  readonly by?: HeadingNear;
  readonly is?: 'aloft' | 'engine-space' | 'wet' | 'iron';
  /** from where she rolls and pitches least */
  readonly offCentreM: number;
}

const rank = { good: 0, doubtful: 1, not: 2 } as const;

/** Names of places where iron lies that stands in no list (choice-heading-siting). */
const ironStowed = /\b(anchor|chain|tools?|windlass)\b/i;

/** What a place is in itself: the masthead swings, an engine space is hot and of iron, weather and bilge want a sealed sensor. */
const ownVerdict = ({ name, exposure, reach }: Place): Pick<HeadingPlace, 'verdict' | 'is'> => {
  if (reach === 'aloft') return { verdict: 'not', is: 'aloft' };
  if (exposure === 'engine') return { verdict: 'not', is: 'engine-space' };
  if (ironStowed.test(name)) return { verdict: 'doubtful', is: 'iron' };
  if (exposure === 'weather' || exposure === 'bilge') return { verdict: 'doubtful', is: 'wet' };
  return { verdict: 'good' };
};

/**
 * Which places of a boat may take a heading sensor, best first: those where nothing speaks against it, then by how near they
 * are to where she rolls and pitches least, taken amidships on the waterline.
 */
export const headingPlaces = (input: HeadingInput, except?: string): HeadingPlace[] => {
  const field = headingField(input);
  const judge = headingJudge(field, except);
  // with nothing against a place, the nearest thing is told of; feeds are not
  const nearest = (place: Place): HeadingNear | undefined =>
    headingAt({ ...field, feeds: [] }, place, except === undefined ? {} : { except }).near[0];
  const { hull, places } = input.index.boat;
  return places
    .map((place): HeadingPlace => {
      const worst = judge(place);
      const verdict = worst?.verdict ?? 'good';
      const own = ownVerdict(place);
      const by = worst ?? nearest(place);
      const offCentreM = Math.hypot(place.xM - hull.lengthM / 2, place.yM, place.zM);
      const isOwn = own.is !== undefined && rank[own.verdict] >= rank[verdict];
      return {
        place: place.id,
        offCentreM,
        verdict: isOwn ? own.verdict : verdict,
        ...(isOwn ? { is: own.is } : by === undefined ? {} : { by }),
      };
    })
    .sort(
      (one, other) =>
        rank[one.verdict] - rank[other.verdict] ||
        one.offCentreM - other.offCentreM ||
        byCodeUnit(one.place, other.place),
    );
};
