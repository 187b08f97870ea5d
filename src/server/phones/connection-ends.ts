import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Socket } from 'node:net';

/** An answer and whatever it answers is over after so long, however slowly it is sent or read. */
const longestMs = 120_000;
/** What a refused request still sends is let run into nothing for so long, so that its sender reads why. */
const lingerMs = 1000;
const mostRequests = 200;

const asked = new WeakMap<Socket, number>();

/** Sees to it that no request holds its connection for ever, and none a connection for an endless number of requests. */
export const boundConnection = (request: IncomingMessage, response: ServerResponse): void => {
  const { socket } = request;
  const count = (asked.get(socket) ?? 0) + 1;
  asked.set(socket, count);
  if (count >= mostRequests) response.shouldKeepAlive = false;
  const late = setTimeout(() => socket.destroy(), longestMs);
  response.once('close', () => clearTimeout(late));
};

/** To be called before an answer is sent that does not wait for the rest of its request: the connection ends with it. */
export const endUnread = (request: IncomingMessage, response: ServerResponse): void => {
  if (request.complete) return;
  response.shouldKeepAlive = false;
  request.resume();
  response.once('finish', () => {
    setTimeout(() => request.socket.destroy(), lingerMs).unref();
  });
};
