import type { Worker } from 'node:worker_threads';
import { newThread } from '../../node/new-thread.ts';
import { type Answer, says } from '../answer.ts';
import type { SheetAsked } from './sheet-asked.ts';
import type { MakeSheet } from './sheet-shelf.ts';
import type { SheetAnswer } from './sheet-worker.ts';

/** Planning of one boat that takes longer, or more memory, is given up: the laptop is for the person who sits at it. */
const longestMs = 120_000;
const mostMegabytes = 1024;
const idleMs = 60_000;
const mostWaiting = 6;

const givenUp: Answer = {
  ...says(503, 'The boat could not be planned for the phone.', 'Look at her on the laptop.'),
  retryAfterS: 60,
};
const busy: Answer = { ...says(503, 'Other boats are being planned.'), retryAfterS: 5 };

/** One boat at a time is planned in a thread of its own, so that nobody else waits for it; it ends after a minute unused. */
export const sheetThread = (): { readonly make: MakeSheet; readonly stop: () => void } => {
  let worker: Worker | undefined;
  let idle: NodeJS.Timeout | undefined;
  let waiting = 0;
  let turn: Promise<unknown> = Promise.resolve();

  const stop = (): void => {
    clearTimeout(idle);
    void worker?.terminate();
    worker = undefined;
  };

  const start = (): Worker => {
    const onEnd = (): void => {
      if (worker === begun) worker = undefined;
    };
    const begun = newThread({ folder: import.meta.dirname, file: 'sheet-worker' }, { megabytes: mostMegabytes, onEnd });
    worker = begun;
    return begun;
  };

  const ask = (question: SheetAsked): Promise<SheetAnswer> =>
    new Promise((done) => {
      clearTimeout(idle);
      const asked = worker ?? start();
      const end = (answer: SheetAnswer): void => {
        clearTimeout(late);
        asked.off('message', end).off('error', giveUp).off('exit', giveUp);
        done(answer);
      };
      const giveUp = (): void => {
        end({ refusal: givenUp });
        if (worker === asked) stop();
      };
      const late = setTimeout(giveUp, longestMs);
      asked.on('message', end).on('error', giveUp).on('exit', giveUp);
      asked.postMessage(question);
    });

  const askInTurn = async (question: SheetAsked): Promise<SheetAnswer> => {
    const answer = await ask(question);
    idle = setTimeout(stop, idleMs);
    idle.unref();
    return answer;
  };

  return {
    make: async (question) => {
      if (waiting >= mostWaiting) return { refusal: busy };
      waiting += 1;
      const mine = turn.then(() => askInTurn(question));
      turn = mine.catch(() => undefined);
      try {
        return await mine;
      } finally {
        waiting -= 1;
      }
    },
    stop,
  };
};
