import { createInterface } from 'node:readline/promises';
import { UserError } from '../core/boat/user-error.ts';
import { askingWords } from '../core/proof/asking/asking.ts';
import { isBusInterface } from '../live/ask-bus.ts';
import type { AskOptions } from '../live/listening.ts';

interface AskWords {
  readonly ask?: string;
  readonly thorough?: boolean;
  readonly yes?: boolean;
  readonly stdin?: boolean;
}

const typedYes = async (): Promise<boolean> => {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  try {
    return (await lines.question('Type yes to send, anything else only listens: ')).trim().toLowerCase() === 'yes';
  } finally {
    lines.close();
  }
};

/**
 * What may be sent: nothing, unless it was asked for and a person said yes to what was printed. Without a terminal to type
 * at, `--yes` says so.
 */
export const askFirst = async ({
  ask,
  thorough = false,
  yes = false,
  stdin = false,
}: AskWords): Promise<AskOptions | undefined> => {
  if (ask === undefined) return undefined;
  if (!isBusInterface(ask))
    throw new UserError({
      says: 'This is no interface of a bus.',
      place: ask,
      whatToDo: 'Give the name that ip link shows, such as can0.',
    });
  process.stderr.write(`${askingWords(ask, thorough)}\n`);
  if (yes) return { line: ask, isThorough: thorough };
  if (stdin || process.stdin.isTTY !== true)
    throw new UserError({
      says: 'Nothing may be sent without a yes, and there is no terminal to type it at.',
      whatToDo: 'Add --yes once you have read what is sent, or leave --ask out.',
    });
  return (await typedYes()) ? { line: ask, isThorough: thorough } : undefined;
};
