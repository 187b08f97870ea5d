import { askingFigures } from '../../facts/listening-figures.ts';
import { pgnOfCanId, sourceOfCanId } from '../readers/can-id.ts';
import { type HeardFrame, startAddressClaimer } from './address-claimer.ts';
import { addressClaim, everyone, nullAddress, requestFrame, type SentFrame } from './sent-frame.ts';

/** Asks the units of a bus who they are, frame by frame. It sends nothing by itself: whoever drives it does. */
export interface Asking {
  /** Takes a frame that was heard; gives what must be sent at once in answer. */
  take(frame: HeardFrame, nowMs: number): readonly SentFrame[];
  /** What is to be sent now; to be asked some ten times a second. */
  step(nowMs: number): readonly SentFrame[];
  isDone(): boolean;
}

/** What is asked of each unit, and what that is in words (source: pgn-database). */
const questions = [
  [126_996, 'its product information'],
  [126_464, 'the lists of what it sends and hears'],
] as const;

const claimsComeMs = askingFigures.claimsComeMs.value;
/** Twenty frames of an answer take 13 ms of these: asked so, the bus is never crowded. */
const gapMs = askingFigures.questionGapMs.value;
const answersComeMs = askingFigures.answersComeMs.value;
const lastAddress = 251;

/**
 * What will be sent, in words, before anything is: what a person says yes to. `isThorough`: not only names, but what each
 * unit is, sends and hears.
 */
export const askingWords = (line: string, isThorough: boolean): string =>
  [
    `This sends on ${line}:`,
    '- one request to everyone to claim its address again (message 59904 for 60928), from address 254, which is all a program without an address may send.',
    ...(isThorough
      ? [
          '- a claim of a free address (message 60928), given up to whoever is stronger.',
          '- two requests to each unit heard, one every 0.2 s, for product information and for its lists (126996, 126464).',
        ]
      : []),
    'Nothing is set or commanded. Do it at the dock, with the pilot on standby.',
  ].join('\n');

/**
 * Starts asking: first everyone to claim, from the null address; where it is to be thorough, an address is claimed, and
 * each unit heard is asked in turn what it is and what it sends (sources: iso-11783-5, pgn-database).
 */
export const startAsking = ({ name, isThorough }: { name: string; isThorough: boolean }): Asking => {
  const claimer = startAddressClaimer(name);
  const heard = new Set<number>();
  const asked = new Set<string>();
  let phase: 'first' | 'claims come' | 'claiming' | 'asking' | 'answers come' | 'done' = 'first';
  let sinceMs = 0;

  const turnTo = (next: typeof phase, nowMs: number): void => {
    phase = next;
    sinceMs = nowMs;
  };

  /** The next question to the lowest address that has not had it. */
  const nextQuestion = (from: number): SentFrame | undefined => {
    for (const address of [...heard].sort((a, b) => a - b)) {
      for (const [pgn, what] of questions) {
        const key = `${address} ${pgn}`;
        if (asked.has(key) || address === from) continue;
        asked.add(key);
        return requestFrame({ pgn, from, to: address, says: `asks address ${address} for ${what}` });
      }
    }
    return undefined;
  };

  const ask = (nowMs: number): readonly SentFrame[] => {
    const from = claimer.held(nowMs);
    // while another address is being claimed nothing is asked
    if (from === undefined || nowMs - sinceMs < gapMs) return [];
    const question = nextQuestion(from);
    turnTo(question === undefined ? 'answers come' : 'asking', nowMs);
    return question === undefined ? [] : [question];
  };

  const first = (nowMs: number): readonly SentFrame[] => {
    turnTo('claims come', nowMs);
    const says = 'asks everyone to claim its address again';
    return [requestFrame({ pgn: addressClaim, from: nullAddress, to: everyone, says })];
  };

  const afterClaims = (nowMs: number): readonly SentFrame[] => {
    if (nowMs - sinceMs < claimsComeMs) return [];
    turnTo(isThorough ? 'claiming' : 'done', nowMs);
    return isThorough ? claimer.begin(nowMs) : [];
  };

  return {
    take(frame, nowMs) {
      if (phase === 'done') return [];
      const source = sourceOfCanId(frame.id);
      if (source <= lastAddress && pgnOfCanId(frame.id) !== 0) heard.add(source);
      return claimer.take(frame, nowMs);
    },
    step(nowMs) {
      if (phase === 'first') return first(nowMs);
      if (phase === 'claims come') return afterClaims(nowMs);
      if (claimer.isBeaten()) turnTo('done', nowMs);
      if (phase === 'claiming' && claimer.held(nowMs) !== undefined) turnTo('asking', nowMs);
      if (phase === 'asking') return ask(nowMs);
      if (phase === 'answers come' && nowMs - sinceMs >= answersComeMs) turnTo('done', nowMs);
      return [];
    },
    isDone: () => phase === 'done',
  };
};
