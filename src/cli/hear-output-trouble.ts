import type { Writable } from 'node:stream';

const codeOf = (cause: unknown): unknown => (cause instanceof Error && 'code' in cause ? cause.code : undefined);

/**
 * Hears what becomes of what is printed. Whoever reads it may have seen enough (`fairlead plan b.json | head`), which is no
 * trouble; where it goes to a file of a disk that is full, that is told once by `tell`, for what is there is not whole.
 */
export const hearOutputTrouble = (
  { stdout, stderr }: { stdout: Writable; stderr: Writable },
  tell: (sentence: string) => void,
): void => {
  let isTold = false;
  // nobody is left to be told
  stderr.on('error', () => undefined);
  stdout.on('error', (cause) => {
    const code = codeOf(cause);
    if (isTold || code === 'EPIPE') return;
    isTold = true;
    const isFull = code === 'ENOSPC' || code === 'EDQUOT';
    tell(
      isFull
        ? 'The disk is full: what was printed is not whole. Make room, or print to another disk.'
        : `What was printed is not whole: the operating system refused it (${String(code ?? cause.message)}). Print it elsewhere.`,
    );
  });
};
