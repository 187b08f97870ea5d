import type { BoatIndex } from '../../boat/boat-index.ts';
import { inPlaneWithin, scannerFigures } from '../../facts/antenna-figures.ts';
import type { Radar } from '../../radar-shape.ts';
import { type OutsideUnit, outsideUnits } from '../outside-units.ts';
import { acrossM } from '../upright.ts';

const deg = (angle: number): number => (angle * 180) / Math.PI;

/** What hears, and is spoilt by the beam of a scanner. */
const listening: ReadonlySet<string> = new Set([
  'radio-antenna',
  'position-antenna',
  'satellite-terminal',
  'satellite-compass',
]);

/** A unit reaches so far over and under its place where its sheet tells no height. */
const turnHeightM = 0.3;

/** Units that stand in the plane a scanner turns in, or in the circle it turns in; nearest angle of each, below nothing under it. */
export const radarNeighbours = (
  index: BoatIndex,
  { own, acrossM: turnsM }: { readonly own: OutsideUnit; readonly acrossM: number },
): Radar['neighbours'] =>
  outsideUnits(index).flatMap((it) => {
    const distanceM = acrossM(own, it);
    if (it.unit.id === own.unit.id || distanceM > inPlaneWithin.value) return [];
    const [lowM, highM] = [it.fromM - own.fromM, it.toM - own.fromM];
    const offM = lowM <= 0 && highM >= 0 ? 0 : lowM > 0 ? lowM : highM;
    const offPlaneDeg = distanceM === 0 && offM === 0 ? 0 : deg(Math.atan2(offM, distanceM));
    const hears = listening.has(it.sheet.kind) || it.sheet.antenna !== undefined;
    const inPlane = hears && Math.abs(offPlaneDeg) <= scannerFigures.planeWithin.value;
    // two units of one place stand somewhere there, side by side as it were
    const inTurn =
      distanceM > 0 &&
      distanceM < turnsM / 2 + scannerFigures.turningMore.value &&
      lowM < turnHeightM &&
      highM > -turnHeightM;
    return inPlane || inTurn ? [{ unit: it.unit.id, distanceM, offPlaneDeg, inPlane, inTurn }] : [];
  });
