import type { Aerial } from '../../aerial-shape.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import { neighboursWithin, takenFor } from '../../facts/antenna-figures.ts';
import { skyFrom } from '../../facts/antenna-limits.ts';
import { mastUprights } from '../mast-uprights.ts';
import { type OutsideUnit, outsideUnits } from '../outside-units.ts';
import { bearingOn } from '../radar/bearings.ts';
import { opticalDeg } from '../radar/shadow-sectors.ts';
import { acrossM } from '../upright.ts';

type InTheSky = NonNullable<Aerial['sky']>[number];

const deg = (angle: number): number => (angle * 180) / Math.PI;

const seenFrom = (
  own: OutsideUnit,
  it: { xM: number; yM: number; toM: number; wideM: number },
): Omit<InTheSky, 'by' | 'kind'> | undefined => {
  const distanceM = acrossM(own, it);
  const upDeg = deg(Math.atan2(it.toM - own.toM, distanceM));
  const wideDeg = opticalDeg(it.wideM, distanceM);
  if (distanceM === 0 || distanceM > neighboursWithin.value || upDeg <= skyFrom.value) return undefined;
  return wideDeg < takenFor.leastShadow.value ? undefined : { bearingDeg: bearingOn(own, it), wideDeg, upDeg };
};

/** What stands up more than 5 degrees over the horizon of a position antenna and is wide enough to matter: masts and units, not sails. */
export const openSky = (index: BoatIndex, own: OutsideUnit): InTheSky[] => {
  const masts = mastUprights(index).flatMap((mast): InTheSky[] => {
    const seen = seenFrom(own, { ...mast, wideM: takenFor.mastM.value });
    return seen === undefined ? [] : [{ by: mast.id, kind: 'mast', ...seen }];
  });
  const units = outsideUnits(index).flatMap((it): InTheSky[] => {
    if (it.unit.id === own.unit.id || it.wideM === undefined) return [];
    const seen = seenFrom(own, { ...it, wideM: it.wideM });
    return seen === undefined ? [] : [{ by: it.unit.id, kind: 'unit', ...seen }];
  });
  return [...masts, ...units];
};
