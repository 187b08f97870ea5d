import type { Quantity, ValueReference } from './decoded-value.ts';

/** Where a quantity stands in a message: the name of its field, and of the one that says its reference. */
export interface MessageQuantity {
  readonly quantity: Quantity;
  readonly field: string;
  /** field of the reference; a word of two letters or more where it is always the same */
  readonly reference?: { readonly field: string } | { readonly always: 'true' | 'magnetic' | 'transducer' };
}

interface MessageForm {
  readonly instance?: string;
  readonly kind?: string;
  readonly values: readonly MessageQuantity[];
}

const wind = 130_306;
const directionReferences: readonly ValueReference[] = ['true', 'magnetic'];
const windReferences: readonly ValueReference[] = [
  ...directionReferences,
  'apparent',
  'true-to-bow',
  'true-over-water',
];

/** What the numbers of the reference in a message mean, from 0 on: the wind has more than a direction (source: pgn-database). */
export const referencesOf = (pgn: number): readonly ValueReference[] =>
  pgn === wind ? windReferences : directionReferences;

const bare = (quantity: Quantity, field: string): MessageQuantity => ({ quantity, field });
const referred = (quantity: Quantity, field: string, by: string): MessageQuantity => ({
  quantity,
  field,
  reference: { field: by },
});
const form = (...values: MessageQuantity[]): MessageForm => ({ values });
const parted = (parts: Omit<MessageForm, 'values'>, ...values: MessageQuantity[]): MessageForm => ({
  ...parts,
  values,
});
const ofInstance = { instance: 'instance' } as const;
const ofSource = { instance: 'instance', kind: 'source' } as const;

/** What a dock test needs of each message (fields: pgn-database). Date and time, and ships, are read by their own. */
export const messageForms: ReadonlyMap<number, MessageForm> = new Map<number, MessageForm>([
  [
    127_237,
    form(
      bare('rudder-order', 'commandedRudderAngle'),
      referred('heading-to-steer', 'headingToSteerCourse', 'headingReference'),
    ),
  ],
  [127_245, parted(ofInstance, bare('rudder', 'position'), bare('rudder-order', 'angleOrder'))],
  [
    127_250,
    form(referred('heading', 'heading', 'reference'), bare('deviation', 'deviation'), bare('variation', 'variation')),
  ],
  [127_251, form(bare('rate-of-turn', 'rate'))],
  [127_257, form(bare('yaw', 'yaw'), bare('pitch', 'pitch'), bare('roll', 'roll'))],
  [127_258, form(bare('variation', 'variation'))],
  [127_488, parted(ofInstance, bare('engine-speed', 'speed'))],
  [
    127_489,
    parted(
      ofInstance,
      bare('oil-pressure', 'oilPressure'),
      bare('engine-temperature', 'temperature'),
      bare('alternator-voltage', 'alternatorPotential'),
      bare('fuel-rate', 'fuelRate'),
      bare('engine-run', 'totalEngineHours'),
    ),
  ],
  [
    127_505,
    parted({ instance: 'instance', kind: 'type' }, bare('tank-level', 'level'), bare('tank-capacity', 'capacity')),
  ],
  [127_506, parted({ instance: 'instance', kind: 'dcType' }, bare('battery-charge', 'stateOfCharge'))],
  [
    127_508,
    parted(
      ofInstance,
      bare('battery-voltage', 'voltage'),
      bare('battery-current', 'current'),
      bare('battery-temperature', 'temperature'),
    ),
  ],
  [
    128_259,
    form(bare('speed-through-water', 'speedWaterReferenced'), bare('speed-over-ground', 'speedGroundReferenced')),
  ],
  [
    128_267,
    form({ quantity: 'depth', field: 'depth', reference: { always: 'transducer' } }, bare('depth-offset', 'offset')),
  ],
  [128_275, form(bare('log', 'log'), bare('trip', 'tripLog'))],
  [129_025, form(bare('latitude', 'latitude'), bare('longitude', 'longitude'))],
  [129_026, form(referred('course', 'cog', 'cogReference'), bare('speed-over-ground', 'sog'))],
  [129_029, form(bare('latitude', 'latitude'), bare('longitude', 'longitude'), bare('altitude', 'altitude'))],
  [129_283, form(bare('cross-track', 'xte'))],
  [
    129_284,
    form(
      bare('waypoint-distance', 'distanceToWaypoint'),
      referred('waypoint-bearing', 'bearingPositionToDestinationWaypoint', 'courseBearingReference'),
      bare('waypoint-closing', 'waypointClosingVelocity'),
    ),
  ],
  [129_291, form(referred('set', 'set', 'setReference'), bare('drift', 'drift'))],
  [wind, form(referred('wind-speed', 'windSpeed', 'reference'), referred('wind-angle', 'windAngle', 'reference'))],
  [130_310, form(bare('pressure', 'atmosphericPressure'))],
  [
    130_311,
    parted(
      { kind: 'temperatureSource' },
      bare('temperature', 'temperature'),
      bare('humidity', 'humidity'),
      bare('pressure', 'atmosphericPressure'),
    ),
  ],
  [130_312, parted(ofSource, bare('temperature', 'actualTemperature'))],
  [130_313, parted(ofSource, bare('humidity', 'actualHumidity'))],
  [130_314, parted(ofSource, bare('pressure', 'pressure'))],
  [130_316, parted(ofSource, bare('temperature', 'temperature'))],
  [
    130_577,
    form(
      referred('course', 'cog', 'cogReference'),
      bare('speed-over-ground', 'sog'),
      bare('heading', 'heading'),
      bare('speed-through-water', 'speedThroughWater'),
      bare('set', 'set'),
      bare('drift', 'drift'),
    ),
  ],
  [
    130_578,
    form(
      bare('speed-through-water', 'longitudinalSpeedWaterReferenced'),
      bare('speed-over-ground', 'longitudinalSpeedGroundReferenced'),
    ),
  ],
]);
