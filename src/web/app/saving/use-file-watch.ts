import { useEffect } from 'react';
import type { PlanClient } from '../../workers/plan-client.ts';
import { store } from '../store/the-store.ts';
import type { BoatSaver } from './boat-saver.ts';

/** Between two looks at the file, while the page is in sight. */
const everyMs = 3000;

/** Looks at the file of the boat now and then, and has what something else changed in it taken in. */
const fileWatch = (saver: BoatSaver, client: PlanClient) => {
  let isLooking = false;
  // the tag that was taken in last: a file that cannot be read is not asked about again until it changes
  let seen = '';
  return async (): Promise<void> => {
    const before = saver.file();
    if (before === undefined || before.isBusy || isLooking || client.state().answer?.opened !== before.opened) return;
    isLooking = true;
    const now = await store.look(before);
    isLooking = false;
    saver.noteServer(now.kind === 'away');
    const after = saver.file();
    const isOld = after === undefined || after.isBusy || after.opened !== before.opened || after.tag !== before.tag;
    if (now.kind !== 'changed' || isOld || now.tag === seen) return;
    seen = now.tag;
    saver.hold(before.opened, false);
    client.change({ kind: 'file', file: { tag: now.tag, text: now.text } });
  };
};

/** Keeps an eye on the file of the boat: every few seconds while the page is seen, and at once where a save met another. */
export const useFileWatch = (saver: BoatSaver, client: PlanClient): void => {
  useEffect(() => {
    const look = fileWatch(saver, client);
    const lookIfSeen = (): void => {
      if (document.visibilityState === 'visible') void look();
    };
    const timer = setInterval(lookIfSeen, everyMs);
    document.addEventListener('visibilitychange', lookIfSeen);
    const ofSaver = saver.subscribe(() => {
      if (saver.state().kind === 'changed') void look();
    });
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', lookIfSeen);
      ofSaver();
    };
  }, [saver, client]);
};
