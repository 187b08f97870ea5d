import type { BoatIndex } from '../../boat/boat-index.ts';
import { neighboursWithin, scannerFigures, takenFor } from '../../facts/antenna-figures.ts';
import type { Shadow } from '../../radar-shape.ts';
import { mastUprights } from '../mast-uprights.ts';
import { type OutsideUnit, outsideUnits } from '../outside-units.ts';
import { acrossM } from '../upright.ts';
import { bearingOn, wholeTurn } from './bearings.ts';
import { beamAt } from './near-zone.ts';
import { opticalDeg } from './shadow-sectors.ts';

interface Scanning {
  readonly own: OutsideUnit;
  readonly beamDeg: number;
  readonly acrossM: number;
}

interface InTheWay {
  readonly xM: number;
  readonly yM: number;
  readonly fromM: number;
  readonly toM: number;
  readonly wideM: number;
}

/** An array that stands over the axis of a mast, on top of it or on a bracket round it, is not shadowed by that. */
const leastOffM = 0.1;

const shadowOf = (
  { own, beamDeg, acrossM: arrayM }: Scanning,
  it: InTheWay,
): Omit<Shadow, 'by' | 'kind'> | undefined => {
  const distanceM = acrossM(own, it);
  if (distanceM < leastOffM) return undefined;
  const beam = beamAt({ heightM: own.fromM, beamDeg, distanceM });
  if (it.toM < beam.fromM || it.fromM > beam.toM) return undefined;
  const wideDeg = opticalDeg(it.wideM, distanceM);
  if (wideDeg < takenFor.leastShadow.value) return undefined;
  const bearingDeg = bearingOn(own, it);
  const half = wideDeg / 2;
  const blankHalf = half + scannerFigures.blankMore.value;
  return {
    distanceM,
    acrossM: it.wideM,
    fromDeg: wholeTurn(bearingDeg - half),
    toDeg: wholeTurn(bearingDeg + half),
    blankFromDeg: wholeTurn(bearingDeg - blankHalf),
    blankToDeg: wholeTurn(bearingDeg + blankHalf),
    isTotal: arrayM < it.wideM,
  };
};

/** Masts and units that stand in the beam of a scanner, as the arcs they cover; by bearing. */
export const radarShadows = (index: BoatIndex, scanning: Scanning): Shadow[] => {
  const { own } = scanning;
  const masts = mastUprights(index).flatMap((mast): Shadow[] => {
    const found = shadowOf(scanning, { ...mast, wideM: takenFor.mastM.value });
    return found === undefined ? [] : [{ by: mast.id, kind: 'mast', ...found }];
  });
  const units = outsideUnits(index).flatMap((it): Shadow[] => {
    if (it.unit.id === own.unit.id || it.wideM === undefined || acrossM(own, it) > neighboursWithin.value) return [];
    const found = shadowOf(scanning, { ...it, wideM: it.wideM });
    return found === undefined ? [] : [{ by: it.unit.id, kind: 'unit', ...found }];
  });
  return [...masts, ...units].sort((one, other) => one.fromDeg - other.fromDeg);
};
