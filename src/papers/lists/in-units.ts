import { inchM } from '../../core/units/foot.ts';
import { printLength } from '../../core/units/print-length.ts';

/** How lengths are said: in metres, in feet and inches, or in both with the second in brackets. */
export const lengthUnits = ['metres', 'feet', 'both'] as const;
export type LengthUnits = (typeof lengthUnits)[number];

const metresIn = /(\d+(?:\.\d+)?)[ \u00A0](m|mm)(?![\p{L}\d²³/])/gu;
/** "14.35 m of 100": the second figure leaves its unit to the first. */
const metresOf = /(\d+(?:\.\d+)?)([ \u00A0]m of )(\d+(?:\.\d+)?)(?![\d.]*[ \u00A0]?[\p{L}%])/gu;

const inFeet = (figure: string, unit: string): string =>
  unit === 'm'
    ? printLength({ valueM: Number(figure), as: 'feet' })
    : `${Number((Number(figure) / 1000 / inchM).toFixed(2))} in`;

/**
 * A sentence with its lengths in other units: metres as feet and whole inches, millimetres as inches to a hundredth.
 * Areas of conductors stay as they are; `inWireUnits` says those.
 *
 * @example inUnits('The drop is 6.40 m; the limit is 6 m.', 'feet') // 'The drop is 21 ft; the limit is 19 ft 8 in.'
 */
export const inUnits = (words: string, units: LengthUnits): string => {
  if (units === 'metres') return words;
  return words
    .replace(metresOf, '$1$2$3 m')
    .replace(metresIn, (all, figure: string, unit: string) =>
      units === 'feet' ? inFeet(figure, unit) : `${all} (${inFeet(figure, unit)})`,
    );
};
