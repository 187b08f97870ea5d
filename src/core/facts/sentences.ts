import type { SourceKey } from './sources.ts';

/** Characters of a sentence, start character to CR LF, as seen. */
interface SentenceChars {
  readonly least: number;
  readonly median: number;
  readonly most: number;
  readonly source: SourceKey;
}

/** One sentence of NMEA 0183. */
export interface SentenceInfo {
  /** its three letters, without the talker's */
  readonly letters: string;
  readonly meaning: string;
  /** messages of the bus that say the same, as far as any do */
  readonly relatedPgns: readonly number[];
  /** usual interval; absent where an event sends it */
  readonly everyMs?: number;
  readonly intervalSource?: SourceKey;
  /** absent where none was seen */
  readonly chars?: SentenceChars;
  readonly remark?: string;
  readonly source: SourceKey;
}

const charsFrom =
  (source: SourceKey) =>
  (least: number, median: number, most: number): SentenceChars => ({ least, median, most, source });
const recorded = charsFrom('recorded-sentence-lengths');
const usual = charsFrom('usual-sentence-lengths');

const said = (row: Omit<SentenceInfo, 'source' | 'intervalSource'>): SentenceInfo => ({
  ...row,
  ...(row.everyMs === undefined ? {} : { intervalSource: 'practice-sentence-rates' as const }),
  source: 'raymond-nmea',
});

/** Sentences that matter in a refit, by their letters. HTD is known from other handbooks than the open document. */
export const sentences: readonly SentenceInfo[] = [
  said({
    letters: 'AAM',
    meaning: 'waypoint arrival alarm',
    relatedPgns: [129284],
    everyMs: 1000,
    chars: usual(17, 23, 23),
  }),
  said({
    letters: 'APB',
    meaning: 'autopilot sentence B: cross-track error, bearings, heading to steer',
    relatedPgns: [129283, 129284],
    everyMs: 1000,
    chars: usual(27, 56, 56),
    remark: "needs true/magnetic flags to agree with the pilot's compass",
  }),
  said({
    letters: 'BOD',
    meaning: 'bearing origin to destination',
    relatedPgns: [129284],
    everyMs: 1000,
    chars: usual(19, 29, 29),
  }),
  said({
    letters: 'BWC',
    meaning: 'bearing and distance to waypoint, great circle',
    relatedPgns: [129284],
    everyMs: 1000,
    chars: usual(69, 69, 69),
  }),
  said({
    letters: 'BWR',
    meaning: 'bearing and distance to waypoint, rhumb line',
    relatedPgns: [129284],
    everyMs: 1000,
    chars: usual(69, 69, 69),
  }),
  said({
    letters: 'DBK',
    meaning: 'depth below keel',
    relatedPgns: [128267],
    everyMs: 1000,
    remark: 'obsolete form; datum differs from DBT',
  }),
  said({
    letters: 'DBS',
    meaning: 'depth below surface',
    relatedPgns: [128267],
    everyMs: 1000,
    chars: usual(32, 32, 32),
    remark: 'obsolete form; datum differs from DBT',
  }),
  said({
    letters: 'DBT',
    meaning: 'depth below transducer',
    relatedPgns: [128267],
    everyMs: 1000,
    chars: recorded(38, 38, 38),
    remark: 'carries no offset',
  }),
  said({
    letters: 'DPT',
    meaning: 'depth below transducer plus offset',
    relatedPgns: [128267],
    everyMs: 1000,
    chars: usual(20, 20, 20),
    remark: 'offset sign: positive = to waterline, negative = to keel',
  }),
  said({ letters: 'DSC', meaning: 'digital selective calling', relatedPgns: [129808], remark: 'event' }),
  said({ letters: 'DTM', meaning: 'datum reference', relatedPgns: [129044], everyMs: 10000 }),
  said({ letters: 'GBS', meaning: 'GNSS fault detection', relatedPgns: [], everyMs: 1000, chars: usual(37, 37, 37) }),
  said({
    letters: 'GGA',
    meaning: 'GNSS fix: position, quality, satellites, altitude',
    relatedPgns: [129029],
    everyMs: 1000,
    chars: recorded(73, 74, 74),
    remark: 'no date',
  }),
  said({
    letters: 'GLL',
    meaning: 'position and time',
    relatedPgns: [129025, 129029],
    everyMs: 1000,
    chars: recorded(45, 52, 52),
    remark: 'no date',
  }),
  said({ letters: 'GNS', meaning: 'multi-constellation fix', relatedPgns: [129029], everyMs: 1000 }),
  said({
    letters: 'GSA',
    meaning: 'satellites used and dilution of precision',
    relatedPgns: [129539],
    everyMs: 1000,
    chars: recorded(58, 60, 60),
  }),
  said({
    letters: 'GSV',
    meaning: 'satellites in view',
    relatedPgns: [129540],
    everyMs: 1000,
    chars: recorded(30, 70, 70),
    remark: 'several sentences per set (4 satellites each)',
  }),
  said({
    letters: 'HDG',
    meaning: 'magnetic sensor heading, deviation, variation',
    relatedPgns: [127250, 127258],
    everyMs: 100,
    chars: usual(25, 25, 31),
    remark: 'null variation if unknown',
  }),
  said({
    letters: 'HDM',
    meaning: 'heading, magnetic',
    relatedPgns: [127250],
    everyMs: 100,
    chars: recorded(14, 14, 14),
    remark: 'older form',
  }),
  said({
    letters: 'HDT',
    meaning: 'heading, true',
    relatedPgns: [127250],
    everyMs: 100,
    chars: recorded(14, 14, 14),
    remark: 'replaced by THS in newer editions',
  }),
  said({ letters: 'HSC', meaning: 'heading steering command', relatedPgns: [127237] }),
  said({
    letters: 'HTD',
    meaning: 'heading/track control data',
    relatedPgns: [127237],
    everyMs: 1000,
    remark: 'not described in the open document',
  }),
  said({
    letters: 'MDA',
    meaning: 'meteorological composite',
    relatedPgns: [130311, 130306],
    everyMs: 1000,
    remark: 'obsolete form',
  }),
  said({
    letters: 'MTW',
    meaning: 'water temperature',
    relatedPgns: [130311, 130312, 130316],
    everyMs: 1000,
    chars: usual(18, 18, 18),
  }),
  said({
    letters: 'MWD',
    meaning: 'wind direction (north referenced) and speed',
    relatedPgns: [130306],
    everyMs: 1000,
    chars: recorded(31, 31, 31),
    remark: 'needs heading and variation at the sender',
  }),
  said({
    letters: 'MWV',
    meaning: 'wind angle and speed, R = apparent, T = true',
    relatedPgns: [130306],
    everyMs: 1000,
    chars: recorded(27, 27, 27),
    remark: 'both kinds share one formatter',
  }),
  said({
    letters: 'RMA',
    meaning: 'minimum navigation information, older radio-navigation',
    relatedPgns: [129025, 129026],
    everyMs: 1000,
    remark: 'legacy only',
  }),
  said({
    letters: 'RMB',
    meaning: 'minimum navigation information to waypoint',
    relatedPgns: [129283, 129284],
    everyMs: 1000,
    chars: usual(26, 67, 68),
  }),
  said({
    letters: 'RMC',
    meaning: 'minimum navigation information: time, date, position, SOG, COG, variation',
    relatedPgns: [129025, 129026, 129029, 126992, 127258],
    everyMs: 1000,
    chars: recorded(68, 68, 68),
    remark: 'variation often empty',
  }),
  said({
    letters: 'ROT',
    meaning: 'rate of turn',
    relatedPgns: [127251],
    everyMs: 100,
    remark: 'degrees per minute, bow to port negative',
  }),
  said({ letters: 'RPM', meaning: 'engine or shaft revolutions', relatedPgns: [127488], everyMs: 1000 }),
  said({
    letters: 'RSA',
    meaning: 'rudder angle',
    relatedPgns: [127245],
    everyMs: 1000,
    remark: 'two rudders in one sentence',
  }),
  said({
    letters: 'RTE',
    meaning: 'route: list of waypoint names',
    relatedPgns: [129285],
    remark: 'names only; positions need WPL',
  }),
  said({
    letters: 'THS',
    meaning: 'true heading and status',
    relatedPgns: [127250],
    everyMs: 100,
    remark: 'newer replacement of HDT',
  }),
  said({
    letters: 'TTM',
    meaning: 'tracked radar target',
    relatedPgns: [],
    everyMs: 2000,
    remark: 'no open PGN for most targets',
  }),
  said({ letters: 'VBW', meaning: 'water and ground speed, two axes', relatedPgns: [128259, 130578], everyMs: 1000 }),
  said({
    letters: 'VDM',
    meaning: 'AIS message from others',
    relatedPgns: [129038, 129039, 129040, 129041, 129794, 129809, 129810],
    chars: recorded(37, 49, 78),
    remark: '38400 baud; rate depends on traffic',
  }),
  said({
    letters: 'VDO',
    meaning: 'AIS message, own vessel',
    relatedPgns: [129038, 129039],
    chars: usual(48, 48, 48),
    remark: 'must not be shown as a target',
  }),
  said({ letters: 'VDR', meaning: 'set and drift', relatedPgns: [129291], everyMs: 1000, chars: recorded(18, 18, 18) }),
  said({
    letters: 'VHW',
    meaning: 'water speed and heading',
    relatedPgns: [128259, 127250],
    everyMs: 1000,
    chars: recorded(33, 33, 33),
    remark: 'a sender without compass may invent heading',
  }),
  said({ letters: 'VLW', meaning: 'distance through water', relatedPgns: [128275], everyMs: 1000 }),
  said({
    letters: 'VPW',
    meaning: 'speed parallel to wind',
    relatedPgns: [],
    everyMs: 1000,
    chars: recorded(20, 20, 21),
  }),
  said({
    letters: 'VTG',
    meaning: 'course and speed over ground',
    relatedPgns: [129026],
    everyMs: 1000,
    chars: recorded(35, 35, 40),
    remark: 'field layout changed between editions',
  }),
  said({
    letters: 'VWR',
    meaning: 'relative wind (left/right)',
    relatedPgns: [130306],
    everyMs: 1000,
    remark: 'older form',
  }),
  said({
    letters: 'VWT',
    meaning: 'true wind (left/right)',
    relatedPgns: [130306],
    everyMs: 1000,
    chars: recorded(35, 35, 35),
    remark: 'older form',
  }),
  said({ letters: 'WPL', meaning: 'waypoint position', relatedPgns: [129285] }),
  said({
    letters: 'XDR',
    meaning: 'transducer measurement, free form',
    relatedPgns: [127257, 130311, 130314, 127505, 127508],
    everyMs: 1000,
    chars: usual(92, 92, 92),
    remark: 'names are not standardised',
  }),
  said({
    letters: 'XTE',
    meaning: 'cross-track error',
    relatedPgns: [129283],
    everyMs: 1000,
    chars: recorded(22, 22, 22),
  }),
  said({
    letters: 'ZDA',
    meaning: 'UTC date and time, zone',
    relatedPgns: [126992, 129033],
    everyMs: 1000,
    chars: recorded(25, 25, 25),
  }),
];

const byLetters: ReadonlyMap<string, SentenceInfo> = new Map(sentences.map((info) => [info.letters, info]));

/**
 * What is known of a sentence, or undefined for one that is not in the table.
 *
 * @example sentenceInfo('DBT') // { meaning: 'depth below transducer', everyMs: 1000, chars: { median: 38, … }, … }
 */
export const sentenceInfo = (letters: string): SentenceInfo | undefined => byLetters.get(letters);
