import { execFile } from 'node:child_process';
import { randomInt } from 'node:crypto';
import type { HeardFrame } from '../core/proof/asking/address-claimer.ts';
import { startAsking } from '../core/proof/asking/asking.ts';
import { ownName } from '../core/proof/asking/own-name.ts';
import { frameText, type SentFrame } from '../core/proof/asking/sent-frame.ts';

/** Asks the units of a bus who they are, after a person said yes to that. */
export interface BusAsking {
  /** takes what is heard meanwhile */
  take(frame: HeardFrame, nowMs: number): void;
  /** comes back when all is asked; gives why it could not be, where it could not */
  readonly done: Promise<string | undefined>;
  stop(): void;
}

const stepMs = 50;
const mostUniques = 0x20_0000;

/** The names Linux gives to an interface of a bus. */
export const isBusInterface = (name: string): boolean => /^[a-z][a-z0-9]{0,14}$/.test(name);

const whyNot = (cause: { readonly code?: unknown }): string =>
  cause.code === 'ENOENT'
    ? 'The program cansend is not installed here: it comes with can-utils.'
    : 'cansend could not send: check that the interface is there and up, with ip link show.';

/**
 * Sends through the system’s own `cansend` only, one frame at a time. `onSent` is told of each frame that was sent, so that
 * it can be printed and recorded.
 */
export const askBus = ({
  line,
  isThorough,
  nowMs,
  onSent,
  command = 'cansend',
}: {
  line: string;
  isThorough: boolean;
  nowMs: () => number;
  onSent: (frame: SentFrame) => void;
  command?: string;
}): BusAsking => {
  const asking = startAsking({ name: ownName(randomInt(mostUniques)), isThorough });
  let queue = Promise.resolve();
  let timer: NodeJS.Timeout | undefined;
  let settle: (why: string | undefined) => void = () => undefined;
  const done = new Promise<string | undefined>((resolve) => {
    settle = resolve;
  });
  const stop = (why?: string): void => {
    clearInterval(timer);
    timer = undefined;
    settle(why);
  };
  const sendOne = (frame: SentFrame): Promise<void> =>
    new Promise((resolve) => {
      if (timer === undefined) return resolve();
      execFile(command, [line, frameText(frame)], { timeout: 2000 }, (cause) => {
        if (cause === null) onSent(frame);
        else stop(whyNot(cause));
        resolve();
      });
    });
  const send = (frames: readonly SentFrame[]): void => {
    for (const frame of frames) queue = queue.then(() => sendOne(frame));
  };
  timer = setInterval(() => {
    send(asking.step(nowMs()));
    if (asking.isDone()) void queue.then(() => stop());
  }, stepMs);
  return {
    take: (frame, atMs) => send(asking.take(frame, atMs)),
    done,
    stop: () => stop(),
  };
};
