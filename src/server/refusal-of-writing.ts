import type { IncomingMessage } from 'node:http';
import { type Answer, says } from './answer.ts';

/** What is wrong with a request that wants to write, before its body is read; undefined where it may go on. */
export const refusalOfWriting = (
  request: IncomingMessage,
  wanted: { readonly type: RegExp; readonly as: string },
): Answer | undefined => {
  const { host, origin, 'content-type': type, 'sec-fetch-site': site } = request.headers;
  // a browser names the page that asks in every request that writes; a page elsewhere cannot leave it out or change it
  if (origin !== `http://${host}` || (site !== undefined && site !== 'same-origin')) {
    return says(403, 'Only the app itself may write here.');
  }
  // no form of another page can send such a type
  return wanted.type.test(type ?? '') ? undefined : says(415, wanted.as);
};
