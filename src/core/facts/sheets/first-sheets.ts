/**
 * Sheets that are offered while nothing is asked for: one of each kind that most boats get, in the order in which people
 * think of them.
 */
export const firstSheets: readonly string[] = [
  'multifunction-display-10',
  'instrument-4',
  'gnss-antenna-bus',
  'heading-sensor-bus',
  'sensor-dst-bus',
  'wind-sensor-bus',
  'vhf-dsc-bus',
  'vhf-whip-1m',
  'ais-class-b',
  'radar-dome-24',
  'pilot-computer-bus',
  'pilot-head-bus',
  'battery-shunt-bus',
  'engine-gateway',
];
