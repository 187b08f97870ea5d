import { messageField } from '../../facts/message-fields.ts';
import { readingsOfPgn } from '../../facts/message-readings.ts';
import { fieldReader } from '../decode/read-field.ts';
import { positionWords } from './position-words.ts';

type Read = (payload: Uint8Array) => string | undefined;

const none: Read = () => undefined;

/** Reads the own position of a message, in words; the positions of others are nobody’s business (fields: pgn-database). */
export const ownPosition = (pgn: number): Read => {
  const [latitude, longitude] = [messageField(pgn, 'latitude'), messageField(pgn, 'longitude')];
  const isOwn = readingsOfPgn(pgn).some(({ reading }) => reading === 'position');
  if (latitude === undefined || longitude === undefined || !isOwn) return none;
  const [readLatitude, readLongitude] = [fieldReader(latitude), fieldReader(longitude)];
  return (payload) => {
    const [north, east] = [readLatitude(payload), readLongitude(payload)];
    return north === undefined || east === undefined ? undefined : positionWords({ latitude: north, longitude: east });
  };
};
