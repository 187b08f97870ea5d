import type { IncomingMessage } from 'node:http';

/** The bytes of a request; undefined where there are more than `most`, of which no more is then read. */
export const bodyOf = async (request: IncomingMessage, most: number): Promise<Buffer | undefined> => {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request) {
    // reason: a request that has no encoding set gives buffers
    const bytes = chunk as Buffer;
    length += bytes.length;
    if (length > most) return undefined;
    chunks.push(bytes);
  }
  return Buffer.concat(chunks);
};
