import type { ServerResponse } from 'node:http';
import type { Answer } from './answer.ts';
import type { StaticFile } from './static-files.ts';

/** What goes with every answer of one listener. */
export type CommonHeaders = Readonly<Record<string, string>>;

const json = 'application/json; charset=utf-8';

/** Sends an answer with the headers that go with all of them; nothing of it is kept by a browser. */
export const sendAnswer = (response: ServerResponse, common: CommonHeaders, answer: Answer): void => {
  const { status, picture, text, hash, folder, retryAfterS } = answer;
  response.writeHead(status, {
    ...common,
    ...(hash === undefined ? {} : { etag: `"${hash}"` }),
    ...(folder === undefined ? {} : { 'fairlead-folder': folder }),
    ...(retryAfterS === undefined ? {} : { 'retry-after': String(retryAfterS) }),
    'content-type': picture?.type ?? json,
    'cache-control': 'no-store',
  });
  response.end(picture?.bytes ?? text ?? JSON.stringify(answer.json));
};

/** Sends a file of a page; one whose name carries a hash of its content may be kept for good. */
export const sendFile = (
  response: ServerResponse,
  common: CommonHeaders,
  { type, body, lasting }: StaticFile,
): void => {
  const cache = lasting ? 'public, max-age=31536000, immutable' : 'no-cache';
  response.writeHead(200, { ...common, 'content-type': type, 'cache-control': cache });
  response.end(body);
};
