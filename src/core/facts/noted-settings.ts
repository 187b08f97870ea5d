import type { SourceKey } from './sources.ts';

/** Settings that a person notes one by one before a unit is switched off, by the names they have in a boat file. */
const bySheetKind = {
  display: ['depth offset', 'speed correction', 'wind angle offset', 'alarm limits', 'where waypoints and routes are'],
  plotter: ['depth offset', 'speed correction', 'wind angle offset', 'alarm limits', 'where waypoints and routes are'],
  computer: ['ports and their speeds', 'where waypoints and routes are'],
  instrument: ['depth offset', 'speed correction', 'wind angle offset', 'magnetic variation', 'alarm limits'],
  sounder: ['depth offset', 'transducer', 'alarm limits'],
  'log-depth': ['depth offset', 'speed correction', 'log distance', 'alarm limits'],
  'wind-sensor': ['wind angle offset', 'wind speed correction'],
  'depth-sensor': ['depth offset'],
  'speed-sensor': ['speed correction'],
  'steering-compass': ['compass deviation'],
  'pilot-computer': ['drive type', 'rudder limit', 'rudder gain', 'counter rudder', 'compass deviation'],
  pilot: ['rudder limit', 'rudder gain', 'counter rudder', 'compass deviation'],
  'pilot-head': ['rudder limit', 'rudder gain', 'counter rudder'],
  'heading-sensor': ['alignment', 'compass deviation', 'when it was swung'],
  'vhf-radio': ['MMSI', 'group numbers', 'names kept in it'],
  'mfhf-radio': ['MMSI', 'group numbers', 'channels kept in it'],
  ais: ['MMSI', 'ship name', 'call sign', 'measures and place of the antenna'],
  radar: ['alignment to the bow', 'height of the scanner', 'sectors that do not send'],
  'battery-monitor': ['capacity', 'charge efficiency', 'what it has counted'],
  'tank-adapter': ['tank sizes and their tables', 'tank instances'],
  gateway: ['engine instance', 'engine type', 'alarm limits'],
  converter: ['ports and their speeds', 'filters', 'which sentences pass'],
  multiplexer: ['ports and their speeds', 'filters', 'which sentences pass'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

type Noted = (typeof bySheetKind)[keyof typeof bySheetKind][number];

/** Numbers by which a radio or a ship is called: kept in the file, and shown by their last two digits only. */
const closed: readonly Noted[] = ['MMSI', 'group numbers', 'call sign'];

/** What is noted out of a unit one by one, by kind of sheet, and which of it is nobody else’s. Common practice. */
export const notedSettings: {
  readonly source: SourceKey;
  readonly byKind: Readonly<Record<string, readonly string[]>>;
  readonly closed: readonly string[];
} = { source: 'practice-copied-settings', byKind: bySheetKind, closed };
