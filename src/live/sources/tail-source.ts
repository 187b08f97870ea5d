import { type FileHandle, open, stat } from 'node:fs/promises';
import type { LinkState } from '../../core/proof/live/link-state.ts';
import { linkRefusal } from '../link-refusal.ts';
import type { LiveSource } from '../live-source.ts';

const lookMs = 250;
const pieceBytes = 1 << 16;
/** So many bytes of a file are read at one look: one that grew by gigabytes is caught up with bit by bit. */
const mostAtOneLook = 1 << 20;

interface Held {
  readonly handle: FileHandle;
  readonly inode: number;
  at: number;
}

const startsAnew = 'The file was cut short; it is read from its beginning.';
const another = 'Another file stands in its place; it is read from its beginning.';

/** Reads what has come since, at most so much at once. */
const readOn = async (held: Held, onBytes: (bytes: Uint8Array) => void): Promise<void> => {
  for (let read = 0; read < mostAtOneLook; ) {
    const piece = new Uint8Array(pieceBytes);
    const { bytesRead } = await held.handle.read(piece, 0, pieceBytes, held.at);
    if (bytesRead === 0) return;
    held.at += bytesRead;
    read += bytesRead;
    onBytes(piece.subarray(0, bytesRead));
  }
};

/**
 * Follows a file that another program writes: what is put on its end from now on. A file cut short is read from its
 * beginning, and so is another one put in its place; one taken away is waited for.
 */
export const tailSource = (path: string): LiveSource => {
  let timer: NodeJS.Timeout | undefined;
  let held: Held | undefined;
  let isStopped = false;
  let isFirst = true;
  let looking = Promise.resolve();

  const take = async (onLink: (link: LinkState) => void): Promise<Held> => {
    const now = await stat(path);
    if (now.isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' });
    if (held !== undefined && held.inode === now.ino) {
      if (now.size >= held.at) return held;
      held.at = 0;
      onLink({ kind: 'note', says: startsAnew });
      return held;
    }
    const handle = await open(path, 'r');
    if (held !== undefined) onLink({ kind: 'note', says: another });
    await held?.handle.close();
    held = { handle, inode: now.ino, at: isFirst ? now.size : 0 };
    onLink({ kind: 'open' });
    isFirst = false;
    return held;
  };

  /** The rest of a file that was moved away is read before the one in its place. */
  const look = async (onBytes: (bytes: Uint8Array) => void, onLink: (link: LinkState) => void): Promise<void> => {
    if (held !== undefined) await readOn(held, onBytes);
    await readOn(await take(onLink), onBytes);
  };

  return {
    says: `file ${path}`,
    start(onBytes, onLink) {
      let wasGone = '';
      const next = (): void => {
        looking = look(onBytes, (link) => {
          wasGone = '';
          if (!isStopped) onLink(link);
        })
          .catch(async (cause: unknown) => {
            const gone = linkRefusal(cause);
            // a file that comes back is new from its first byte
            isFirst = false;
            await held?.handle.close().catch(() => undefined);
            held = undefined;
            if (gone.says !== wasGone && !isStopped) onLink(gone);
            wasGone = gone.says;
          })
          .then(() => {
            if (!isStopped) timer = setTimeout(next, lookMs);
          });
      };
      next();
    },
    stop: async () => {
      isStopped = true;
      clearTimeout(timer);
      await looking;
      await held?.handle.close().catch(() => undefined);
      held = undefined;
    },
  };
};
