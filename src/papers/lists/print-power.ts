import { printPct } from './print-figure.ts';

/** Volts to a hundredth, for example "11.46 V". */
export const printVolts = (volts: number): string => `${volts.toFixed(2)} V`;

/** Amperes to a hundredth at most, for example "1.8 A". */
export const printAmps = (amps: number): string => `${Number(amps.toFixed(2))} A`;

/** A conductor by its area, and the gauge that does the same where there is one, for example "1.5 mm² (16 AWG)". */
export const printWire = ({ areaMm2, awg }: { readonly areaMm2: number; readonly awg?: string | undefined }): string =>
  `${Number(areaMm2.toFixed(2))} mm²${awg === undefined ? '' : ` (${awg} AWG)`}`;

/** Volts lost, with the share of the nominal volts they are, for example "0.19 V (1.6 %)". */
export const printLost = ({ lostV, lostPct }: { readonly lostV: number; readonly lostPct: number }): string =>
  `${printVolts(lostV)} (${printPct(lostPct)})`;
