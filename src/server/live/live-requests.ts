import type { IncomingMessage, ServerResponse } from 'node:http';
import type * as z from 'zod';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { plan } from '../../core/plan.ts';
import { wiresAboard } from '../../core/proof/live/wires-aboard.ts';
import { serialPorts } from '../../live/sources/serial-port.ts';
import type { BoatFolder } from '../../node/boat-folder.ts';
import { type Answer, says } from '../answer.ts';
import { bodyOf } from '../body-of.ts';
import { refusalOfWriting } from '../refusal-of-writing.ts';
import type { LiveSessions } from './live-sessions.ts';
import { askWishSchema, listenWishSchema, wishedSource } from './live-wish.ts';

/** What a request about live data is answered from. */
export interface LiveDesk {
  readonly boats: BoatFolder;
  readonly sessions: LiveSessions;
  /** the serial ports of this machine */
  readonly ports?: () => Promise<readonly string[]>;
}

/** The answer was begun and goes on for as long as the page looks on. */
export const goesOn = 'goes on';

const mostBytes = 10_000;
const noSuchBoat = says(404, 'There is no such boat in the folder.', 'Save her in the folder first.');
const notListening = says(409, 'Nobody listens to this boat now.', 'Begin to listen first.');

const wishIn = async <Schema extends z.ZodType>(
  request: IncomingMessage,
  schema: Schema,
): Promise<z.infer<Schema> | Answer> => {
  const refused = refusalOfWriting(request, {
    type: /^application\/json(;|$)/i,
    as: 'What is to be listened to is sent as application/json.',
  });
  if (refused !== undefined) return refused;
  const bytes = await bodyOf(request, mostBytes);
  if (bytes === undefined) return says(413, 'This is more than a source needs.');
  let sent: unknown;
  try {
    sent = JSON.parse(bytes.toString('utf8'));
  } catch {
    return says(422, 'This was not sent as JSON.');
  }
  const read = schema.safeParse(sent);
  return read.success
    ? read.data
    : says(422, 'This names no source that can be listened to.', 'Choose one of the list.');
};

const isAnswer = (found: object): found is Answer => 'status' in found;

const begin = async (request: IncomingMessage, id: string, desk: LiveDesk): Promise<Answer> => {
  const { boats, sessions, ports = serialPorts } = desk;
  const wish = await wishIn(request, listenWishSchema);
  if (isAnswer(wish)) return wish;
  if (sessions.isOn(id)) return says(409, 'This boat is listened to already.', 'Stop that first.');
  const source = wishedSource(wish.source, wish.source.kind === 'serial' ? await ports() : []);
  if (source === undefined) return says(422, 'This machine has no such serial port now.', 'Plug it in and look again.');
  const found = await boats.read(id);
  if (found === undefined) return noSuchBoat;
  const boat = readBoat(found.text);
  // what is held against it hangs on no layout, so the quick ones do
  const planned = plan(boat, new Map());
  if (wish.on !== undefined && !wiresAboard(boat, planned).includes(wish.on))
    return says(422, 'The boat has no such wire.', 'Choose one of the list.');
  const recording = wish.record ? await boats.newRecording(id, Date.now()) : undefined;
  const record = recording === undefined ? {} : { recordTo: recording.path, file: recording.name };
  const begun = sessions.begin(id, { boat, plan: planned, source, on: wish.on, ...record });
  return begun ? { status: 201, json: sessions.told(id) } : says(409, 'This boat is listened to already.');
};

const ask = async (request: IncomingMessage, id: string, { sessions }: LiveDesk): Promise<Answer> => {
  const wish = await wishIn(request, askWishSchema);
  if (isAnswer(wish)) return wish;
  return sessions.ask(id, { line: wish.line, isThorough: wish.thorough }) ? { status: 202, json: {} } : notListening;
};

const stop = async (request: IncomingMessage, id: string, { sessions }: LiveDesk): Promise<Answer> => {
  const refused = refusalOfWriting(request, { type: /^application\/json(;|$)/i, as: 'Stopping is asked for as JSON.' });
  if (refused !== undefined) return refused;
  await sessions.stop(id);
  return { status: 200, json: { listening: false } };
};

interface Parts {
  readonly id: string;
  readonly what: 'live' | 'flow' | 'ask' | 'curve';
  readonly reading: number;
}

const partsOf = (address: string): Parts | undefined => {
  const [, written, flow, ask_, reading] =
    /^\/api\/boats\/([^/]+)\/live(?:(\/flow)|(\/ask)|\/curve\/(\d{1,5}))?$/.exec(address) ?? [];
  if (written === undefined) return undefined;
  const what = flow !== undefined ? 'flow' : ask_ !== undefined ? 'ask' : reading !== undefined ? 'curve' : 'live';
  try {
    return { id: decodeURIComponent(written), what, reading: Number(reading ?? -1) };
  } catch {
    return undefined;
  }
};

const read = (
  response: ServerResponse,
  { id, what, reading }: Parts,
  { sessions }: LiveDesk,
): Answer | typeof goesOn => {
  if (what === 'flow')
    return sessions.look(id, response) ? goesOn : says(429, 'Too many pages look on already.', 'Close some of them.');
  if (what === 'live') return { status: 200, json: sessions.told(id) };
  if (what === 'ask') return says(405, 'Asking is not read.');
  const curve = sessions.curve(id, reading);
  return curve === undefined ? says(404, 'There is nothing to draw of this reading.') : { status: 200, json: curve };
};

const answerTo = async (
  request: IncomingMessage,
  response: ServerResponse,
  address: string,
  desk: LiveDesk,
): Promise<Answer | typeof goesOn | undefined> => {
  if (address === '/api/live/ports' && request.method === 'GET')
    return { status: 200, json: await (desk.ports ?? serialPorts)() };
  const parts = partsOf(address);
  if (parts === undefined) return undefined;
  const { id, what } = parts;
  if (request.method === 'GET') return read(response, parts, desk);
  if (request.method === 'POST' && what === 'live') return begin(request, id, desk);
  if (request.method === 'POST' && what === 'ask') return ask(request, id, desk);
  if (request.method === 'DELETE' && what === 'live') return stop(request, id, desk);
  return says(405, 'This cannot be done here.');
};

/**
 * Answers what concerns live data: `GET /api/live/ports` lists the serial ports of this machine; `POST /api/boats/ID/live`
 * begins to listen to a source, `GET` says how it stands, `DELETE` stops; `GET …/live/flow` sends how it stands twice a
 * second for as long as the page looks on (server-sent events); `GET …/live/curve/N` gives the last minutes of one reading;
 * `POST …/live/ask` asks the units who they are, with a person’s yes in it. Undefined for any other address.
 */
export const liveRequest = async (
  request: IncomingMessage,
  response: ServerResponse,
  address: string,
  desk: LiveDesk,
): Promise<Answer | typeof goesOn | undefined> => {
  try {
    return await answerTo(request, response, address, desk);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    return says(422, error.says, error.whatToDo);
  }
};
