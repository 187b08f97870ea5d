import type { BoatIndex } from '../../boat/boat-index.ts';
import type { HeadingInput } from '../../fitting/heading/heading-field.ts';
import { headingPlaces } from '../../fitting/heading/heading-places.ts';
import type { HeadingNear, HeadingSite } from '../../heading-shape.ts';
import type { SiteEntry } from '../../sites-shape.ts';
import type { LaidInput } from '../rule.ts';

/** What is near a heading sensor, in words that follow a distance. */
const kindWords: Readonly<Record<HeadingNear['is'], string>> = {
  engine: 'an engine',
  radar: 'a radar',
  motor: 'a motor or pump',
  'radio-antenna': 'a VHF or HF antenna',
  'high-current': 'a wire of high current',
  loudspeaker: 'a loudspeaker',
  compass: 'a steering compass',
  radio: 'a radio or sounder',
  steel: 'plating of steel',
  unit: 'this unit',
};

/** What kind of thing it is, for "keep 2.00 m from an engine". */
export const neighbourWords = ({ is }: HeadingNear): string => kindWords[is];

/** The name of what is near: a unit, a battery, what a feed feeds, a place, or the plating. */
export const nearName = (index: BoatIndex, { id, is }: HeadingNear): string => {
  if (is === 'steel') return 'the plating';
  const [, fed] = /^feed:([^.~]+)/.exec(id) ?? [];
  if (fed !== undefined) return `the feed of ${index.buses.get(fed)?.name ?? index.kit.get(fed)?.name ?? fed}`;
  const bank = index.boat.supply.banks.find((one) => one.id === id);
  if (bank !== undefined) return `the battery ${bank.id}`;
  return index.kit.get(id)?.name ?? index.places.get(id)?.name ?? id;
};

/** One heading sensor that iron and currents turn, with how it stands. */
export interface HeadingFound {
  readonly site: SiteEntry;
  readonly heading: HeadingSite;
}

/** The magnetic heading sensors of a plan. */
export const magneticSites = ({ plan }: Pick<LaidInput, 'plan'>): HeadingFound[] =>
  plan.sites.flatMap((site) => (site.heading?.magnetic === true ? [{ site, heading: site.heading }] : []));

/** Where it could go instead: the best place of the boat that is no worse than good, in words; nothing where there is none. */
export const betterPlace = ({ index, plan }: LaidInput, unit: string): string => {
  const input: HeadingInput = { index, lines: plan.lines, feeds: plan.feeds };
  const here = index.kit.get(unit)?.place;
  const best = headingPlaces(input, unit).find(({ place, verdict }) => verdict === 'good' && place !== here);
  return best === undefined ? '' : ` Nothing known speaks against ${index.places.get(best.place)?.name ?? best.place}.`;
};
