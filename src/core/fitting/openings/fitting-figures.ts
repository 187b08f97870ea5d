import type { Boat } from '../../boat/boat-schema.ts';
import { limitValue } from '../../boat/limit-value.ts';

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
  landMm: limitValue(boat, 'gasket-land'),
  overlapMm: limitValue(boat, 'plate-overlap'),
  screwDiameters: limitValue(boat, 'screw-to-edge'),
  edgeLeastMm: limitValue(boat, 'panel-edge-least'),
  webLeastMm: limitValue(boat, 'web-least'),
  webThicknesses: limitValue(boat, 'web-thicknesses'),
});
