import type { Figure } from './figure.ts';

/**
 * One grade of NMEA 2000 cable. Resistances are of ONE conductor at 20 C; what flows out and back passes two.
 * `powerOhmLeastPerM` to `powerOhmMostPerM` is the range a figure for this gauge can have: outside it a decimal has slipped.
 */
interface CableGrade {
  readonly name: string;
  readonly plug: string;
  readonly dataAwg: Figure;
  readonly powerAwg: Figure;
  readonly powerOhmPerM: Figure;
  readonly powerOhmLeastPerM: Figure;
  readonly powerOhmMostPerM: Figure;
  readonly dataOhmPerM: Figure;
  readonly currentA: Figure;
  readonly outsideLeastMm: Figure;
  readonly outsideMostMm: Figure;
  readonly plugHoleMm: Figure;
}

/** The grades of NMEA 2000 cable by id, thinnest first. The owner's cable data beat every resistance and current here. */
export const cableGrades = {
  light: {
    name: 'light',
    plug: 'M12 A-coded, 5 poles (micro)',
    dataAwg: { value: 24, unit: 'AWG', source: 'practice-cable-grades' },
    powerAwg: { value: 22, unit: 'AWG', source: 'practice-cable-grades' },
    powerOhmPerM: { value: 0.057, unit: 'ohm/m', source: 'aipu-cable' },
    powerOhmLeastPerM: { value: 0.045, unit: 'ohm/m', source: 'choice-resistance-range' },
    powerOhmMostPerM: { value: 0.075, unit: 'ohm/m', source: 'choice-resistance-range' },
    dataOhmPerM: { value: 0.0919, unit: 'ohm/m', source: 'omron-devicenet' },
    currentA: { value: 3, unit: 'A', source: 'practice-cable-grades' },
    outsideLeastMm: { value: 6.1, unit: 'mm', source: 'practice-cable-grades' },
    outsideMostMm: { value: 7.1, unit: 'mm', source: 'practice-cable-grades' },
    plugHoleMm: { value: 16, unit: 'mm', source: 'practice-plug-holes' },
  },
  mid: {
    name: 'mid',
    plug: 'M12 A-coded, 5 poles (micro)',
    dataAwg: { value: 20, unit: 'AWG', source: 'practice-cable-grades' },
    powerAwg: { value: 16, unit: 'AWG', source: 'practice-cable-grades' },
    powerOhmPerM: { value: 0.0142, unit: 'ohm/m', source: 'computed-stranded-copper' },
    powerOhmLeastPerM: { value: 0.011, unit: 'ohm/m', source: 'choice-resistance-range' },
    powerOhmMostPerM: { value: 0.018, unit: 'ohm/m', source: 'choice-resistance-range' },
    dataOhmPerM: { value: 0.036, unit: 'ohm/m', source: 'computed-stranded-copper' },
    currentA: { value: 4, unit: 'A', source: 'practice-cable-grades' },
    outsideLeastMm: { value: 8.4, unit: 'mm', source: 'practice-cable-grades' },
    outsideMostMm: { value: 8.4, unit: 'mm', source: 'practice-cable-grades' },
    plugHoleMm: { value: 16, unit: 'mm', source: 'practice-plug-holes' },
  },
  heavy: {
    name: 'heavy',
    plug: '7/8 in, 5 poles (mini)',
    dataAwg: { value: 18, unit: 'AWG', source: 'practice-cable-grades' },
    powerAwg: { value: 16, unit: 'AWG', source: 'practice-cable-grades' },
    powerOhmPerM: { value: 0.0142, unit: 'ohm/m', source: 'computed-stranded-copper' },
    powerOhmLeastPerM: { value: 0.0085, unit: 'ohm/m', source: 'choice-resistance-range' },
    powerOhmMostPerM: { value: 0.018, unit: 'ohm/m', source: 'choice-resistance-range' },
    dataOhmPerM: { value: 0.0226, unit: 'ohm/m', source: 'omron-devicenet' },
    currentA: { value: 8, unit: 'A', source: 'practice-cable-grades' },
    outsideLeastMm: { value: 10.4, unit: 'mm', source: 'practice-cable-grades' },
    outsideMostMm: { value: 12.4, unit: 'mm', source: 'practice-cable-grades' },
    plugHoleMm: { value: 28, unit: 'mm', source: 'practice-plug-holes' },
  },
  'industrial-thick': {
    name: 'industrial thick',
    plug: '7/8 in, 5 poles (mini)',
    dataAwg: { value: 18, unit: 'AWG', source: 'practice-cable-grades' },
    powerAwg: { value: 15, unit: 'AWG', source: 'practice-cable-grades' },
    powerOhmPerM: { value: 0.0118, unit: 'ohm/m', source: 'memory-thick-cable' },
    powerOhmLeastPerM: { value: 0.0085, unit: 'ohm/m', source: 'choice-resistance-range' },
    powerOhmMostPerM: { value: 0.015, unit: 'ohm/m', source: 'choice-resistance-range' },
    dataOhmPerM: { value: 0.0226, unit: 'ohm/m', source: 'omron-devicenet' },
    currentA: { value: 8, unit: 'A', source: 'practice-cable-grades' },
    outsideLeastMm: { value: 11.2, unit: 'mm', source: 'practice-cable-grades' },
    outsideMostMm: { value: 12.2, unit: 'mm', source: 'practice-cable-grades' },
    plugHoleMm: { value: 28, unit: 'mm', source: 'practice-plug-holes' },
  },
} as const satisfies Record<string, CableGrade>;

/** The lead from the panel to the feed tee where nobody has said what it is: 16 AWG (1.3 mm²), stranded and tinned. */
export const feedLead = {
  awg: { value: 16, unit: 'AWG', source: 'choice-feed-lead' },
  ohmPerM: { value: 0.0142, unit: 'ohm/m', source: 'computed-stranded-copper' },
} as const satisfies Record<string, Figure>;
