import { messageField, messageText } from '../../facts/message-fields.ts';
import { type AisReport, reportOf } from './ais-report.ts';
import { paddedText } from './padded-text.ts';
import { fieldReader } from './read-field.ts';

type NumberKey = Exclude<keyof AisReport, 'own' | 'name' | 'callSign' | 'destination' | 'type' | 'mmsi'>;
type TextKey = 'name' | 'callSign' | 'destination';

interface Form {
  readonly numbers: Readonly<Partial<Record<NumberKey, string>>>;
  readonly texts: Readonly<Partial<Record<TextKey, string>>>;
}

const position = { longitude: 'longitude', latitude: 'latitude', course: 'cog', speed: 'sog' } as const;
const size = {
  shipType: 'typeOfShip',
  length: 'length',
  beam: 'beam',
  fromBow: 'positionReferenceFromBow',
  fromStarboard: 'positionReferenceFromStarboard',
} as const;

/** The fields of each message about ships, by the database’s names (source: pgn-database). */
const forms: ReadonlyMap<number, Form> = new Map<number, Form>([
  [129_038, { numbers: { ...position, heading: 'heading', rateOfTurn: 'rateOfTurn', status: 'navStatus' }, texts: {} }],
  [129_039, { numbers: { ...position, heading: 'heading' }, texts: {} }],
  [129_040, { numbers: { ...position, heading: 'trueHeading', ...size }, texts: { name: 'name' } }],
  [
    129_794,
    {
      numbers: { imo: 'imoNumber', ...size, draught: 'draft' },
      texts: { name: 'name', callSign: 'callsign', destination: 'destination' },
    },
  ],
  [129_809, { numbers: {}, texts: { name: 'name' } }],
  [129_810, { numbers: size, texts: { callSign: 'callsign' } }],
]);

/** Numbers that say nothing where they are zero, and the status that is not defined. */
const zeroIsNone: ReadonlySet<string> = new Set<NumberKey>(['imo', 'shipType', 'length', 'beam', 'draught']);
const undefinedStatus = 15;
/** From here on a unit tells of what it sends itself, or would send. */
const firstOwnCode = 2;
const lastOwnCode = 4;

const numberAt = (pgn: number, id: string, payload: Uint8Array): number | undefined => {
  const field = messageField(pgn, id);
  return field === undefined ? undefined : fieldReader(field)(payload);
};

const isNone = (key: string, value: number): boolean =>
  (value === 0 && zeroIsNone.has(key)) || (key === 'status' && value === undefinedStatus);

const textAt = (pgn: number, id: string, payload: Uint8Array): string | undefined => {
  const place = messageText(pgn, id);
  if (place === undefined || payload.length < place.firstByte + place.bytes) return undefined;
  return paddedText(payload.subarray(place.firstByte, place.firstByte + place.bytes));
};

/** The message types whose sender is the unit’s own ship are told by the code of its transceiver. */
const isOwn = (pgn: number, payload: Uint8Array): boolean => {
  const code = numberAt(pgn, 'aisTransceiverInformation', payload) ?? 0;
  return code >= firstOwnCode && code <= lastOwnCode;
};

/** Whether a message of the bus tells of a ship. */
export const isAisPgn = (pgn: number): boolean => forms.has(pgn);

/**
 * Reads what a message of the bus says of a ship (PGN 129038, 129039, 129040, 129794, 129809, 129810), in the same
 * form as a VDM sentence; undefined for another message, or for one too short to say whose it is.
 */
export const decodeAisMessage = (pgn: number, payload: Uint8Array): AisReport | undefined => {
  const form = forms.get(pgn);
  const mmsi = numberAt(pgn, 'userId', payload);
  const type = numberAt(pgn, 'messageId', payload);
  if (form === undefined || mmsi === undefined || type === undefined) return undefined;
  const said: Record<string, number | string | undefined> = {};
  for (const [key, id] of Object.entries(form.numbers)) {
    const value = numberAt(pgn, id, payload);
    said[key] = value === undefined || isNone(key, value) ? undefined : value;
  }
  for (const [key, id] of Object.entries(form.texts)) said[key] = textAt(pgn, id, payload);
  return reportOf({ type, mmsi, own: isOwn(pgn, payload) }, said);
};
