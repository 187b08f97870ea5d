import type { BoatIndex } from '../../boat/boat-index.ts';
import type { CompassEntry, CompassFeed } from '../../compass-shape.ts';
import { compassLimits } from '../../facts/compass-figures.ts';
import type { Observation } from '../rule.ts';
import { sourceWords, unitName } from '../rule-words.ts';

/** What a feed feeds, as the owner wrote it. */
export const fedName = (index: BoatIndex, { to }: CompassFeed): string =>
  index.buses.get(to)?.name ?? unitName(index, to);

/** The unit, bus or converter a feed feeds. */
export const fedId = ({ to }: CompassFeed): string => to.split('.')[0] ?? to;

/** The port, so that two feeds of one unit are two findings. */
export const feedsApart = ({ to }: CompassFeed): string[] => to.split('.').slice(1);

/** A deviation as people read it. */
export const degreesWords = (deg: number): string => `${deg < 10 ? deg.toFixed(1) : Math.round(deg)}°`;

/** The deviation of one feed beside what a steering compass may be turned by. */
export const deviationPart = (
  { allowedDeg }: CompassEntry,
  { deviationDeg }: CompassFeed,
): Pick<Observation, 'measured' | 'limit'> => ({
  measured: { value: deviationDeg, unit: '°' },
  limit: { value: allowedDeg, unit: '°', source: sourceWords(compassLimits.steering.source) },
});
