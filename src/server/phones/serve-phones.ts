import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { Socket } from 'node:net';
import { type Answer, says } from '../answer.ts';
import { sendAnswer, sendFile } from '../send-answer.ts';
import type { StaticFile } from '../static-files.ts';
import { boundConnection, endUnread } from './connection-ends.ts';
import { inSmallPieces } from './in-small-pieces.ts';
import { type OwnAddresses, plainAddress } from './own-addresses.ts';
import type { PhoneDesk } from './phone-desk.ts';
import { phoneHeaders } from './phone-headers.ts';
import { phoneRequest } from './phone-requests.ts';
import { type RateLimit, rateLimit } from './rate-limit.ts';
import { rawRefusal } from './raw-refusal.ts';
import { refusalOfAddress } from './refusal-of-address.ts';
import { type SocketGate, socketGate } from './socket-gate.ts';

/** What a listener for phones is made of. */
export interface PhoneListenerParts {
  /** the phone’s page and its files, by address; nothing else is ever served */
  readonly files: ReadonlyMap<string, StaticFile>;
  readonly desk: PhoneDesk;
  readonly own: () => OwnAddresses;
  readonly port: number;
  /** a clock that is never set back */
  readonly nowMs: () => number;
  readonly patience?: Patience;
}

/** How long is waited for whoever sends: for the header of a request, for all of it, and for a sign of any kind. */
export interface Patience {
  readonly headerMs: number;
  readonly requestMs: number;
  readonly silentMs: number;
}

/** A header is a few hundred bytes, a picture a few hundred thousand over a weak wifi. */
const usualPatience: Patience = { headerMs: 5000, requestMs: 60_000, silentMs: 15_000 };

/** A listener that phones reach. */
export interface PhoneListener {
  readonly port: number;
  readonly told: SocketGate['told'];
  readonly close: () => Promise<void>;
}

const limitsOf = ({ headerMs, requestMs }: Patience) =>
  ({
    maxHeaderSize: 8192,
    headersTimeout: headerMs,
    requestTimeout: requestMs,
    keepAliveTimeout: headerMs,
    connectionsCheckingInterval: Math.min(1000, headerMs / 2),
    // a request without its host is refused with the headers of any other answer
    requireHostHeader: false,
  }) as const;

const mostHeaders = 60;
/** Requests within ten seconds; what strangers ask is no reason to keep a paired phone waiting. */
const perSender = 300;
const strangersInAll = 1500;
const spanMs = 10_000;

const tooMany: Answer = { ...says(429, 'This is more than is answered at once.'), retryAfterS: 10 };
const fault: Answer = { ...says(500, 'This is a fault in the program; the boats are safe.'), retryAfterS: 60 };

interface Door extends PhoneListenerParts {
  readonly gate: SocketGate;
  readonly ofStrangers: RateLimit;
  readonly ofKnown: RateLimit;
  readonly ownPort: () => number;
}

const answerOf = async (request: IncomingMessage, sender: string, door: Door): Promise<Answer | StaticFile> => {
  const requests = door.gate.isKnown(sender) ? door.ofKnown : door.ofStrangers;
  if (!requests.take(sender)) return tooMany;
  const refused = refusalOfAddress(request, { hosts: door.own().hosts, port: door.ownPort() });
  if (refused !== undefined) return refused;
  const told = await phoneRequest(request, { address: sender, know: () => door.gate.know(sender) }, door.desk);
  if (told !== undefined) return told;
  if (request.method !== 'GET') return says(405, 'Only reading is possible here.');
  const path = (request.url ?? '').split('?')[0] ?? '';
  return door.files.get(path) ?? says(404, 'There is nothing at this address.');
};

const answer = async (request: IncomingMessage, response: ServerResponse, door: Door): Promise<void> => {
  const { socket } = request;
  if (socket.destroyed) return;
  const sender = plainAddress(socket.remoteAddress);
  if (!boundConnection(request, response)) {
    door.gate.shun(sender);
    socket.destroy();
    return;
  }
  const told = await answerOf(request, sender, door).catch((): Answer => fault);
  if (response.destroyed) return;
  endUnread(request, response, door.gate.isKnown(sender));
  // one who asks too often is not heard on this connection any more
  if (told === tooMany) response.shouldKeepAlive = false;
  if ('body' in told) sendFile(response, phoneHeaders, told);
  else sendAnswer(response, phoneHeaders, told);
};

const refuseRaw = (error: NodeJS.ErrnoException, socket: Socket): void => {
  if (!socket.writable || socket.bytesWritten > 0) {
    socket.destroy();
    return;
  }
  if (error.code === 'HPE_HEADER_OVERFLOW') socket.end(rawRefusal(431, 'The header of this request is too large.'));
  else if (error.code === 'ERR_HTTP_REQUEST_TIMEOUT') socket.end(rawRefusal(408, 'The request did not come in time.'));
  else socket.end(rawRefusal(400, 'This is no request.'));
  setTimeout(() => socket.destroy(), 200).unref();
};

/** Lets in who is near and not one too many; anybody else is let go before a byte of theirs is read. */
const guardDoor = (server: Server, { gate, own }: Door): void => {
  const serves = server.listeners('connection');
  server.removeAllListeners('connection');
  server.on('connection', (socket: Socket) => {
    const sender = plainAddress(socket.remoteAddress);
    const leave = own().isNear(sender) ? gate.admit(sender) : undefined;
    if (leave === undefined) {
      socket.on('error', () => undefined);
      socket.destroy();
      return;
    }
    socket.once('close', leave);
    for (const serve of serves) serve.call(server, socket);
    inSmallPieces(socket);
  });
};

const listen = (server: Server, port: number): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ port, host: '0.0.0.0', backlog: 511 }, () => {
      server.off('error', reject);
      // such as no free descriptor: it is tried again with the next one, and nothing else is to fall with it
      server.on('error', () => undefined);
      const at = server.address();
      resolve(typeof at === 'object' && at !== null ? at.port : port);
    });
  });

/**
 * Listens for phones on all networks of this machine and answers those that stand in one of them. Throws what the operating
 * system says where the port is taken.
 */
export const servePhones = async (parts: PhoneListenerParts): Promise<PhoneListener> => {
  let port = parts.port;
  const gate = socketGate(parts.nowMs);
  const { nowMs } = parts;
  const ofStrangers = rateLimit({ perSender, inAll: strangersInAll, spanMs, nowMs });
  const ofKnown = rateLimit({ perSender, inAll: Number.POSITIVE_INFINITY, spanMs, nowMs });
  const door: Door = { ...parts, gate, ofStrangers, ofKnown, ownPort: () => port };
  const patience = parts.patience ?? usualPatience;
  const server = createServer(limitsOf(patience), (request, response) => void answer(request, response, door));
  server.timeout = patience.silentMs;
  server.maxHeadersCount = mostHeaders;
  server.on('clientError', refuseRaw);
  // who asks beforehand whether to send is not told to: what may be sent is small
  for (const event of ['checkContinue', 'checkExpectation'])
    server.on(event, (request: IncomingMessage, response: ServerResponse) => void answer(request, response, door));
  guardDoor(server, door);
  port = await listen(server, parts.port);
  return {
    port,
    told: gate.told,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
};
