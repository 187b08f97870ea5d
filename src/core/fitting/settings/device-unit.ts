import type { ScreenUnits } from '../../boat/measures.ts';
import type { TypedEntry } from '../../settings-sheet-shape.ts';
import { depthUnitM } from '../../units/sea-units.ts';

type LengthUnit = keyof typeof depthUnitM;
/** Which way a figure is rounded to what a device takes, so that the doubt is on the safe side. */
export type Rounding = 'up' | 'down' | 'nearest';

/** Decimals that devices take. */
const digitsOf: Readonly<Record<LengthUnit, number>> = { m: 2, ft: 1, fm: 2 };
/** so that what is whole but for the dust of its arithmetic stays whole */
const dust = 1e-6;

const roundTo = (value: number, digits: number, rounding: Rounding): number => {
  const scale = 10 ** digits;
  const scaled = value * scale;
  const whole =
    rounding === 'up' ? Math.ceil(scaled - dust) : rounding === 'down' ? Math.floor(scaled + dust) : Math.round(scaled);
  return whole / scale;
};

const minus = (text: string): string => text.replace('-', '−');

/** A length as one unit has it, with as many decimals as devices take. */
const lengthShown = (valueM: number, unit: LengthUnit, rounding: Rounding): NonNullable<TypedEntry['shown']> => {
  const figure = roundTo(valueM / depthUnitM[unit], digitsOf[unit], rounding);
  return { figure: minus((figure + 0).toFixed(digitsOf[unit])), in: unit };
};

/**
 * A length in the unit of the device it is typed into, and beside it in feet or metres, whichever the device has not.
 *
 * @example lengthIn({ valueM: -1.35, unit: 'm', rounding: 'down' }) // −1.35 m, −4.5 ft
 */
export const lengthIn = ({
  valueM,
  unit = 'm',
  rounding,
}: {
  readonly valueM: number;
  readonly unit?: LengthUnit | undefined;
  readonly rounding: Rounding;
}): Required<Pick<TypedEntry, 'is' | 'shown' | 'also'>> => ({
  is: valueM,
  shown: lengthShown(valueM, unit, rounding),
  also: lengthShown(valueM, unit === 'm' ? 'ft' : 'm', rounding),
});

/** The units of one screen, where somebody looked. */
export const unitsAt = (screens: readonly ScreenUnits[] | undefined, kit: string): Omit<ScreenUnits, 'unit'> =>
  screens?.find(({ unit }) => unit === kit) ?? {};
