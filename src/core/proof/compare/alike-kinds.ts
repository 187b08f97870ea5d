/**
 * Kinds of units that show the same codes in their NAME, or may: a display with an echo sounder in it claims to be either.
 * Project choice.
 */
const families: readonly (readonly string[])[] = [
  ['display', 'sounder', 'navigation'],
  ['instrument', 'display', 'wind-sensor', 'speed-sensor', 'depth-sensor'],
  ['converter', 'gateway', 'multiplexer'],
  ['depth-sensor', 'speed-sensor', 'sounder', 'transducer', 'navigation'],
  ['pilot-computer', 'pilot', 'pilot-head', 'steering'],
  ['heading-sensor', 'turn-sensor', 'navigation'],
  ['tank-adapter', 'tank-sender', 'sensor', 'sensor-box', 'gateway'],
  ['battery-monitor', 'power-monitor', 'charger', 'inverter', 'power-control', 'dc-converter', 'generator'],
  ['engine', 'gateway', 'engine-monitor', 'gearbox', 'engine-control'],
  ['wind-sensor', 'weather-sensor', 'sensor-box'],
  ['temperature-sensor', 'pressure-sensor', 'humidity-sensor', 'weather-sensor', 'sensor', 'sensor-box'],
  ['vhf-radio', 'radio', 'ais'],
  ['position-antenna', 'navigation', 'heading-sensor'],
  ['switch-panel', 'power-control', 'keypad'],
];

/** How well a sender’s kind goes with a sheet’s: 2 the same, 1 may be the same, 0 nothing known, -1 another. */
export const kindFit = (heard: string, planned: string): number => {
  if (heard === planned) return 2;
  if (heard === 'unknown' || heard === 'tool') return 0;
  return families.some((family) => family.includes(heard) && family.includes(planned)) ? 1 : -1;
};
