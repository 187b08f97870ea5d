import type { BoatIndex } from '../boat/boat-index.ts';
import type { FeedEntry } from '../plan-shape.ts';
import type { SiteEntry } from '../sites-shape.ts';
import { aerialOf } from './antennas/aerial-of.ts';
import type { RadioAntenna } from './antennas/radio-antennas.ts';
import { radarOf } from './radar/radar-of.ts';

/** Every site with what is reckoned of it as an antenna or a radar. */
export const withAerials = (
  index: BoatIndex,
  sites: readonly SiteEntry[],
  { on, feeds }: { readonly on: readonly RadioAntenna[]; readonly feeds: readonly FeedEntry[] },
): SiteEntry[] =>
  sites.map((site) => {
    const [unit, sheet, place] = [index.kit.get(site.unit), index.sheetOf.get(site.unit), index.places.get(site.place)];
    if (unit === undefined || sheet === undefined || place === undefined) return site;
    if (site.is === 'radar') return { ...site, radar: radarOf({ index, unit, sheet, place, feeds }) };
    if (site.is !== 'radio-antenna' && site.is !== 'position-antenna') return site;
    return { ...site, aerial: aerialOf(site.is, { index, unit, sheet, place, on }) };
  });
