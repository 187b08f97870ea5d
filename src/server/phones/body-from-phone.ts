import type { IncomingMessage } from 'node:http';
import { type Answer, says } from '../answer.ts';
import { bodyOf } from '../body-of.ts';
import type { PhoneDesk } from './phone-desk.ts';

/** How a body is to be sent, and what is said of one that is not so. */
export interface WantedBody {
  readonly type: RegExp;
  readonly as: string;
  readonly mostBytes: number;
}

const full: Answer = { ...says(503, 'The laptop is taking in as much as it can.'), retryAfterS: 2 };

/** The body of a request, bounded in its type, its length and in how many are taken in at once; or why it is not taken. */
export const bodyFromPhone = async (
  request: IncomingMessage,
  { type, as, mostBytes }: WantedBody,
  { beginBody }: Pick<PhoneDesk, 'beginBody'>,
): Promise<Buffer | Answer> => {
  const { 'content-type': sentType, 'content-length': length, 'content-encoding': packed } = request.headers;
  if (!type.test(sentType ?? '') || packed !== undefined) return says(415, as);
  const tooMuch = says(413, `This is more than the ${mostBytes} bytes that are taken here.`, 'Send less at a time.');
  if (Number(length ?? 0) > mostBytes) return tooMuch;
  const end = beginBody();
  if (end === undefined) return full;
  try {
    return (await bodyOf(request, mostBytes)) ?? tooMuch;
  } finally {
    end();
  }
};
