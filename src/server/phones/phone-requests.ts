import type { IncomingMessage } from 'node:http';
import { UserError } from '../../core/boat/user-error.ts';
import { type Answer, says } from '../answer.ts';
import {
  notPaired,
  type PhoneAsks,
  phoneEntries,
  phoneLogRequest,
  phonePicture,
  phoneSheetRequest,
} from './phone-boats.ts';
import type { PhoneDesk } from './phone-desk.ts';
import { phonePair } from './phone-pair.ts';

/** Who sends a request, by the address of the connection. */
export interface Sender {
  readonly address: string;
  /** a paired phone spoke from there */
  readonly know: () => void;
}

/** What an address asks for. */
interface Parts {
  readonly what: 'pair' | 'me' | 'boats' | 'sheet' | 'log' | 'picture';
  readonly boat: string;
  readonly hash: string;
}

const partsOf = (path: string): Parts | undefined => {
  const [whole, plain, written = '', part, hash = ''] =
    /^\/api\/phone\/(?:(pair|me|boats)|boats\/([^/]+)\/(?:(sheet|log)|pictures\/([0-9a-f]{64})))$/.exec(path) ?? [];
  if (whole === undefined) return undefined;
  // reason: the expression leaves no other words
  const what = (plain ?? part ?? 'picture') as Parts['what'];
  try {
    return { what, boat: decodeURIComponent(written), hash };
  } catch {
    return undefined;
  }
};

const methods: Readonly<Record<Parts['what'], readonly string[]>> = {
  pair: ['POST'],
  me: ['GET'],
  boats: ['GET'],
  sheet: ['GET'],
  log: ['GET', 'POST'],
  picture: ['PUT'],
};

const tokenIn = ({ headers: { authorization = '' } }: IncomingMessage): string | undefined =>
  /^Bearer ([A-Za-z0-9_-]{43})$/.exec(authorization)?.[1];

const forPaired = async (asks: PhoneAsks, { what, hash }: Parts, desk: PhoneDesk): Promise<Answer> => {
  switch (what) {
    case 'boats':
      return { status: 200, json: (await desk.boats.list()).map(({ id, name }) => ({ id, name })) };
    case 'sheet':
      return phoneSheetRequest(asks, desk);
    case 'log':
      return asks.request.method === 'GET' ? phoneLogRequest(asks, desk) : phoneEntries(asks, desk);
    case 'picture':
      return phonePicture(asks, hash, desk);
    default:
      return { status: 200, json: { id: asks.device.id, name: asks.device.name } };
  }
};

const answerTo = async (request: IncomingMessage, sender: Sender, parts: Parts, desk: PhoneDesk): Promise<Answer> => {
  if (!methods[parts.what].includes(request.method ?? '')) return says(405, 'This cannot be done here.');
  if (parts.what === 'pair') return phonePair(request, sender.address, desk);
  const token = tokenIn(request);
  const device = token === undefined ? undefined : await desk.devices.holderOf(token);
  if (token === undefined || device === undefined) return notPaired;
  sender.know();
  const isStillPaired = async (): Promise<boolean> => (await desk.devices.holderOf(token)) !== undefined;
  return forPaired({ request, boat: parts.boat, device, isStillPaired }, parts, desk);
};

/**
 * Answers what a phone asks: `POST /api/phone/pair` takes a code for a token; with it `GET /api/phone/me` says who the phone
 * is, `GET /api/phone/boats` lists the boats, `GET /api/phone/boats/ID/sheet` gives what is to be done there, `GET` and
 * `POST …/log` read her log and add to it, `PUT …/pictures/HASH` leaves a picture beside her. Undefined for any other
 * address. Nothing here reaches a bus.
 */
export const phoneRequest = async (
  request: IncomingMessage,
  sender: Sender,
  desk: PhoneDesk,
): Promise<Answer | undefined> => {
  const parts = partsOf((request.url ?? '').split('?')[0] ?? '');
  if (parts === undefined) return undefined;
  try {
    return await answerTo(request, sender, parts, desk);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    // the disk of the laptop refused: the phone keeps what it has and sends it again. The place is no matter of a phone.
    return { ...says(503, error.says, error.whatToDo), retryAfterS: 30 };
  }
};
