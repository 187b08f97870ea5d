import type { ProofReport } from './proof-report.ts';

/** Whether everything that was watched is as planned: no fault, no planned message missing or wrong, no reading silent. */
export const isProved = ({ findings, messages, readings }: ProofReport): boolean =>
  findings.every(({ level }) => level !== 'danger' && level !== 'fault') &&
  messages.every(({ state }) => state === 'right' || state === 'not-due') &&
  readings.every(({ state }) => state !== 'silent');
