import type { Plan } from '../../core/plan-shape.ts';
import type { SiteEntry } from '../../core/sites-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';

/** What a unit is for that must stand in the right place, in words. */
const siteWords: Readonly<Record<SiteEntry['is'], string>> = {
  'radio-antenna': 'radio antenna',
  'position-antenna': 'position antenna',
  radar: 'radar',
  heading: 'heading sensor',
  depth: 'depth sensor',
  speed: 'speed sensor',
  wind: 'wind sensor',
};

interface SiteRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly lights: readonly string[];
}

/** Every unit that must stand in the right place: what it is, where it stands, how high over the water. */
export const siteRows = (names: CardBoat, { sites }: Pick<Plan, 'sites'>): SiteRow[] =>
  sites.map(({ unit, is, place, aboveWaterM }) => ({
    key: unit,
    what: names.kit.get(unit)?.name ?? unit,
    fact: `${siteWords[is]}, ${names.places.get(place)?.name ?? place}, ${Math.abs(aboveWaterM).toFixed(2)} m ${aboveWaterM < 0 ? 'under' : 'over'} the water`,
    lights: [unit],
  }));
