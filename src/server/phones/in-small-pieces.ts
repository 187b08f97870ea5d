import type { Socket } from 'node:net';

const pieceBytes = 2048;

/**
 * Has the reader of http, which stands on this socket already, read it in small pieces. It takes whatever came in one go to
 * its end, thousands of small requests in a heap, even where the first of them ended the connection; so it is given the next
 * piece only while the connection stands.
 */
export const inSmallPieces = (socket: Socket): void => {
  const [read, ...others] = socket.listeners('data');
  // another reader than the one of the http module is left as it is
  if (read === undefined || others.length > 0) return;
  socket.removeAllListeners('data');
  socket.on('data', (chunk: Buffer) => {
    for (let at = 0; at < chunk.length && !socket.destroyed && !socket.writableEnded; at += pieceBytes)
      read.call(socket, chunk.subarray(at, at + pieceBytes));
  });
};
