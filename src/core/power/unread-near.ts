import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { distanceToRoute } from './distance-to-route.ts';
import { mayTurnCompass } from './may-turn-compass.ts';
import { standInDistanceM } from './stand-in-distance.ts';
import { unknownItem } from './unknown-item.ts';

/** One unit of which nobody knows how far it must keep from a compass. */
export interface UnreadUnit {
  readonly unit: string;
  readonly distanceM: number;
}

/** Whether neither the sheet of a unit nor its kind says how far it must keep. */
const isUnknown = (index: BoatIndex, { id }: Kit): boolean => {
  const sheet = index.sheetOf.get(id);
  return (
    sheet !== undefined &&
    sheet.compassSafe === undefined &&
    standInDistanceM(sheet.kind) === undefined &&
    mayTurnCompass(sheet)
  );
};

/**
 * Units between the metre kept clear of an unknown thing and the 5 m of the standard, nearest first. What stood there before
 * a compass that stays was there when it was swung, so only what comes counts at one; near a compass that comes, all do.
 */
export const unreadNear = (index: BoatIndex, compass: Kit, aboard: readonly Kit[]): UnreadUnit[] => {
  const at = index.places.get(compass.place);
  if (at === undefined) return [];
  return aboard
    .filter((unit) => unit.id !== compass.id && (compass.fate === 'comes' || unit.fate === 'comes'))
    .flatMap((unit): UnreadUnit[] => {
      const place = index.places.get(unit.place);
      if (place === undefined) return [];
      const distanceM = distanceToRoute(at, [place]);
      return unknownItem(distanceM) === 'advice' && isUnknown(index, unit) ? [{ unit: unit.id, distanceM }] : [];
    })
    .sort((one, other) => one.distanceM - other.distanceM || byCodeUnit(one.unit, other.unit));
};
