import type { IncomingMessage } from 'node:http';
import { expect, test } from 'vitest';
import { refusalOfAddress } from './refusal-of-address.ts';

const hosts = new Set(['192.168.1.20', 'chart-table', '127.0.0.1', 'localhost']);

const statusOf = (url: string, headers: Record<string, string>, port = 4611): number | undefined => {
  // reason: of a request nothing but these is looked at
  const request = { url, headers, rawHeaders: Object.entries(headers).flat() } as unknown as IncomingMessage;
  return refusalOfAddress(request, { hosts, port })?.status;
};

const host = '192.168.1.20:4611';

test.each([
  ['its address', { host }],
  ['its name, in any letters', { host: 'Chart-Table:4611' }],
  ['its address, by its own page', { host, origin: `http://${host}` }],
])('a request for this machine by %s goes on', (_, headers) => {
  expect(statusOf('/api/phone/boats', headers)).toBeUndefined();
});

test('at port 80 a browser leaves the port out', () => {
  expect(statusOf('/', { host: '192.168.1.20' }, 80)).toBeUndefined();
  expect(statusOf('/', { host: '192.168.1.20' })).toBe(421);
});

test.each([
  ['another name that leads here (DNS rebinding)', 421, { host: 'boats.example:4611' }],
  ['a name that begins like ours', 421, { host: '192.168.1.20.example:4611' }],
  ['another port', 421, { host: '192.168.1.20:4610' }],
  ['no name', 421, {}],
  ['an empty name', 421, { host: ':4611' }],
  ['two names', 421, { host, Host: 'boats.example' }],
  ['a page elsewhere', 403, { host, origin: 'http://boats.example' }],
  ['a page of the laptop’s own app', 403, { host, origin: 'http://127.0.0.1:4610' }],
  ['a page with no name', 403, { host, origin: 'null' }],
  ['a page that says where it is not', 403, { host, 'sec-fetch-site': 'cross-site' }],
])('a request by %s is refused', (_, status, headers) => {
  expect(statusOf('/api/phone/boats', headers)).toBe(status);
});

test.each([
  '',
  '*',
  'http://192.168.1.20:4611/',
  '//etc/passwd',
  '/../package.json',
  '/assets/../../package.json',
  '/assets/./x',
  '/%2e%2e/package.json',
  '/api/phone/boats/%2e%2e%2fgannet/log',
  '/api/phone/boats/..%2Fgannet/log',
  '/api/phone/boats/..%5cgannet/log',
  '/api/phone/boats/%252e%252e/log',
  '/api/phone/boats/gannet%00.json/log',
  '/api\\phone\\boats',
  '/api/phone/boats/a b/log',
  '/<script>',
  `/${'a'.repeat(500)}`,
])('the odd address %s is refused', (url) => {
  expect(statusOf(url, { host })).toBe(400);
});

test.each(['/', '/?from=code', '/assets/index-Ab_1.js', '/api/phone/boats/S%C3%BCdwind%20II/log'])(
  'the plain address %s goes on',
  (url) => {
    expect(statusOf(url, { host })).toBeUndefined();
  },
);

test('a link from anywhere may lead to the page, and to nothing behind it', () => {
  const headers = { host, 'sec-fetch-site': 'cross-site' };
  expect(statusOf('/', headers)).toBeUndefined();
  expect(statusOf('/api/phone/me', headers)).toBe(403);
});
