import type { Readable } from 'node:stream';
import { linkRefusal } from '../link-refusal.ts';
import type { LiveSource } from '../live-source.ts';

/** Reads a stream that is there already, such as standard input, until it ends. */
export const streamSource = (stream: Readable, says = 'standard input'): LiveSource => ({
  says,
  start(onBytes, onLink) {
    onLink({ kind: 'open' });
    // reason: a stream that has no encoding set gives buffers
    stream.on('data', (bytes: Buffer) => onBytes(bytes));
    stream.once('end', () => onLink({ kind: 'ended' }));
    stream.once('error', (cause) => {
      onLink(linkRefusal(cause));
      onLink({ kind: 'ended' });
    });
  },
  stop: () => {
    stream.removeAllListeners('data').pause();
    stream.on('error', () => undefined);
    return Promise.resolve();
  },
});
