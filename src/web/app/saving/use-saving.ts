import { useEffect } from 'react';
import type { PlanAnswer } from '../../workers/protocol.ts';
import type { BoatSaver } from './boat-saver.ts';

/** Hands every change of the boat to the saver, and warns before the page is left with something unsaved. */
export const useSaving = (saver: BoatSaver, answer: PlanAnswer | undefined): void => {
  useEffect(() => {
    if (answer !== undefined) saver.offer(answer.opened, answer.boatText);
  }, [saver, answer]);
  useEffect(() => {
    const leave = (event: BeforeUnloadEvent): void => {
      if (!saver.isUnsaved()) return;
      saver.saveNow();
      event.preventDefault();
    };
    window.addEventListener('beforeunload', leave);
    return () => window.removeEventListener('beforeunload', leave);
  }, [saver]);
};
