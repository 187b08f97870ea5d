import type { Boat } from '../../core/boat/boat-schema.ts';
import { boatWith } from '../../core/kit/sloop.test-helper.ts';
import { boatFromPattern, type PatternAsked } from '../../core/starting/boat-from-pattern.ts';

/** Units that most boats have, by the sheets they come with. */
const usualKit = [
  'multifunction-display-9',
  'instrument-4',
  'gnss-antenna-bus',
  'heading-sensor-bus',
  'sensor-depth-bus',
  'ais-class-b',
  'vhf-dsc-bus',
  'vhf-whip-1m',
  'battery-shunt-bus',
  'rudder-sensor-bus',
];

/** A boat as a pattern gives it, with a usual kit put aboard where each unit is first offered. */
export const usualBoat = (pattern: PatternAsked['pattern']): Boat =>
  boatWith(boatFromPattern({ pattern, name: `New ${pattern}` }), usualKit);
