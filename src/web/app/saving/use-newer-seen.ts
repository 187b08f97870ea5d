import { useEffect, useMemo } from 'react';
import type { PlanState } from '../../workers/protocol.ts';
import type { HeldBack } from '../tabs/held-back-line.tsx';
import type { BoatSaver } from './boat-saver.ts';

/** What holds this tab back where a newer program wrote the file that is open: then nothing of it is ever saved. */
export const useNewerSeen = ({ answer }: PlanState, saver: BoatSaver): HeldBack | undefined => {
  const seen = answer?.newer;
  useEffect(() => {
    if (seen !== undefined) saver.close();
  }, [seen, saver]);
  return useMemo(() => (seen === undefined ? undefined : { kind: 'newer', seen }), [seen]);
};
