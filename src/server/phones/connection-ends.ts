import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Socket } from 'node:net';

/** An answer and whatever it answers is over after so long, however slowly it is sent or read. */
const longestMs = 120_000;
/** What a paired phone still sends after it was refused is let run into nothing for so long, so that it reads why. */
const lingerMs = 1000;
const mostRequests = 200;

interface Talk {
  requests: number;
  isAnswering: boolean;
}

const talks = new WeakMap<Socket, Talk>();

/**
 * Sees to it that no request holds its connection for ever, and none a connection for an endless number of requests. False
 * where the request came before the one before it was answered, as no browser does: a heap of small requests in one piece
 * takes thousands of times the work it takes to send it.
 */
export const boundConnection = (request: IncomingMessage, response: ServerResponse): boolean => {
  const { socket } = request;
  const talk = talks.get(socket) ?? { requests: 0, isAnswering: false };
  if (talk.isAnswering) return false;
  talks.set(socket, talk);
  talk.requests += 1;
  talk.isAnswering = true;
  if (talk.requests >= mostRequests) response.shouldKeepAlive = false;
  const late = setTimeout(() => socket.destroy(), longestMs);
  response.once('close', () => {
    clearTimeout(late);
    talk.isAnswering = false;
  });
  return true;
};

/** To be called before an answer is sent that does not wait for the rest of its request: the connection ends with it. */
export const endUnread = (request: IncomingMessage, response: ServerResponse, isPaired: boolean): void => {
  if (request.complete) return;
  response.shouldKeepAlive = false;
  if (isPaired) request.resume();
  response.once('finish', () => {
    setTimeout(() => request.socket.destroy(), isPaired ? lingerMs : 0).unref();
  });
};
