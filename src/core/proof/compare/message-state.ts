import { paceMs } from '../survey/draft-sends.ts';
import type { PlannedSend } from './planned-sends.ts';
import type { ProofMessage } from './proof-report.ts';
import { isLongEnough, rateVerdict } from './rate-window.ts';

/** How one message came, as far as it was counted. */
export interface Came {
  readonly messages: number;
  readonly empty: number;
  readonly medianMs?: number | undefined;
  readonly meanMs?: number | undefined;
  /** by instance and kind, where it has them */
  readonly parts?: readonly Came[];
}

type Judged = Pick<ProofMessage, 'state' | 'seenMs'>;

const paceOf = ({ messages, medianMs, meanMs }: Came): number | undefined =>
  medianMs === undefined || meanMs === undefined ? undefined : paceMs({ messages, medianMs, meanMs });

/** Of too few messages the time they had. */
const pace = (came: Came, durationS: number | undefined, everyMs: number): number | undefined => {
  const measured = paceOf(came);
  if (measured !== undefined || durationS === undefined || !isLongEnough(durationS, everyMs)) return measured;
  return (durationS * 1000) / came.messages;
};

const judgedRate = (
  { everyMs, togetherMs }: Pick<PlannedSend, 'everyMs' | 'togetherMs'>,
  came: Came,
  durationS: number | undefined,
): Judged => {
  if (everyMs === undefined) return { state: 'right' };
  const whole = pace(came, durationS, everyMs);
  if (whole === undefined) return { state: 'right' };
  const verdict = rateVerdict({ plannedMs: togetherMs ?? everyMs, seenMs: whole });
  if (verdict === 'right') return { state: 'right', seenMs: whole };
  const part = (came.parts ?? [])
    .filter(({ messages, empty }) => empty < messages)
    .map(paceOf)
    .find((seenMs) => seenMs !== undefined && rateVerdict({ plannedMs: everyMs, seenMs }) === 'right');
  return part === undefined ? { state: verdict, seenMs: whole } : { state: 'right', seenMs: part };
};

/** How a planned message came: whether at all, with data, and as often as planned. */
export const messageState = (send: PlannedSend, came: Came | undefined, durationS: number | undefined): Judged => {
  if (came === undefined || came.messages === 0) {
    const { everyMs } = send;
    return { state: everyMs !== undefined && isLongEnough(durationS, everyMs) ? 'silent' : 'not-due' };
  }
  if (came.empty >= came.messages) return { state: 'empty' };
  return judgedRate(send, came, durationS);
};
