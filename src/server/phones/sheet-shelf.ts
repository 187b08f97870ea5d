import { contentHash } from '../../node/files/content-hash.ts';
import { type Answer, says } from '../answer.ts';
import type { SheetAsked } from './sheet-asked.ts';

/** Makes the sheet for phones out of a boat file and what is done of its work: JSON, or why there is none. */
export type MakeSheet = (asked: SheetAsked) => Promise<{ readonly sheet: string } | { readonly refusal: Answer }>;

/** The sheets of boats as they were planned last, each planned once for each state of its file and its work. */
export interface SheetShelf {
  readonly sheetOf: (boat: string, asked: SheetAsked) => Promise<Answer>;
}

interface Kept {
  /** the last sheet made, of whatever state */
  answer: Answer | undefined;
  /** the state that was asked for last, planned or being planned */
  ofState: string;
  readonly ofFile: string;
  beganMs: number;
  making: Promise<Answer>;
}

const mostBoats = 6;
/** While somebody works on a boat its file changes every few seconds; it is planned for phones no more often than this. */
const planAgainMs = 5000;
/** What is ticked shows on the phone at once; the order of what is left takes seconds to find, and is found anew so often. */
const orderAgainMs = 60_000;
/** Less than the page on the phone waits for an answer. */
const waitMs = 8000;

const later: Answer = {
  ...says(503, 'The boat is being planned.', 'What is to be done shows when that is ready.'),
  retryAfterS: 2,
};

const wait = (ms: number): Promise<undefined> =>
  new Promise((done) => {
    setTimeout(done, ms, undefined).unref();
  });

/**
 * Starts with no sheet. A phone waits for the sheet of the file as it stands; where that takes long, or the file was planned
 * a moment ago, it gets the one before, and where there is none it is asked to come again.
 */
export const sheetShelf = (
  make: MakeSheet,
  { nowMs, mostWaitMs = waitMs }: { nowMs: () => number; mostWaitMs?: number },
): SheetShelf => {
  const byBoat = new Map<string, Kept>();

  const made = async (asked: SheetAsked): Promise<Answer> => {
    const told = await make(asked);
    return 'refusal' in told ? told.refusal : { status: 200, text: told.sheet, hash: contentHash(told.sheet) };
  };

  const begin = (boat: string, asked: SheetAsked, before: Answer | undefined): Kept => {
    const making = made(asked);
    const kept: Kept = { answer: before, ofState: asked.hash, ofFile: asked.fileHash, beganMs: nowMs(), making };
    making.then(
      (answer) => {
        kept.answer = answer;
        // what failed for want of time or room may go well the next time
        if (answer.retryAfterS !== undefined) kept.ofState = '';
      },
      () => {
        kept.ofState = '';
      },
    );
    byBoat.delete(boat);
    byBoat.set(boat, kept);
    const [oldest] = byBoat.keys();
    if (byBoat.size > mostBoats && oldest !== undefined) byBoat.delete(oldest);
    return kept;
  };

  const current = (boat: string, asked: SheetAsked): Kept => {
    const kept = byBoat.get(boat);
    if (kept === undefined) return begin(boat, asked, undefined);
    const againMs = kept.ofFile === asked.fileHash && kept.ofState !== '' ? orderAgainMs : planAgainMs;
    const isDue = kept.ofState !== asked.hash && nowMs() - kept.beganMs >= againMs;
    return isDue ? begin(boat, asked, kept.answer) : kept;
  };

  return {
    sheetOf: async (boat, asked) => {
      const kept = current(boat, asked);
      return (await Promise.race([kept.making, wait(mostWaitMs)])) ?? kept.answer ?? later;
    },
  };
};
