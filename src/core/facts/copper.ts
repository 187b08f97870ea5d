import type { Figure } from './figure.ts';

/** Annealed copper at 20 C. */
export const copper = {
  resistivity: { value: 0.017241, unit: 'ohm mm²/m', source: 'iec-60028' },
  perKelvin: { value: 0.00393, unit: '1/K', source: 'iec-60028' },
  referenceC: { value: 20, unit: '°C', source: 'iec-60028' },
} as const satisfies Record<string, Figure>;
