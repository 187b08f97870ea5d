import type { IncomingMessage } from 'node:http';
import * as z from 'zod';
import { UserError } from '../../core/boat/user-error.ts';
import { type Answer, says } from '../answer.ts';
import { bodyOf } from '../body-of.ts';
import { jsonIn } from '../json-in.ts';
import { refusalOfWriting } from '../refusal-of-writing.ts';
import type { PhonesSwitch } from './phones-switch.ts';

const wishSchema = z.strictObject({ on: z.boolean() });
const mostBytes = 1000;

const turn = async (request: IncomingMessage, phones: PhonesSwitch): Promise<Answer> => {
  const bytes = await bodyOf(request, mostBytes);
  const wish = wishSchema.safeParse(bytes === undefined ? undefined : jsonIn(bytes)?.value);
  if (!wish.success) return says(422, 'Phones are let in or not: {"on": true} or {"on": false}.');
  await (wish.data.on ? phones.turnOn() : phones.turnOff());
  return { status: 200, json: await phones.told() };
};

const giveCode = async (phones: PhonesSwitch): Promise<Answer> =>
  (await phones.giveCode())
    ? { status: 201, json: await phones.told() }
    : says(409, 'Phones are not let in now.', 'Let them in first.');

const revoke = async (id: string, phones: PhonesSwitch): Promise<Answer> =>
  (await phones.revoke(id))
    ? { status: 200, json: await phones.told() }
    : says(404, 'There is no such phone.', 'Load the page anew to see those that are paired.');

const answerTo = async (request: IncomingMessage, path: string, phones: PhonesSwitch): Promise<Answer | undefined> => {
  const [whole, action, id] = /^\/api\/phones(?:\/(?:(lan|code)|([a-z0-9]{8})))?$/.exec(path) ?? [];
  if (whole === undefined) return undefined;
  const { method } = request;
  if (method === 'GET' && action === undefined && id === undefined) return { status: 200, json: await phones.told() };
  const isDone = action !== undefined ? method === 'POST' : method === 'DELETE' && id !== undefined;
  if (!isDone) return says(405, 'This cannot be done here.');
  const as = 'What concerns phones is asked for as application/json.';
  const refused = refusalOfWriting(request, { type: /^application\/json(;|$)/i, as });
  if (refused !== undefined) return refused;
  if (action === 'lan') return turn(request, phones);
  return action === 'code' ? giveCode(phones) : revoke(id ?? '', phones);
};

/**
 * Answers what the laptop’s own page asks about phones: `GET /api/phones` says whether they are let in, at which addresses,
 * the code that stands and who is paired; `POST /api/phones/lan` lets them in or not, `POST /api/phones/code` gives a new
 * code, `DELETE /api/phones/ID` revokes one. Undefined for any other address. The listener for phones knows none of these.
 */
export const laptopRequest = async (
  request: IncomingMessage,
  path: string,
  phones: PhonesSwitch,
): Promise<Answer | undefined> => {
  try {
    return await answerTo(request, path, phones);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    return says(409, error.place === undefined ? error.says : `${error.says} (${error.place})`, error.whatToDo);
  }
};
