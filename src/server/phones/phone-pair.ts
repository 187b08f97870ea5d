import type { IncomingMessage } from 'node:http';
import * as z from 'zod';
import { type Answer, says } from '../answer.ts';
import { jsonIn } from '../json-in.ts';
import { bodyFromPhone } from './body-from-phone.ts';
import type { PhoneDesk } from './phone-desk.ts';

const longestName = 40;

/** A name as it is shown and signed with: no marks that cannot be seen or that turn the writing round. */
const nameSchema = z
  .string()
  .max(200)
  .transform((text) => text.normalize('NFC').replace(/\s+/gu, ' ').trim())
  .pipe(
    z
      .string()
      .min(1)
      .max(longestName)
      .regex(/^[^\p{C}\p{Zl}\p{Zp}]+$/u),
  );

const wishSchema = z.strictObject({ code: z.string().regex(/^\d{6}$/), name: nameSchema });

const wanted = { type: /^application\/json(;|$)/i, as: 'A code is sent as application/json.', mostBytes: 1000 };

const wrong = says(403, 'This is not the code, or it has run out.', 'Look at the laptop, and ask there for a new one.');
const tooOften: Answer = {
  ...says(429, 'Too many codes were tried.', 'Wait ten minutes, then ask for a new one on the laptop.'),
  retryAfterS: 600,
};

/** Pairs a phone: the code that stands on the laptop against a token that only this phone gets. */
export const phonePair = async (request: IncomingMessage, sender: string, desk: PhoneDesk): Promise<Answer> => {
  const bytes = await bodyFromPhone(request, wanted, desk);
  if (!Buffer.isBuffer(bytes)) return bytes;
  const wish = wishSchema.safeParse(jsonIn(bytes)?.value);
  if (!wish.success)
    return says(422, `A phone is paired by six digits and a name of 1 to ${longestName} letters.`, 'Type both again.');
  const tried = desk.codes.try(wish.data.code, sender);
  if (tried === 'too often') return tooOften;
  if (tried === 'wrong') return wrong;
  const { token, device } = await desk.devices.pair(wish.data.name);
  return { status: 201, json: { token, device: { id: device.id, name: device.name } } };
};
