import { createHash, randomInt, timingSafeEqual } from 'node:crypto';
import { rateLimit } from './rate-limit.ts';

const digits = 6;
const lifeMs = 180_000;
const mostWrongTries = 5;
/** Tries within ten minutes: one sender, and all of them, whatever codes were given out meanwhile. */
const triesPerSender = 10;
const triesInAll = 40;
const triesSpanMs = 600_000;

/** What a try comes to. Wrong, void, run out and none at all are one and the same to whoever tries. */
export type Tried = 'right' | 'wrong' | 'too often';

/** The code that pairs a phone with this machine: at most one stands at a time. */
export interface PairingCodes {
  /** a new code, in place of the one that stood */
  readonly give: () => void;
  /** the code that stands and how long it still does; undefined where none does */
  readonly standing: () => { readonly code: string; readonly leftMs: number } | undefined;
  /** a right try uses the code up */
  readonly try: (code: string, sender: string) => Tried;
  /** no code stands any more */
  readonly drop: () => void;
}

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Equal length and equal time whatever is tried. */
const isSame = (one: string, other: string): boolean => timingSafeEqual(digest(one), digest(other));

const drawn = (): string => String(randomInt(10 ** digits)).padStart(digits, '0');

/**
 * Starts with no code. One is drawn by the system’s own random numbers, stands three minutes, pairs one phone, and is void
 * after five wrong tries, so that whoever guesses finds it once in 200,000 codes. `nowMs` is a clock that is never set back.
 */
export const pairingCodes = ({ nowMs, draw = drawn }: { nowMs: () => number; draw?: () => string }): PairingCodes => {
  let now: { readonly code: string; readonly untilMs: number; wrong: number } | undefined;
  const tries = rateLimit({ perSender: triesPerSender, inAll: triesInAll, spanMs: triesSpanMs, nowMs });

  const standing = (): typeof now => {
    if (now !== undefined && (nowMs() >= now.untilMs || now.wrong >= mostWrongTries)) now = undefined;
    return now;
  };

  return {
    give: () => {
      now = { code: draw(), untilMs: nowMs() + lifeMs, wrong: 0 };
    },
    standing: () => {
      const found = standing();
      return found === undefined ? undefined : { code: found.code, leftMs: found.untilMs - nowMs() };
    },
    try: (code, sender) => {
      if (!tries.take(sender)) return 'too often';
      const found = standing();
      // compared with something in any case, so that the time does not tell whether a code stands
      const isRight = isSame(code, found?.code ?? 'none');
      if (found === undefined) return 'wrong';
      if (isRight) {
        now = undefined;
        return 'right';
      }
      found.wrong += 1;
      return 'wrong';
    },
    drop: () => {
      now = undefined;
    },
  };
};
