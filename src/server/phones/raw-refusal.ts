import { STATUS_CODES } from 'node:http';
import { phoneHeaders } from './phone-headers.ts';

/** An answer to what is not even http, as it goes over the wire: the headers of any other answer, and the end of the connection. */
export const rawRefusal = (status: number, sentence: string): string => {
  const body = JSON.stringify({ says: sentence });
  const headers = {
    ...phoneHeaders,
    'content-type': 'application/json; charset=utf-8',
    'content-length': String(Buffer.byteLength(body)),
    'cache-control': 'no-store',
    connection: 'close',
  };
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
  return `HTTP/1.1 ${status} ${STATUS_CODES[status]}\r\n${lines.join('')}\r\n${body}`;
};
