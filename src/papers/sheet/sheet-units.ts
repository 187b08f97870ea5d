import { inchesInFoot, inchM } from '../../core/units/foot.ts';

/** The unit in which lengths stand on a sheet; feet are written with one decimal, because inches leave no room. */
export interface SheetUnits {
  readonly word: 'm' | 'ft';
  /** metres in one of it */
  readonly inM: number;
}

/** The units a sheet may be drawn in. */
export const sheetUnits = {
  metres: { word: 'm', inM: 1 },
  feet: { word: 'ft', inM: inchM * inchesInFoot },
} as const satisfies Record<string, SheetUnits>;

/**
 * A length as it stands on the sheet, without its unit.
 *
 * @example figureIn(sheetUnits.feet, 3.048) // '10.0'
 */
export const figureIn = ({ inM }: SheetUnits, valueM: number): string => (valueM / inM).toFixed(1);
