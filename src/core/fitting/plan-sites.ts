import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard, lastPhase } from '../boat/phase.ts';
import type { SiteEntry } from '../sites-shape.ts';

/** What a unit of a kind is that must stand in the right place; kinds that are left out work anywhere. */
const siteOfKind: ReadonlyMap<string, SiteEntry['is']> = new Map([
  ['radio-antenna', 'radio-antenna'],
  ['position-antenna', 'position-antenna'],
  ['gnss', 'position-antenna'],
  ['radar', 'radar'],
  ['heading-sensor', 'heading'],
  ['depth-sensor', 'depth'],
  ['transducer', 'depth'],
  ['speed-sensor', 'speed'],
  ['wind-sensor', 'wind'],
]);

/** Every unit aboard when the work is done that must stand in the right place, by id. */
export const planSites = (index: BoatIndex): SiteEntry[] => {
  const last = lastPhase(index.boat);
  return index.boat.kit
    .flatMap((unit): SiteEntry[] => {
      const is = siteOfKind.get(index.sheetOf.get(unit.id)?.kind ?? '');
      const place = index.places.get(unit.place);
      if (is === undefined || place === undefined || !isAboard(unit, last)) return [];
      return [{ unit: unit.id, is, place: place.id, aboveWaterM: place.zM }];
    })
    .sort((a, b) => byCodeUnit(a.unit, b.unit));
};
