import type { FieldValues } from '../decode/read-field.ts';

const part = (degrees: number, [positive, negative]: readonly [string, string], digits: number): string => {
  // a thousandth of a minute is two metres
  const thousandths = Math.round(Math.abs(degrees) * 60_000);
  const whole = Math.floor(thousandths / 60_000);
  const minutes = (thousandths - whole * 60_000) / 1000;
  const side = degrees < 0 ? negative : positive;
  return `${String(whole).padStart(digits, '0')}°${minutes.toFixed(3).padStart(6, '0')}′ ${side}`;
};

/**
 * The boat’s own position in degrees and minutes, as a chart has it; undefined where a message tells none. It is shown to
 * whoever listens aboard, and stands in no report.
 *
 * @example positionWords({ latitude: 54.1, longitude: -10.2 }) // '54°06.000′ N 010°12.000′ W'
 */
export const positionWords = ({ latitude, longitude }: FieldValues): string | undefined =>
  latitude === undefined || longitude === undefined
    ? undefined
    : `${part(latitude, ['N', 'S'], 2)} ${part(longitude, ['E', 'W'], 3)}`;
