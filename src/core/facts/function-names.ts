import type { EssentialFunction } from './essential-functions.ts';
import type { SourceKey } from './sources.ts';

/** Essential functions in words, small letters. */
export const functionNames: {
  readonly source: SourceKey;
  readonly byFunction: Readonly<Record<EssentialFunction, string>>;
} = {
  source: 'choice-watched-functions',
  byFunction: {
    'bilge-pump': 'bilge pumps',
    'high-water-alarm': 'high-water alarm',
    'gas-alarm': 'gas alarm',
    'engine-start': 'engine start',
    'engine-stop': 'engine stop and alarms',
    steering: 'steering',
    horn: 'horn',
    'navigation-lights': 'navigation lights',
    depth: 'depth',
    vhf: 'VHF',
    position: 'position',
    heading: 'heading',
    ais: 'AIS',
    'shore-charging': 'charging from the shore',
  },
};
