import { cableGrades } from './cable-grades.ts';
import type { Figure } from './figure.ts';

/**
 * What an NMEA 2000 network must keep to, by limit id; the ids are the keys of `limits` in a boat file.
 * `lost-volts`: volts lost between the feed's source and a device. A supply counts as regulated from
 * `nmea2000-regulated-volts` up; then only `nmea2000-lost-volts-regulated-fail` applies.
 */
export const busLimits = {
  'nmea2000-one-drop': { value: 6, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-all-drops': { value: 78, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-light-warn': { value: 100, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-light-fail': { value: 100, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-mid-warn': { value: 200, unit: 'm', source: 'practice-bus-limits' },
  'nmea2000-trunk-mid-fail': { value: 250, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-heavy-warn': { value: 200, unit: 'm', source: 'practice-bus-limits' },
  'nmea2000-trunk-heavy-fail': { value: 250, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-industrial-thick-warn': { value: 250, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-industrial-thick-fail': { value: 250, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-mixed': { value: 250, unit: 'm', source: 'toshiba-devicenet' },
  'nmea2000-trunk-mixed-thin-factor': { value: 2.5, unit: 'm thick for each m thin', source: 'toshiba-devicenet' },
  'nmea2000-devices': { value: 50, unit: 'devices', source: 'practice-bus-limits' },
  'nmea2000-terminators': { value: 2, unit: 'terminators', source: 'practice-bus-limits' },
  'nmea2000-device-len': { value: 20, unit: 'LEN', source: 'practice-bus-limits' },
  'nmea2000-device-volts-least': { value: 9, unit: 'V', source: 'practice-bus-limits' },
  'nmea2000-device-volts-most': { value: 16, unit: 'V', source: 'practice-bus-limits' },
  'nmea2000-lost-volts-warn': { value: 1.5, unit: 'V', source: 'choice-lost-volts' },
  'nmea2000-lost-volts-fail': { value: 1.67, unit: 'V', source: 'choice-lost-volts' },
  'nmea2000-lost-volts-regulated-fail': { value: 3, unit: 'V', source: 'choice-lost-volts' },
  'nmea2000-regulated-volts': { value: 13.8, unit: 'V', source: 'choice-lost-volts' },
  'nmea2000-current-light': cableGrades.light.currentA,
  'nmea2000-current-mid': cableGrades.mid.currentA,
  'nmea2000-current-heavy': cableGrades.heavy.currentA,
  'nmea2000-current-industrial-thick': cableGrades['industrial-thick'].currentA,
  'nmea2000-ohm-light': cableGrades.light.powerOhmPerM,
  'nmea2000-ohm-mid': cableGrades.mid.powerOhmPerM,
  'nmea2000-ohm-heavy': cableGrades.heavy.powerOhmPerM,
  'nmea2000-ohm-industrial-thick': cableGrades['industrial-thick'].powerOhmPerM,
} as const satisfies Record<string, Figure>;

/** The load number: 1 LEN stands for this much current. A definition, so no boat can set it otherwise. */
export const lenCurrent = { value: 50, unit: 'mA', source: 'practice-bus-limits' } as const satisfies Figure;
