import type { IncomingMessage } from 'node:http';
import { type Answer, says } from '../answer.ts';
import type { OwnAddresses } from './own-addresses.ts';

const longestAddress = 400;

const count = (request: IncomingMessage, name: string): number =>
  request.rawHeaders.filter((text, at) => at % 2 === 0 && text.toLowerCase() === name).length;

/** What a path of ours is made of; what is encoded must be text, and no slash, dot or NUL in another dress. */
const isPlainPath = (path: string): boolean =>
  /^\/(?:[A-Za-z0-9._~/-]|%[0-9A-Fa-f]{2})*$/.test(path) &&
  !/%(?:2f|5c|2e|00|25)/i.test(path) &&
  !path.split('/').some((part) => part === '.' || part === '..') &&
  !path.includes('//');

/** The host as a browser writes it, in small letters; port 80 is left out there. */
const hostsWithPort = (hosts: ReadonlySet<string>, port: number, host: string): boolean => {
  const [name = '', written = '80', ...more] = host.split(':');
  return more.length === 0 && hosts.has(name) && written === String(port);
};

/**
 * What is wrong with the address of a request, before anything else of it is looked at. A page elsewhere that was given
 * this machine’s address for its own name (DNS rebinding) still asks for that name; a page of another server says where it
 * is in `Origin`. Neither gets any answer but this.
 */
export const refusalOfAddress = (
  request: IncomingMessage,
  { hosts, port }: { hosts: OwnAddresses['hosts']; port: number },
): Answer | undefined => {
  const { host = '', origin, 'sec-fetch-site': site } = request.headers;
  if (count(request, 'host') !== 1 || !hostsWithPort(hosts, port, host.toLowerCase()))
    return says(421, 'This machine is not known by that name.', 'Open the address that the laptop shows.');
  const path = (request.url ?? '').split('?')[0] ?? '';
  const isForeign = origin !== undefined && origin.toLowerCase() !== `http://${host.toLowerCase()}`;
  // a link may lead to the page from anywhere, but to nothing behind it
  if (isForeign || (path.startsWith('/api/') && (site === 'cross-site' || site === 'same-site')))
    return says(403, 'Only the page of this machine may ask here.');
  if ((request.url ?? '').length > longestAddress || !isPlainPath(path))
    return says(400, 'This is no address of this machine.');
  return undefined;
};
