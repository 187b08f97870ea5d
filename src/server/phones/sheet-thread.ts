import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { type Answer, says } from '../answer.ts';
import type { MakeSheet } from './sheet-shelf.ts';
import type { SheetAnswer, SheetQuestion } from './sheet-worker.ts';

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

/** Beside this file once built; from the sources the thread needs what runs them. */
const newWorker = (): Worker => {
  const built = join(import.meta.dirname, 'sheet-worker.js');
  const isBuilt = existsSync(built);
  return new Worker(isBuilt ? built : join(import.meta.dirname, 'sheet-worker.ts'), {
    ...(isBuilt ? {} : { execArgv: ['--import', 'tsx'] }),
    resourceLimits: { maxOldGenerationSizeMb: mostMegabytes },
  });
};

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

  const ask = (text: string): Promise<SheetAnswer> =>
    new Promise((done) => {
      clearTimeout(idle);
      worker ??= newWorker();
      const asked = worker;
      const end = (answer: SheetAnswer): void => {
        clearTimeout(late);
        asked.removeAllListeners();
        // a thread that is terminated or fails on its way out is nobody’s fault any more
        asked.on('error', () => undefined);
        done(answer);
      };
      const giveUp = (): void => {
        end({ refusal: givenUp });
        if (worker === asked) stop();
      };
      const late = setTimeout(giveUp, longestMs);
      asked.once('message', end).once('error', giveUp).once('exit', giveUp);
      asked.postMessage({ text } satisfies SheetQuestion);
    });

  const askInTurn = async (text: string): Promise<SheetAnswer> => {
    const answer = await ask(text);
    idle = setTimeout(stop, idleMs);
    idle.unref();
    return answer;
  };

  return {
    make: async (text) => {
      if (waiting >= mostWaiting) return { refusal: busy };
      waiting += 1;
      const mine = turn.then(() => askInTurn(text));
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
