import type { IncomingMessage } from 'node:http';
import { largestPictureBytes } from '../../core/boat/picture-limits.ts';
import { pictureTypeOf } from '../../core/boat/picture-type-of.ts';
import { type Answer, says } from '../answer.ts';
import { jsonIn } from '../json-in.ts';
import { readLogRequest } from '../log-requests.ts';
import { asPicture, keepSent } from '../picture-requests.ts';
import { bodyFromPhone } from './body-from-phone.ts';
import { entriesFromPhone } from './entries-from-phone.ts';
import type { PhoneDesk } from './phone-desk.ts';
import { sheetAsked } from './sheet-asked.ts';

/** A request of a paired phone about one boat. */
export interface PhoneAsks {
  readonly request: IncomingMessage;
  /** id of the boat, to be looked up in the list of the folder */
  readonly boat: string;
  readonly device: { readonly id: string; readonly name: string };
  /** asked again before anything is written: a phone may be revoked while it sends */
  readonly isStillPaired: () => Promise<boolean>;
}

const asEntries = {
  type: /^application\/json(;|$)/i,
  as: 'Entries are sent as application/json.',
  mostBytes: 1_000_000,
};

const noSuchBoat = says(404, 'There is no such boat on the laptop.', 'Choose one of the list.');
export const notPaired = says(401, 'This phone is not paired.', 'Pair it by the code that the laptop shows.');
const enough: Answer = {
  ...says(429, 'This phone has sent more than fits into an hour.', 'The rest is kept on it and sent later.'),
  retryAfterS: 600,
};

/** What is to be done in the boat, as it is planned. */
export const phoneSheetRequest = async (
  { request, boat }: PhoneAsks,
  { boats, sheets }: PhoneDesk,
): Promise<Answer> => {
  const found = await boats.read(boat);
  if (found === undefined) return noSuchBoat;
  const log = await boats.log(boat);
  const told = await sheets.sheetOf(boat, sheetAsked(found, (await log?.read()) ?? '', new Date()));
  const isKnown = told.hash !== undefined && request.headers['if-none-match'] === `"${told.hash}"`;
  return isKnown ? { status: 304, text: '', hash: told.hash } : told;
};

/** The log of the boat, to be read. */
export const phoneLogRequest = async ({ request, boat }: PhoneAsks, { boats }: PhoneDesk): Promise<Answer> => {
  const log = await boats.log(boat);
  return log === undefined ? noSuchBoat : readLogRequest(request, log);
};

/** Entries for the log of the boat: all of them or none; one that is there already is left as it is. */
export const phoneEntries = async (asks: PhoneAsks, desk: PhoneDesk): Promise<Answer> => {
  const { request, boat, device, isStillPaired } = asks;
  const log = await desk.boats.log(boat);
  if (log === undefined) return noSuchBoat;
  if (!desk.entryBytes.hasRoom(device.id)) return enough;
  const bytes = await bodyFromPhone(request, asEntries, desk);
  if (!Buffer.isBuffer(bytes)) return bytes;
  const sent = jsonIn(bytes)?.value;
  const entries = entriesFromPhone(sent, { name: device.name, logText: await log.read() });
  if (typeof entries === 'string') return says(422, entries);
  if (!(await isStillPaired())) return notPaired;
  const added = await log.add(entries);
  // what is sent twice because its answer was lost does not count
  if (added > 0) desk.entryBytes.take(device.id, bytes.length);
  return { status: 200, json: { added } };
};

/** A picture to lie beside the boat file, under the hash of its bytes. */
export const phonePicture = async (asks: PhoneAsks, hash: string, desk: PhoneDesk): Promise<Answer> => {
  const { request, boat, device, isStillPaired } = asks;
  const pictures = await desk.boats.pictures(boat);
  if (pictures === undefined) return noSuchBoat;
  const isThere = (await pictures.read(hash)) !== undefined;
  if (!isThere && !desk.pictures.hasRoom(device.id)) return enough;
  const bytes = await bodyFromPhone(request, { ...asPicture, mostBytes: largestPictureBytes }, desk);
  if (!Buffer.isBuffer(bytes)) return bytes;
  if (pictureTypeOf(bytes) === undefined) return says(422, 'This is no picture that can be kept.');
  if (!(await isStillPaired())) return notPaired;
  const kept = await keepSent(bytes, pictures, hash);
  if (kept.status === 200 && !isThere) desk.pictures.take(device.id);
  return kept;
};
