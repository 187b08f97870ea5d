import { depthFigures } from '../../facts/depth-figures.ts';

/** A depth offset as it stands in the message. */
export interface RawDepthOffset {
  /** whole millimetres, signed */
  readonly raw: number;
  /** the same sixteen bits as four hexadecimal digits, as a recording shows them */
  readonly hex: string;
}

const words = 2 ** 16;

/**
 * A depth offset as the bus carries it: a signed number of sixteen bits, in steps of a millimetre. Undefined where it does
 * not fit: the three top codes mean that there is no value.
 *
 * @example rawDepthOffset(-2.5) // { raw: -2500, hex: 'F63C' }
 */
export const rawDepthOffset = (offsetM: number): RawDepthOffset | undefined => {
  const raw = Math.round(offsetM / depthFigures.offsetStep.value) + 0;
  if (!(raw >= -words / 2 && raw <= words / 2 - 1 - 3)) return undefined;
  return { raw, hex: ((raw + words) % words).toString(16).toUpperCase().padStart(4, '0') };
};
