import type { EditParams } from '../../boat/edits/index.ts';
import type { ProofReport } from './proof-report.ts';

/** The edit that notes which readings a proof heard, as of a day; undefined where it heard none. */
export const provedReadings = ({ readings }: ProofReport, on: string): EditParams<'note-proved'> | undefined => {
  const proved = readings
    .filter(({ state }) => state === 'heard')
    .map(({ reading, instance, from }) => ({ reading, ...(instance === undefined ? {} : { instance }), from, on }));
  return proved.length === 0 ? undefined : { proved };
};
