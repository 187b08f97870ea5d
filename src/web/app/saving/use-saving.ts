import { useEffect } from 'react';
import type { PlanClient } from '../../workers/plan-client.ts';
import type { BoatSaver } from './boat-saver.ts';

/** Hands every change of the boat to the saver, and warns before the page is left with something that would be lost. */
export const useSaving = (saver: BoatSaver, client: PlanClient): void => {
  useEffect(
    () =>
      client.onKept(({ opened, boatText, turn, isKept, file, isClash }) => {
        if (file !== undefined) saver.rebase(opened, file);
        if (isClash) saver.hold(opened, true);
        saver.offer(opened, boatText, { turn, isKept });
      }),
    [saver, client],
  );
  useEffect(() => {
    const leave = (event: BeforeUnloadEvent): void => {
      if (!saver.isUnsaved()) return;
      saver.saveNow();
      if (saver.isAtRisk()) event.preventDefault();
    };
    window.addEventListener('beforeunload', leave);
    return () => window.removeEventListener('beforeunload', leave);
  }, [saver]);
};
