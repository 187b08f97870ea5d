/**
 * What is measured or told, with its unit: the same whether it came in a message of the bus or in a sentence. Angles in
 * rad, positions in degrees, and as the database has them litres and rpm.
 */
export const quantityUnits = {
  heading: 'rad',
  deviation: 'rad',
  variation: 'rad',
  'rate-of-turn': 'rad/s',
  yaw: 'rad',
  pitch: 'rad',
  roll: 'rad',
  latitude: 'deg',
  longitude: 'deg',
  altitude: 'm',
  course: 'rad',
  'speed-over-ground': 'm/s',
  'speed-through-water': 'm/s',
  depth: 'm',
  'depth-offset': 'm',
  log: 'm',
  trip: 'm',
  'wind-angle': 'rad',
  'wind-speed': 'm/s',
  rudder: 'rad',
  'rudder-order': 'rad',
  'engine-speed': 'rpm',
  'engine-temperature': 'K',
  'oil-pressure': 'Pa',
  'alternator-voltage': 'V',
  'fuel-rate': 'L/h',
  'engine-run': 's',
  'tank-level': '%',
  'tank-capacity': 'L',
  'battery-voltage': 'V',
  'battery-current': 'A',
  'battery-temperature': 'K',
  'battery-charge': '%',
  temperature: 'K',
  pressure: 'Pa',
  humidity: '%',
  'cross-track': 'm',
  'waypoint-distance': 'm',
  'waypoint-bearing': 'rad',
  'waypoint-closing': 'm/s',
  'heading-to-steer': 'rad',
  set: 'rad',
  drift: 'm/s',
  'unix-time': 's',
  'zone-offset': 's',
} as const;

export type Quantity = keyof typeof quantityUnits;

/** What a direction, a depth or a wind is measured from. */
export type ValueReference =
  | 'true'
  | 'magnetic'
  | 'apparent'
  | 'true-to-bow'
  | 'true-over-water'
  | 'transducer'
  | 'surface'
  | 'keel';

/** One value as it was told. What was not told is not there: never zero, never empty. */
export interface DecodedValue {
  readonly quantity: Quantity;
  readonly value: number;
  readonly reference?: ValueReference;
  /** which of several engines, tanks, batteries or rudders, as sent */
  readonly instance?: number;
  /** tank contents, source of a temperature, pressure or humidity, in the database’s numbers */
  readonly kind?: number;
}
