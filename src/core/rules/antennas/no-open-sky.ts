import type { BoatIndex } from '../../boat/boat-index.ts';
import { wideInSky } from '../../facts/antenna-figures.ts';
import type { SiteEntry } from '../../sites-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart, unitName } from '../rule-words.ts';

const underDeck = (index: BoatIndex, { unit, place }: SiteEntry): Observation => {
  const { material } = index.boat.hull;
  const isMetal = material === 'steel' || material === 'aluminium';
  return {
    about: [unit],
    ...(isMetal ? { level: 'doubt' } : {}),
    says: `${unitName(index, unit)} stands under cover at ${index.places.get(place)?.name ?? place}${isMetal ? `, in a boat of ${material}` : ''}.`,
    cure: isMetal
      ? 'Move it into the open, clear of metal from 5 degrees over the horizon up.'
      : 'It may work under a deck of glass or wood without metal, carbon or wet sails over it: try it there before it is fixed, else move it into the open.',
  };
};

/** What hears satellites wants to see them, all round from 5 degrees up. */
export const noOpenSky: Rule = {
  id: 'antennas/no-open-sky',
  level: 'advice',
  title: 'A position antenna does not see the open sky.',
  sources: ['practice-antenna-distance', 'choice-neighbours'],
  check: ({ index, plan }) =>
    plan.sites.flatMap((site): Observation[] => {
      if (site.aerial === undefined || site.is !== 'position-antenna') return [];
      if (site.aerial.inOpen === false) return [underDeck(index, site)];
      const wide = (site.aerial.sky ?? []).filter(({ wideDeg }) => wideDeg > wideInSky.value);
      return wide.map(({ by, kind, wideDeg, upDeg, bearingDeg }) => ({
        about: [site.unit, by],
        says: `${kind === 'mast' ? `The mast at ${index.places.get(by)?.name ?? by}` : unitName(index, by)} stands over ${Math.round(wideDeg)}° of the horizon of ${unitName(index, site.unit)}, towards ${Math.round(bearingDeg)}° from ahead, up to ${Math.round(upDeg)}°.`,
        measured: { value: wideDeg, unit: '°' },
        limit: figurePart(wideInSky),
        cure: 'Move the position antenna up or away from it.',
      }));
    }),
};
