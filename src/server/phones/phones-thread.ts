import type { Worker } from 'node:worker_threads';
import { UserError } from '../../core/boat/user-error.ts';
import { newThread } from '../../node/new-thread.ts';
import type { PhonesSwitch, PhonesTold } from './phones-switch.ts';
import type { PhonesWork } from './phones-worker.ts';
import { refusalIn, type ThreadCall, type ThreadReply } from './thread-call.ts';

/** A few hundred sheets and bodies fit into this; whoever makes the thread need more fells the thread and nothing else. */
const mostMegabytes = 512;
const againMs = 5000;

const fallen = (): UserError =>
  new UserError({
    says: 'What lets phones in came to an end; the boats are safe.',
    whatToDo: 'Phones are let in again in a few seconds.',
  });

interface Waiting {
  readonly done: (value: unknown) => void;
  readonly failed: (error: unknown) => void;
}

/**
 * Phones served in a thread of their own: whatever a network does to it takes no time of the app’s own listener, on which the
 * laptop reads and saves. Begun when it is first asked for anything; where it falls while phones are let in, it is begun again.
 */
export const phonesThread = (work: PhonesWork, megabytes = mostMegabytes): PhonesSwitch => {
  let worker: Worker | undefined;
  let isWanted = false;
  let calls = 0;
  const waiting = new Map<number, Waiting>();

  const onEnd = (): void => {
    worker = undefined;
    for (const { failed } of waiting.values()) failed(fallen());
    waiting.clear();
    // reason: where it cannot be begun again the laptop shows phones as not let in
    if (isWanted) setTimeout(() => void turnOn().catch(() => undefined), againMs).unref();
  };

  const take = (reply: ThreadReply): void => {
    const asked = waiting.get(reply.call);
    waiting.delete(reply.call);
    if ('says' in reply) asked?.failed(refusalIn(reply));
    else asked?.done(reply.value);
  };

  const ask = async (what: ThreadCall['what'], id?: string): Promise<unknown> => {
    const own = { folder: import.meta.dirname, file: 'phones-worker' } as const;
    worker ??= newThread(own, { megabytes, data: work, onEnd }).on('message', take);
    calls += 1;
    const asked: ThreadCall = { call: calls, what, ...(id === undefined ? {} : { id }) };
    const answered = new Promise((done, failed) => {
      waiting.set(asked.call, { done, failed });
    });
    worker.postMessage(asked);
    return answered;
  };

  const turnOn = async (): Promise<void> => {
    await ask('turnOn');
    isWanted = true;
  };

  return {
    turnOn,
    turnOff: async () => {
      isWanted = false;
      await ask('turnOff');
    },
    // reason: the thread gives what the switch in it gave
    told: async () => (await ask('told')) as PhonesTold,
    giveCode: async () => (await ask('giveCode')) as boolean,
    revoke: async (id) => (await ask('revoke', id)) as boolean,
    close: async () => {
      isWanted = false;
      await worker?.terminate();
    },
  };
};
