import { dockFigures } from '../../core/facts/dock-figures.ts';
import type { TestEntry } from '../../core/tests-shape.ts';

type Unit = TestEntry['unit'];

const digits = (value: number, most: number): string => `${Number(value.toFixed(most))}`.replace('-', '−');

const printOhm = (ohm: number): string => {
  if (ohm >= dockFigures.openOhm.value) return 'open';
  if (ohm >= 1_000_000) return `${digits(ohm / 1_000_000, 1)} MΩ`;
  return ohm >= 1000 ? `${digits(ohm / 1000, 1)} kΩ` : `${digits(ohm, 1)} Ω`;
};

/** A reading as a person says it: ohms in Ω, kΩ or MΩ, volts to the hundredth, counts as they are. */
export const printReading = (value: number, unit: Unit): string => {
  switch (unit) {
    case 'ohm':
      return printOhm(value);
    case 'V':
      return `${digits(value, 2)} V`;
    default:
      return digits(value, 0);
  }
};

/** "54.7 to 63.6 Ω", "over 1 MΩ", "at most 0.5 V"; one figure where both ends are the same. */
export const printWindow = (
  { least, most }: { readonly least?: number; readonly most?: number },
  unit: Unit,
): string => {
  const end = (value: number): string => printReading(value, unit);
  if (least === undefined) return most === undefined ? '' : most === 0 ? 'none' : `at most ${end(most)}`;
  if (most === undefined) return `at least ${end(least)}`;
  return end(least) === end(most) ? end(least) : `${end(least)} to ${end(most)}`;
};
