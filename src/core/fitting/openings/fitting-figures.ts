import type { Boat } from '../../boat/boat-schema.ts';
import { limitOf } from '../../boat/limit-of.ts';

/** The figures of fitting over an old hole as they hold on one boat. */
export interface FittingFigures {
  readonly landMm: number;
  readonly overlapMm: number;
  readonly screwDiameters: number;
  readonly edgeLeastMm: number;
  readonly webLeastMm: number;
  readonly webThicknesses: number;
}

/** The owner’s own figures where the file has them, else those of facts. */
export const fittingFigures = (boat: Pick<Boat, 'limits'>): FittingFigures => ({
  landMm: limitOf(boat, 'gasket-land').value,
  overlapMm: limitOf(boat, 'plate-overlap').value,
  screwDiameters: limitOf(boat, 'screw-to-edge').value,
  edgeLeastMm: limitOf(boat, 'panel-edge-least').value,
  webLeastMm: limitOf(boat, 'web-least').value,
  webThicknesses: limitOf(boat, 'web-thicknesses').value,
});
