/** Kinds of unit that hear VHF and AIS: what disturbs them is listened for there (source: uscg-led-noise). */
export const listeningKinds: ReadonlySet<string> = new Set(['ais', 'vhf-radio']);

/** Kinds of unit that often disturb them, beside lights: they are switched one at a time (source: practice-trial-order). */
export const noisyKinds: ReadonlySet<string> = new Set([
  'charger',
  'dc-converter',
  'fridge',
  'inverter',
  'satellite-terminal',
  'solar',
  'solar-regulator',
]);
