import type { HeadingInput } from '../../core/fitting/heading/heading-field.ts';
import { type HeadingPlace, headingPlaces } from '../../core/fitting/heading/heading-places.ts';
import type { HeadingSite } from '../../core/heading-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { printCount } from '../lists/print-figure.ts';
import { nearWords } from './near-words.ts';

/** One heading sensor, or one place, as a list shows it. */
export interface HeadingRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

const northWords: Readonly<Record<HeadingSite['north'], string>> = {
  fluxgate: 'fluxgate',
  'nine-axis': '9-axis',
  gyro: 'gyro',
  satellite: 'by satellites',
  unknown: 'nobody has said how it finds north; taken as magnetic',
};

const verdictWords: Readonly<Record<HeadingSite['verdict'], string>> = {
  good: 'stands well',
  doubtful: 'doubtful',
  not: 'not there',
};

const siteFact = (
  names: CardBoat,
  { north, magnetic, verdict, near, feeds, sumDeg, allowedDeg }: HeadingSite,
): string => {
  if (!magnetic) return `${northWords[north]}: iron and currents do not turn it`;
  const [worst] = near;
  const limits = worst === undefined ? '' : `; ${nearWords(names, worst)}`;
  const turned = `feeds turn it ${sumDeg < 0.1 ? 'under 0.1' : sumDeg.toFixed(1)}° should all add up, a compass may be turned ${allowedDeg.toFixed(1)}°`;
  const strong = feeds.length === 0 ? '' : `, ${printCount(feeds.length, 'feed')} of them noticeably`;
  return `${northWords[north]}, ${verdictWords[verdict]}${limits}; ${turned}${strong}`;
};

/** Every heading sensor with how it stands. */
export const headingRows = (names: CardBoat, { sites }: Pick<Plan, 'sites'>): HeadingRow[] =>
  sites.flatMap(({ unit, heading }) =>
    heading === undefined
      ? []
      : [
          {
            key: unit,
            what: names.kit.get(unit)?.name ?? unit,
            fact: siteFact(names, heading),
            lights: [unit, ...heading.near.filter(({ verdict }) => verdict !== 'good').map(({ id }) => id)],
          },
        ],
  );

const ownWords: Readonly<Record<NonNullable<HeadingPlace['is']>, string>> = {
  aloft: 'aloft, where she swings most',
  'engine-space': 'an engine space',
  iron: 'anchor, chain or tools lie there',
  wet: 'wet or in the weather: only for a sealed one',
};

const placeWords: Readonly<Record<HeadingPlace['verdict'], string>> = {
  good: 'good',
  doubtful: 'doubtful',
  not: 'no',
};

const placeFact = (names: CardBoat, { verdict, by, is, offCentreM }: HeadingPlace): string => {
  const why = is !== undefined ? ownWords[is] : by === undefined ? 'nothing is near' : nearWords(names, by);
  return `${placeWords[verdict]}: ${why}; ${offCentreM.toFixed(2)} m from amidships on the waterline`;
};

/** The places of the boat for a heading sensor, best first, each with what speaks for or against it; so many of them. */
export const headingPlaceRows = (
  names: CardBoat,
  input: HeadingInput,
  { except, most = Number.POSITIVE_INFINITY }: { readonly except?: string; readonly most?: number } = {},
): HeadingRow[] =>
  headingPlaces(input, except)
    .slice(0, most)
    .map((place) => ({
      key: place.place,
      what: names.places.get(place.place)?.name ?? place.place,
      fact: placeFact(names, place),
      lights: [place.place, ...(place.by === undefined ? [] : [place.by.id])],
    }));
