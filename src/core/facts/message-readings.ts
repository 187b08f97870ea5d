import type { ReadingId } from './reading-ids.ts';
import type { SourceKey } from './sources.ts';

/** What a message says of one reading. */
export interface MessageReading {
  readonly reading: ReadingId;
  /** the one reference the message is in; absent where the message can say either */
  readonly reference?: 'true' | 'magnetic' | 'keel' | 'waterline' | 'transducer';
  /** depth only: true where the offset travels with the depth (or is already in it), false where it cannot */
  readonly withOffset?: boolean;
  /** the message carries one of several kinds at a time: where a sheet says which, the others are not given */
  readonly oneOf?: true;
  /**
   * a listener understands it, but a sender gives it only where its sheet says so: by the bare reading beside the
   * message in `sends`, or by a turn that carries the reading to the port
   */
  readonly ifSaid?: true;
  /** absent for a bare reading, which needs no table */
  readonly source?: SourceKey;
}

const none: readonly MessageReading[] = [];
const one = (reading: ReadingId): readonly MessageReading[] => [{ reading }];

const tank: readonly MessageReading[] = [
  { reading: 'fuel-level', oneOf: true },
  { reading: 'water-level', oneOf: true },
];
const aisReport: readonly MessageReading[] = [{ reading: 'ais-targets' }, { reading: 'ais-own', ifSaid: true }];
// A masthead unit measures apparent wind only; whoever works out true wind says so on its sheet.
const wind: readonly MessageReading[] = [
  { reading: 'wind-apparent', oneOf: true },
  { reading: 'wind-true', oneOf: true, ifSaid: true },
];
const temperature: readonly MessageReading[] = [
  { reading: 'water-temperature', oneOf: true },
  { reading: 'air-temperature', oneOf: true, ifSaid: true },
];

/** What a message can carry stands in its fields; what senders leave empty or choose between is known from practice. */
const withSource = (entry: MessageReading): MessageReading => ({
  ...entry,
  source: entry.ifSaid || entry.oneOf ? 'practice-message-readings' : 'message-fields',
});
const table = <Key>(rows: readonly [Key, readonly MessageReading[]][]): ReadonlyMap<Key, readonly MessageReading[]> =>
  new Map(rows.map(([key, entries]) => [key, entries.map(withSource)]));

// 127502, 127509, 127513, 128000, 128776, 128777, 130576 and the protocol messages give none of the readings.
const byPgn = table<number>([
  [126983, one('alerts')],
  [126985, one('alerts')],
  [126992, one('time-date')],
  [127233, one('mob')],
  [127237, [{ reading: 'pilot-state' }, { reading: 'pilot-command' }]],
  [127245, one('rudder')],
  // The message has a field for variation; most sensors leave it empty.
  [127250, [{ reading: 'heading' }, { reading: 'variation', ifSaid: true }]],
  [127251, one('rate-of-turn')],
  [127257, one('attitude')],
  [127258, one('variation')],
  [127488, one('engine')],
  [127489, one('engine')],
  [127493, one('transmission')],
  [127501, one('switching')],
  [127503, one('ac-power')],
  [127504, one('ac-power')],
  [127505, tank],
  [127506, one('battery')],
  [127507, one('charging')],
  [127508, one('battery')],
  [127751, [{ reading: 'battery', ifSaid: true }]],
  [128259, one('speed-water')],
  [128267, [{ reading: 'depth', withOffset: true }]],
  [128275, one('log-distance')],
  [129025, one('position')],
  [129026, one('course-speed-ground')],
  [129029, [{ reading: 'position' }, { reading: 'time-date' }]],
  [129033, one('time-date')],
  [129038, aisReport],
  [129039, aisReport],
  [129040, aisReport],
  [129041, one('ais-targets')],
  [129283, one('cross-track')],
  [129284, one('route')],
  [129285, one('route')],
  [129291, one('set-drift')],
  [129808, one('dsc-calls')],
  [130306, wind],
  [130310, [...temperature, { reading: 'pressure', ifSaid: true }]],
  [130311, [...temperature, { reading: 'humidity', ifSaid: true }, { reading: 'pressure', ifSaid: true }]],
  [130312, temperature],
  [130313, one('humidity')],
  [130314, one('pressure')],
  [130316, temperature],
  [
    130577,
    [
      { reading: 'course-speed-ground' },
      { reading: 'heading' },
      { reading: 'speed-water', ifSaid: true },
      { reading: 'set-drift', ifSaid: true },
    ],
  ],
  [130578, one('speed-water')],
]);

// RPM is not the engine reading: revolutions only, without pressure, temperature or alarms.
// RTE has names without positions and WPL positions without order, so neither alone gives a route.
const bySentence = table<string>([
  ['APB', one('cross-track')],
  ['DBK', [{ reading: 'depth', reference: 'keel', withOffset: true }]],
  ['DBS', [{ reading: 'depth', reference: 'waterline', withOffset: true }]],
  ['DBT', [{ reading: 'depth', reference: 'transducer', withOffset: false }]],
  ['DPT', [{ reading: 'depth', withOffset: true }]],
  ['DSC', one('dsc-calls')],
  ['GGA', one('position')],
  ['GLL', one('position')],
  ['GNS', one('position')],
  ['HDG', [{ reading: 'heading', reference: 'magnetic' }, { reading: 'variation' }]],
  ['HDM', [{ reading: 'heading', reference: 'magnetic' }]],
  ['HDT', [{ reading: 'heading', reference: 'true' }]],
  ['HSC', one('pilot-command')],
  ['HTD', [{ reading: 'pilot-state' }, { reading: 'pilot-command' }]],
  [
    'MDA',
    [
      { reading: 'pressure' },
      { reading: 'air-temperature' },
      { reading: 'humidity', ifSaid: true },
      { reading: 'water-temperature', ifSaid: true },
      { reading: 'wind-true', ifSaid: true },
    ],
  ],
  ['MTW', one('water-temperature')],
  ['MWD', one('wind-true')],
  ['MWV', wind],
  ['RMA', [{ reading: 'position' }, { reading: 'course-speed-ground' }]],
  ['RMB', [{ reading: 'route' }, { reading: 'cross-track' }]],
  [
    'RMC',
    [{ reading: 'position' }, { reading: 'course-speed-ground' }, { reading: 'time-date' }, { reading: 'variation' }],
  ],
  ['ROT', one('rate-of-turn')],
  ['RSA', one('rudder')],
  ['THS', [{ reading: 'heading', reference: 'true' }]],
  ['TTM', one('radar-targets')],
  ['VBW', one('speed-water')],
  ['VDM', one('ais-targets')],
  ['VDO', one('ais-own')],
  ['VDR', one('set-drift')],
  // The heading fields of VHW are left out: a log without a compass may invent them.
  ['VHW', one('speed-water')],
  ['VLW', one('log-distance')],
  ['VTG', one('course-speed-ground')],
  ['VWR', one('wind-apparent')],
  ['VWT', one('wind-true')],
  [
    'XDR',
    [
      { reading: 'attitude', ifSaid: true },
      { reading: 'pressure', ifSaid: true },
      { reading: 'air-temperature', ifSaid: true },
      { reading: 'fuel-level', ifSaid: true },
      { reading: 'water-level', ifSaid: true },
      { reading: 'battery', ifSaid: true },
      { reading: 'rudder', ifSaid: true },
    ],
  ],
  ['XTE', one('cross-track')],
  ['ZDA', one('time-date')],
]);

/** The readings a PGN can carry; none for protocol messages and for a PGN the table does not know. */
export const readingsOfPgn = (pgn: number): readonly MessageReading[] => byPgn.get(pgn) ?? none;

/** The readings a sentence can carry, by its three letters; none for one the table does not know. */
export const readingsOfSentence = (letters: string): readonly MessageReading[] => bySentence.get(letters) ?? none;

interface Said {
  readonly pgn?: number;
  readonly sentence?: string;
  readonly reading?: ReadingId;
}

/** The readings one entry of `sends` or `hears` stands for: those of its PGN or sentence, or its own bare reading. */
export const readingsOf = (said: Said): readonly MessageReading[] => {
  if (said.pgn !== undefined) return readingsOfPgn(said.pgn);
  if (said.sentence !== undefined) return readingsOfSentence(said.sentence);
  return said.reading === undefined ? none : one(said.reading);
};
