import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import type { CompassUnit } from '../compass-shape.ts';
import { compassLimits } from '../facts/compass-figures.ts';
import { distanceToRoute } from './distance-to-route.ts';
import { standInDistanceM } from './stand-in-distance.ts';

/**
 * Units near a compass: those within their own safe distance, and those within the metre that is kept clear of a unit
 * of which nothing is known. Other compasses have magnets of their own and count like any unit.
 */
export const unitsAtCompass = (index: BoatIndex, compass: Kit, aboard: readonly Kit[]): CompassUnit[] => {
  const at = index.places.get(compass.place);
  if (at === undefined) return [];
  return aboard.flatMap((unit): CompassUnit[] => {
    const place = index.places.get(unit.place);
    if (unit.id === compass.id || place === undefined) return [];
    const distanceM = distanceToRoute(at, [place]);
    const stated = index.sheetOf.get(unit.id)?.compassSafe?.valueM;
    const takenM = compassLimits.unknownItemWarnBelow.value;
    const usual = standInDistanceM(index.sheetOf.get(unit.id)?.kind ?? '');
    const safeM = stated ?? usual ?? takenM;
    if (distanceM >= Math.max(safeM, takenM)) return [];
    return [
      {
        unit: unit.id,
        distanceM,
        safeM,
        safeBy: stated !== undefined ? 'sheet' : usual !== undefined ? 'kind' : 'taken',
        tooNear: distanceM < safeM,
      },
    ];
  });
};
