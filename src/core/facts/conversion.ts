import type { ReadingId } from './reading-ids.ts';

/** Which sentence a converter takes for a reading when several arrive, the best first, where its manual is silent. */
export const sentencePreference: ReadonlyMap<ReadingId, readonly string[]> = new Map<ReadingId, readonly string[]>([
  ['depth', ['DPT', 'DBT', 'DBS', 'DBK']],
  ['wind-apparent', ['MWV', 'VWR']],
  ['wind-true', ['MWV', 'VWT']],
  ['heading', ['HDG', 'HDM', 'HDT', 'VHW']],
  ['course-speed-ground', ['VTG', 'RMC', 'RMA']],
]);

/** What is lost on the way from the bus into NMEA 0183, unless the converter's manual says otherwise. */
export const lostInConversion = {
  source: 'practice-converter',
  lost: [
    'the sender and its instance',
    'a second rudder, engine, tank or battery',
    'the flag that says which reference a reading has',
    'the number that ties readings of one moment together',
    'status and alarm bits, and all engine data',
    'resolution below 0.1 degree and 0.1 knot',
    'a faster rate than once a second on a 4800 baud line',
    'routes: names and positions need two sentences that seldom travel together',
    'names of ships',
    'attitude, heave and trim',
    'switching, lighting and entertainment',
  ],
} as const;
